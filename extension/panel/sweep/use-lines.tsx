/** The rows as they are drawn: those that did not change are not gone through again, and a long list comes in pieces. */
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Find } from '../../store/index.ts';
import type { Row } from './rows.ts';
import { SweepRow } from './sweep-row.tsx';

/** Rows that are drawn at once. */
const PIECE = 60;

interface Line {
  readonly row: Row;
  readonly find: Find | null;
  readonly ticked: boolean | null;
  readonly drawn: VNode;
}

/** `finds`: those that rows are already. `ticked` is null where nothing can be ticked. The row that was `opened` is among the first piece, to get the keyboard back. */
export function useLines(
  rows: readonly Row[],
  finds: ReadonlyMap<string, Find>,
  ticked: ReadonlySet<string> | null,
  opened: string | null,
  onTick: (id: string) => void,
  onChoose: (row: Row) => void,
): VNode[] {
  const [most, setMost] = useState(() => Math.max(PIECE, rows.findIndex(({ id }) => id === opened) + 1));
  const drawnLines = useRef(new Map<string, Line>());
  const wishes = useRef({ onTick, onChoose });
  wishes.current = { onTick, onChoose };
  useEffect(() => {
    if (most >= rows.length) return;
    const timer = setTimeout(() => setMost(most + PIECE), 0);
    return () => clearTimeout(timer);
  }, [most, rows.length]);
  return rows.slice(0, most).map((row) => {
    const isTicked = ticked?.has(row.id) ?? null;
    const line = drawnLines.current.get(row.id);
    const find = finds.get(row.id) ?? null;
    if (line && line.row === row && line.find === find && line.ticked === isTicked) return line.drawn;
    const drawn = (
      <SweepRow
        key={row.id}
        row={row}
        find={find}
        ticked={isTicked}
        onTick={(id) => wishes.current.onTick(id)}
        onChoose={(chosen) => wishes.current.onChoose(chosen)}
      />
    );
    drawnLines.current.set(row.id, { row, find, ticked: isTicked, drawn });
    return drawn;
  });
}
