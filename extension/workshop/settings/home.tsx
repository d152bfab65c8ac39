/** Where the buyer sets out: looked up by name or postcode, or told by its coordinates, which count once both are there. */
import { useId, useState } from 'preact/hooks';
import type { Settings } from '../../../src/listing/settings.ts';
import { distanceUnit } from '../../../src/trip/distance.ts';
import { NumberField } from '../../components/number-field.tsx';
import { PlaceField } from '../../components/place-field.tsx';
import { hasPlaces } from '../../components/place-lists.ts';
import { useWords } from '../../components/speech.ts';
import { usePlaces } from '../../components/use-places.ts';
import { parseDegrees } from './degrees.ts';
import type { Shown } from './use-settings.ts';

type Draft = { readonly [K in keyof NonNullable<Settings['home']>]: NonNullable<Settings['home']>[K] | null };

export function Home({ shown }: { readonly shown: Shown }) {
  const { say, t } = useWords();
  const id = useId();
  const { settings, change } = shown;
  const places = usePlaces(settings.currency);
  const [draft, setDraft] = useState<Draft | null>(null);
  const now: Draft = draft ?? settings.home ?? { name: '', lat: null, lon: null };
  const take = (part: Partial<Draft>) => {
    const next = { ...now, ...part };
    const { name, lat, lon } = next;
    setDraft(next);
    if (lat !== null && lon !== null) change({ home: { name: name ?? '', lat, lon } });
  };
  const drop = () => {
    setDraft(null);
    change({ home: null });
  };
  return (
    <div class="setting" data-setting="home">
      <h3>{t('settings_home')}</h3>
      <span id={`${id}-why`} class="setting-why">
        {t('settings_home_why')}
      </span>
      {hasPlaces(settings.currency) && (
        <PlaceField
          path="home"
          label={t('settings_home_place')}
          value={settings.home}
          places={places}
          home={null}
          unit={distanceUnit(settings)}
          hint={`${id}-why`}
          onPlace={(home) => {
            setDraft(null);
            change({ home });
          }}
        />
      )}
      <details class="by-degrees" open={!hasPlaces(settings.currency)}>
        <summary>{t('settings_home_degrees')}</summary>
        <span class="field">
          <label for={id} class="field-label">
            {t('settings_home_name')}
          </label>
          <input
            id={id}
            type="text"
            autocomplete="off"
            maxLength={200}
            data-path="home.name"
            value={now.name ?? ''}
            onInput={(event) => take({ name: event.currentTarget.value })}
          />
        </span>
        {(['lat', 'lon'] as const).map((part) => (
          <div key={part}>
            <NumberField
              path={`home.${part}`}
              label={t(`settings_home_${part}`)}
              labelShown
              value={now[part]}
              write={(value) => say.number(value, 4)}
              parse={parseDegrees}
              low={part === 'lat' ? -90 : -180}
              high={part === 'lat' ? 90 : 180}
              complaint={t('settings_bad_degrees')}
              onValue={(value) => take({ [part]: value })}
              width={9}
            />
          </div>
        ))}
      </details>
      {settings.home && (
        <button type="button" class="bare" data-drop="home" onClick={drop}>
          {t('settings_home_drop')}
        </button>
      )}
    </div>
  );
}
