/** Which lot wins, by how much, how sure that is, and what price would make each of the others as good. */
import { type Comparison, type Lot, priceToEqual, USUAL_MILES } from '../../../src/compare/index.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import type { Money } from '../../../src/units/money.ts';
import type { Param } from '../../../src/words/message.ts';
import { useWords } from '../../components/speech.ts';
import { askedAt, type Column } from './columns.ts';
import { milesIn } from './miles-in.ts';

export interface VerdictProps {
  readonly columns: readonly Column[];
  readonly lots: readonly Lot[];
  readonly unit: MassUnit;
  readonly comparison: Comparison;
}

/** Under this the order of the two is as good as open. */
const SURE = 0.6;

/** Nothing is certain, whatever the ranges say. */
const NEARLY = 0.99;
const sureWords = (sure: number): Param =>
  sure > NEARLY ? { message: { key: 'compare_nearly_sure' } } : { percent: 100 * sure };

export function Verdict({ columns, lots, unit, comparison }: VerdictProps) {
  const { t } = useWords();
  const { best, second, by, sure, kind, values } = comparison;
  const winner = best === null ? null : columns[best];
  const next = second === null ? null : columns[second];
  if (!winner || !next || best === null) return <p class="verdict">{t('compare_open')}</p>;
  const name = (column: Column) => column.find.title || t('finds_untitled');
  const said = { winner: name(winner), next: name(next), by: { percent: 100 * by }, sure: sureWords(sure) };
  const key = sure < SURE ? 'compare_even' : kind === 'per-pound' ? 'compare_wins_pound' : 'compare_wins_new';
  const target = values[best]?.likely ?? 0;
  const others = columns.flatMap((column, index) => {
    const asked = column.evaluation.reading.asking.amount?.value;
    if (index === best || asked === undefined || values[index] === null) return [];
    const at = (price: Money) => column.withMore([...askedAt(price), ...(lots[index]?.assumed ?? [])]);
    return [{ column, asked, equal: priceToEqual(kind, target, asked, at) }];
  });
  const nowhere = columns.filter((_, index) => lots[index]?.apart);
  return (
    <div class="verdict">
      <p class="verdict-line">{t(key, said)}</p>
      {nowhere.map((column) => (
        <p key={column.find.id} data-assumed={column.find.id}>
          {t('compare_usual_drive', {
            name: name(column),
            usual: milesIn(USUAL_MILES.usual, unit),
            near: milesIn(USUAL_MILES.near, unit),
            far: milesIn(USUAL_MILES.far, unit),
          })}
        </p>
      ))}
      <ul class="plain-list">
        {others.map(({ column, asked, equal }) => (
          <li key={column.find.id}>
            {equal === null
              ? t('compare_never', { name: name(column) })
              : t('compare_equal_at', { name: name(column), price: { money: equal }, asked: { money: asked } })}
          </li>
        ))}
      </ul>
    </div>
  );
}
