/** A wanted total: what goes on each side, with the fewest plates, or the loads next to it. */
import { useState } from 'preact/hooks';
import { exactWeight } from '../../../../src/kit/exact-weight.ts';
import { type Load, nearestLoads } from '../../../../src/kit/loads.ts';
import { convert, type MassUnit, type Weight } from '../../../../src/units/mass.ts';
import { Announcer } from '../../../components/announcer.tsx';
import { NumberField } from '../../../components/number-field.tsx';
import { parseNumber } from '../../../components/parse-input.ts';
import { useWords, type Words } from '../../../components/speech.ts';
import { totalIn } from './total-words.ts';

const MOST = 3000;

/** "2 × 45 lb, 1 × 10 lb" */
export const sideWords = ({ t }: Words, { side }: Load): string =>
  side.length === 0
    ? t('kit_side_empty')
    : side.map(({ weight, count }) => t('kit_on_side', { count, weight: { weight } })).join(', ');

export function Target({
  loads,
  unit,
  best,
}: {
  readonly loads: readonly Load[];
  readonly unit: MassUnit;
  readonly best: Weight;
}) {
  const words = useWords();
  const { say, t } = words;
  const [wanted, setWanted] = useState(() => Math.round(convert(best, unit).value));
  const { under, over } = nearestLoads(loads, { value: wanted, unit });
  const exact = under !== null && under === over && under.total === exactWeight({ value: wanted, unit });
  const says = (key: string, load: Load | null): string =>
    load ? t(`kit_load_${key}`, { total: totalIn(words, load.total, unit), side: sideWords(words, load) }) : '';
  const line = (key: string, load: Load | null) => load && <p data-load={key}>{says(key, load)}</p>;
  return (
    <section aria-labelledby="kit-target">
      <h2 id="kit-target">{t('kit_target')}</h2>
      <NumberField
        path="target"
        label={t('kit_target_total')}
        labelShown
        value={wanted}
        write={(value) => say.number(value, 2)}
        parse={parseNumber}
        low={1}
        high={MOST}
        complaint={t('kit_bad_number', { low: 1, high: MOST })}
        onValue={setWanted}
        width={5}
        unit={unit}
      />
      <Announcer
        onlyChanges
        text={exact ? says('exact', under) : [t('kit_load_none'), says('under', under), says('over', over)].join(' ')}
      />
      <div class="kit-target">
        {exact ? (
          line('exact', under)
        ) : (
          <>
            <p>{t('kit_load_none')}</p>
            {line('under', under)}
            {line('over', over)}
          </>
        )}
      </div>
    </section>
  );
}
