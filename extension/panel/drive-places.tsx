/** Where the buyer sets out and where the seller is: the distance between them counts where none is typed or told by the ad. */
import { useEffect, useId } from 'preact/hooks';
import type { Settings } from '../../src/listing/settings.ts';
import { distanceUnit } from '../../src/trip/distance.ts';
import { PlaceField } from '../components/place-field.tsx';
import { hasPlaces } from '../components/place-lists.ts';
import { placeOf } from '../components/place-words.ts';
import { useWords } from '../components/speech.ts';
import { usePlaces } from '../components/use-places.ts';
import { useEdits } from './edits.ts';

export interface DrivePlacesProps {
  /** What the ad says of where the seller is. */
  readonly place: string | null;
  /** With the seller's place of this ad. */
  readonly settings: Settings;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

export function DrivePlaces({ place, settings, onSettings }: DrivePlacesProps) {
  const { t } = useWords();
  const id = useId();
  const { session, setSeller, suppose } = useEdits();
  const { home, sellerAt, currency } = settings;
  const places = usePlaces(currency);
  const { gazetteer, want } = places;
  const said = session.sellerAt !== undefined;
  // Once it is known where the buyer sets out, the ad's own word is looked up, and taken where it can mean but one place.
  const asked = home !== null && place !== null && !said && hasPlaces(currency) ? place : null;
  useEffect(() => {
    if (asked !== null) want();
  }, [asked, want]);
  useEffect(() => {
    if (asked === null || gazetteer === null) return;
    const found = gazetteer.find(asked, home);
    suppose(found.ok && found.chosen ? placeOf(found.chosen) : null);
  }, [asked, gazetteer, home]);
  if (!hasPlaces(currency)) return <p class="quiet">{t('places_no_list', { currency })}</p>;
  const shared = { places, unit: distanceUnit(settings), hint: id };
  return (
    <div class="drive-places">
      <PlaceField
        {...shared}
        path="settings.home"
        label={t('places_home')}
        value={home}
        home={null}
        onPlace={(chosen) => onSettings({ home: chosen })}
      />
      {home !== null && (
        <PlaceField
          {...shared}
          key={session.key}
          path="sellerAt"
          label={t('places_seller')}
          value={sellerAt}
          first={said ? null : place}
          home={home}
          onPlace={setSeller}
        />
      )}
      <p id={id} class="quiet">
        {t('places_note')}
      </p>
    </div>
  );
}
