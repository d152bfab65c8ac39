/** Every total up to the best lift with what goes on each side: to be printed and hung beside the rack. */
import { exactWeight } from '../../../../src/kit/exact-weight.ts';
import type { Load } from '../../../../src/kit/loads.ts';
import type { MassUnit, Weight } from '../../../../src/units/mass.ts';
import { useWords } from '../../../components/speech.ts';
import { sideWords } from './target.tsx';
import { totalIn } from './total-words.ts';

/** More lines nobody reads: a kit with small plates of both units makes thousands. Enough for every 2.5 lb up to 545 lb. */
const MOST_SHOWN = 200;

export interface AllLoadsProps {
  readonly loads: readonly Load[];
  readonly best: Weight;
  readonly unit: MassUnit;
}

/** So many, as evenly spread as may be, the first and the last among them. */
const spread = (loads: readonly Load[]): readonly Load[] => {
  if (loads.length <= MOST_SHOWN) return loads;
  const step = (loads.length - 1) / (MOST_SHOWN - 1);
  return Array.from({ length: MOST_SHOWN }, (_, index) => loads[Math.round(index * step)]).flatMap((one) => one ?? []);
};

export function AllLoads({ loads, best, unit }: AllLoadsProps) {
  const words = useWords();
  const { t } = words;
  const top = exactWeight(best);
  const within = loads.filter(({ total }) => total <= top);
  const heaviest = loads.at(-1);
  return (
    <section aria-labelledby="kit-totals" class="kit-totals">
      <h2 id="kit-totals">{t('kit_totals')}</h2>
      {heaviest && <p>{t('kit_heaviest', { total: totalIn(words, heaviest.total, unit) })}</p>}
      {within.length > MOST_SHOWN && <p class="line-notes">{t('kit_totals_some', { shown: MOST_SHOWN, all: within.length })}</p>}
      <details>
        <summary>{t('kit_totals_show')}</summary>
        <ol class="kit-loads">
          {spread(within).map((load) => (
            <li key={load.total} data-total>
              <strong>{totalIn(words, load.total, unit)}</strong> {sideWords(words, load)}
            </li>
          ))}
        </ol>
      </details>
      <p class="no-print">
        <button type="button" data-print onClick={() => print()}>
          {t('kit_print_loads')}
        </button>
      </p>
    </section>
  );
}
