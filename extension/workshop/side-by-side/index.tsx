/** Side by side: the finds that the address names, held against each other. */
import { compare, withUsualDrive } from '../../../src/compare/index.ts';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { CompareChart } from './chart.tsx';
import { type Column, useColumns } from './columns.ts';
import { RemarksOnPaper } from './remarks.tsx';
import { CompareTable } from './table.tsx';
import { Verdict } from './verdict.tsx';

const MOST = 5;

export default function SideBySide({ host, rest }: ScreenProps) {
  const ids = [...new Set(rest.split(',').filter((id) => id !== ''))].slice(0, MOST);
  return (
    <WithStore host={host}>
      <Compared key={rest} host={host} ids={ids} />
    </WithStore>
  );
}

const lotsOf = (columns: readonly Column[]) =>
  withUsualDrive(
    columns.map(({ evaluation }) => evaluation),
    (index, more) => (columns[index] as Column).withMore(more),
  );

function Compared({ host, ids }: Pick<ScreenProps, 'host'> & { readonly ids: readonly string[] }) {
  const { say, t } = useWords();
  const { columns, unit, kit, open, failed } = useColumns(host, ids);
  if (ids.length < 2) {
    return (
      <p>
        {t('compare_how')} <a href={addressOf('finds')}>{t('workshop_finds')}</a>
      </p>
    );
  }
  if (columns === null) return <p class="quiet">{t('workshop_opening')}</p>;
  const lots = lotsOf(columns);
  const comparison = compare(lots);
  return (
    <>
      {failed.map((why) => (
        <p key={why.key} role="alert">
          {say(why)}
        </p>
      ))}
      {columns.length > 0 && (
        <>
          <div class="compare-top">
            <Verdict columns={columns} lots={lots} unit={unit} comparison={comparison} />
            <CompareChart columns={columns} comparison={comparison} />
          </div>
          <CompareTable columns={columns} lots={lots} unit={unit} kit={kit} open={open} best={comparison.best} />
          <RemarksOnPaper columns={columns} />
          <button type="button" class="no-print" onClick={() => print()}>
            {t('compare_print')}
          </button>
        </>
      )}
    </>
  );
}
