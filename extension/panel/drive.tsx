/** The drive: how far, what it costs, and where the saving is gone. */
import type { Trip } from '../../src/listing/evaluation.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { likelyAndSpan } from '../components/figures.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseNumber } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import type { TypedDistance } from './session.ts';

export interface DriveProps {
  readonly trip: Trip | null;
  readonly typed: TypedDistance | null;
  readonly unit: TypedDistance['unit'];
  readonly onDistance: (distance: TypedDistance | null) => void;
  readonly onUnit: (unit: TypedDistance['unit']) => void;
}

const FARTHEST = 5000;

export function Drive({ trip, typed, unit, onDistance, onUnit }: DriveProps) {
  const words = useWords();
  const { say, t } = words;
  const value = typed?.value ?? (trip?.basis === 'stated' ? trip.distance.value : null);
  const shownUnit = typed ? typed.unit : trip?.basis === 'stated' ? trip.distance.unit : unit;
  return (
    <section aria-labelledby="drive-heading">
      <h2 id="drive-heading">{t('panel_drive')}</h2>
      <div class="line-main">
        <NumberField
          path="distance"
          label={t('panel_distance')}
          labelShown
          value={value}
          write={(distance) => say.number(distance, 1)}
          parse={parseNumber}
          low={0}
          high={FARTHEST}
          complaint={t('panel_bad_distance', { most: FARTHEST })}
          onValue={(distance) => onDistance({ value: distance, unit: shownUnit })}
          onEmpty={() => onDistance(null)}
          width={5}
          data={{ 'data-distance': '' }}
        />
        <ChoiceField
          path="distance.unit"
          label={t('panel_distance_unit')}
          value={shownUnit}
          options={(['mi', 'km'] as const).map((one) => ({ value: one, words: t(`panel_unit_${one}`) }))}
          onChoice={(chosen) => {
            const next = chosen === 'km' ? 'km' : 'mi';
            onUnit(next);
            if (value !== null) onDistance({ value, unit: next });
          }}
        />
      </div>
      {trip ? (
        <p>
          {trip.basis === 'stated' && `${t('panel_distance_stated')} `}
          {t('panel_trip_cost', { cost: likelyAndSpan(words, trip.cost) })}{' '}
          {trip.breakEven ? t('panel_break_even', { distance: { distance: trip.breakEven } }) : t('panel_no_break_even')}
        </p>
      ) : (
        <p class="quiet">{t('panel_no_distance')}</p>
      )}
    </section>
  );
}
