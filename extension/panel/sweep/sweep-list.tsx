/** All ads of a page: how far the reading is, the tools, the rows, and what to do with those that are ticked. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';
import { arrange } from './arrange.ts';
import { KeepBar } from './keep-bar.tsx';
import { isRunning, listWords } from './list-words.ts';
import type { Row } from './rows.ts';
import type { KeptMany, SweepHost, Swept } from './sweep-host.ts';
import { SweepTools } from './sweep-tools.tsx';
import { useKnown } from './use-known.ts';
import { useLines } from './use-lines.tsx';
import type { ListState } from './use-list.ts';

export interface SweepListProps {
  readonly host: SweepHost;
  readonly swept: Swept;
  readonly rows: readonly Row[];
  readonly left: ListState;
  readonly onLeft: (state: ListState) => void;
  readonly onChoose: (row: Row) => void;
  /** Keeps ads. Null where none can be kept. */
  readonly onKeep: ((listings: readonly PageListing[]) => Promise<KeptMany>) | null;
}

export function SweepList({ host, swept, rows, left, onLeft, onChoose, onKeep }: SweepListProps) {
  const words = useWords();
  const { t } = words;
  const list = useRef<HTMLUListElement>(null);
  const [failed, setFailed] = useState(false);
  const { order, filter, ticked, opened } = left;
  const now = useRef(left);
  now.current = left;
  const shown = useMemo(() => arrange(rows, filter, order), [rows, filter, order]);
  const running = isRunning(swept);
  const focusRow = (id: string) => {
    const titles = [...(list.current?.querySelectorAll<HTMLElement>('[data-choose]') ?? [])];
    titles.find((title) => title.dataset.choose === id)?.focus();
  };
  const tick = (ids: Iterable<string>) => onLeft({ ...left, ticked: new Set(ids) });
  const onTick = (id: string) => tick(ticked.has(id) ? [...ticked].filter((one) => one !== id) : [...ticked, id]);
  const { known, askAgain } = useKnown(host.again, rows);
  const lines = useLines(shown, known, onKeep ? ticked : null, opened, onTick, (row) => {
    onLeft({ ...left, opened: row.id });
    onChoose(row);
  });
  useEffect(() => {
    if (opened !== null) focusRow(opened);
  }, []);
  useEffect(() => {
    if (!running) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape') host.stop(swept);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [running, swept.run, host]);
  /** Arrow keys go from title to title, over whatever else a row has. */
  const walk = (event: KeyboardEvent) => {
    const at = shown.findIndex(({ id }) => id === (event.target as Element).getAttribute('data-choose'));
    if (at < 0) return;
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: shown.length - 1 }[event.key];
    const row = to === undefined ? undefined : shown[to];
    if (!row) return;
    event.preventDefault();
    focusRow(row.id);
  };
  /** Those that could not be kept stay ticked, and what was ticked meanwhile. */
  const keepTicked = async (keep: NonNullable<SweepListProps['onKeep']>) => {
    const chosen = rows.filter(({ id }) => ticked.has(id));
    const outcome = await keep(chosen.map(({ listing }) => listing));
    const gone = new Set(chosen.flatMap(({ id }, index) => (outcome.left.includes(index) ? [] : [id])));
    onLeft({ ...now.current, ticked: new Set([...now.current.ticked].filter((id) => !gone.has(id))) });
    askAgain([...gone]);
    return outcome;
  };
  const passing = shown.length < rows.length ? t('sweep_passing', { seen: shown.length, n: rows.length }) : '';
  const again = async () => setFailed(!(await host.start()));
  return (
    <section class="sweep" data-sweep={swept.state} aria-labelledby="sweep-heading">
      <h1 id="sweep-heading">{listWords(words, swept)}</h1>
      <p class="quiet">{t(`sweep_state_${swept.state}`)}</p>
      <p class="sweep-way">
        {running ? (
          <button type="button" data-stop onClick={() => host.stop(swept)}>
            {t('sweep_stop')}
          </button>
        ) : (
          <button type="button" data-again onClick={again}>
            {t('sweep_again')}
          </button>
        )}
        <button type="button" data-close-list onClick={() => host.drop(swept)}>
          {t('sweep_close')}
        </button>
      </p>
      {failed && (
        <p class="complaint" role="alert">
          {t('sweep_unreachable')}
        </p>
      )}
      {rows.length > 0 && (
        <>
          <SweepTools
            rows={rows}
            order={order}
            filter={filter}
            onOrder={(chosen) => onLeft({ ...left, order: chosen })}
            onFilter={(chosen) => onLeft({ ...left, filter: chosen })}
          />
          {onKeep && (
            <KeepBar
              ticked={rows.filter(({ id }) => ticked.has(id)).length}
              inSight={shown.length}
              onTickAll={() => tick([...ticked, ...shown.map(({ id }) => id)])}
              onTickNone={() => tick([])}
              onKeep={() => keepTicked(onKeep)}
            />
          )}
          {shown.length === 0 && <p>{t('sweep_none_pass')}</p>}
          {passing !== '' && <p class="quiet">{passing}</p>}
          <Announcer text={passing} />
          <ul class="sweep-rows" ref={list} onKeyDown={walk}>
            {lines}
          </ul>
        </>
      )}
    </section>
  );
}
