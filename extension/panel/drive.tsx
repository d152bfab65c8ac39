/** The drive: how far, what it costs part by part, and what setting out is worth when one may refuse at the door. */
import type { DriveParts, Prospect, Trip } from '../../src/listing/evaluation.ts';
import type { Settings } from '../../src/listing/settings.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { figure, likelyAndSpan } from '../components/figures.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseNumber } from '../components/parse-input.ts';
import { useWords, type Words } from '../components/speech.ts';
import { DriveCosts } from './drive-costs.tsx';
import { DrivePlaces } from './drive-places.tsx';
import type { TypedDistance } from './session.ts';
import { settingOut } from './setting-out.ts';

export interface DriveProps {
  readonly trip: Trip | null;
  readonly prospect: Prospect | null;
  /** Where the seller is, by the ad; null when it does not say. */
  readonly place: string | null;
  readonly settings: Settings;
  readonly typed: TypedDistance | null;
  readonly unit: TypedDistance['unit'];
  readonly onDistance: (distance: TypedDistance | null) => void;
  readonly onUnit: (unit: TypedDistance['unit']) => void;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

const FARTHEST = 5000;

export function Drive({ trip, prospect, place, settings, typed, unit, onDistance, onUnit, onSettings }: DriveProps) {
  const words = useWords();
  const { say, t } = words;
  const known = typed ?? (trip && trip.basis !== 'typed' ? trip.distance : null);
  const value = known?.value ?? null;
  const shownUnit = known?.unit ?? unit;
  return (
    <section aria-labelledby="drive-heading" data-drive="">
      <h2 id="drive-heading">{t('drive_heading')}</h2>
      <div class="line-main">
        <NumberField
          path="distance"
          label={t('drive_distance')}
          labelShown
          value={value}
          write={(distance) => say.number(distance, 1)}
          parse={parseNumber}
          low={0}
          high={FARTHEST}
          complaint={t('drive_bad_distance', { most: FARTHEST })}
          onValue={(distance) => onDistance({ value: distance, unit: shownUnit })}
          onEmpty={() => onDistance(null)}
          width={5}
          data={{ 'data-distance': '' }}
        />
        <ChoiceField
          path="distance.unit"
          label={t('drive_distance_unit')}
          value={shownUnit}
          options={[
            { value: 'mi', words: t('drive_unit_mi') },
            { value: 'km', words: t('drive_unit_km') },
          ]}
          onChoice={(chosen) => {
            const next = chosen === 'km' ? 'km' : 'mi';
            onUnit(next);
            if (value !== null) onDistance({ value, unit: next });
          }}
        />
      </div>
      <DrivePlaces place={place} settings={settings} onSettings={onSettings} />
      {trip ? <Cost words={words} trip={trip} /> : <p class="quiet">{t('drive_no_distance')}</p>}
      {settingOut(words, trip, prospect).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <DriveCosts settings={settings} unit={shownUnit} onSettings={onSettings} />
    </section>
  );
}

/** Parts of the cost in the order in which they are told, with their words. */
const PARTS: readonly (readonly [keyof DriveParts, string])[] = [
  ['driving', 'drive_part_driving'],
  ['time', 'drive_part_time'],
  ['tolls', 'drive_part_tolls'],
  ['van', 'drive_part_van'],
];

interface CostProps {
  readonly words: Words;
  readonly trip: Trip;
}

function Cost({ words, trip }: CostProps) {
  const { say, t } = words;
  const told = PARTS.filter(([part]) => trip.parts[part].likely > 0);
  return (
    <>
      {trip.basis === 'stated' && <p class="quiet">{t('drive_distance_stated')}</p>}
      <p>
        {t('drive_cost', { cost: likelyAndSpan(words, trip.cost) })}{' '}
        {told.length > 1 && (
          <span class="quiet" data-parts="">
            {told.map(([part, key], index) => (
              <span key={part} data-part={part}>
                {index > 0 && ', '}
                {t(key, { cost: figure(words, trip.parts[part].likely, { ...trip.parts[part], currency: trip.cost.currency }) })}
              </span>
            ))}
            .
          </span>
        )}
      </p>
      {trip.notes.map((note) => (
        <p key={note.key}>{say(note)}</p>
      ))}
    </>
  );
}
