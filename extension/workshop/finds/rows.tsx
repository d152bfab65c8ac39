/** The rows that are in sight, out of as many as there are. Arrows, Page, Home and End move; Space chooses; Enter, on the link, opens. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { MassUnit } from '../../../src/units/mass.ts';
import { useWords } from '../../components/speech.ts';
import type { Find, FindPage } from '../../store/index.ts';
import { Row } from './row.tsx';
import { movedBy, type Stretch, scrolledTo, stretchAt, UNMEASURED } from './window.ts';

export interface RowsProps {
  readonly page: FindPage;
  /** Number of the first row of `page`. */
  readonly from: number;
  readonly unit: MassUnit;
  readonly chosen: ReadonlySet<string>;
  readonly onChoose: (id: string, chosen: boolean) => void;
  readonly onStretch: (stretch: Stretch) => void;
}

export function Rows({ page, from, unit, chosen, onChoose, onStretch }: RowsProps) {
  const { t } = useWords();
  const box = useRef<HTMLDivElement>(null);
  const [active, setActive] = useState(0);
  const [moving, setMoving] = useState(false);
  const { total, rows } = page;
  /** In px, as drawn: rows grow with the reader's size of text, and in narrow windows. */
  const rowHeight = (): number => (box.current?.firstElementChild?.clientHeight ?? 0) / total || UNMEASURED;
  const height = () => box.current?.clientHeight || 10 * rowHeight();
  const look = () => onStretch(stretchAt(box.current?.scrollTop ?? 0, height(), rowHeight()));
  useEffect(look, []);
  const at = Math.max(0, Math.min(active, total - 1));
  const go = (to: number) => {
    setActive(to);
    setMoving(true);
    if (box.current) box.current.scrollTop = scrolledTo(to, box.current.scrollTop, height(), rowHeight());
    look();
  };
  const press = (event: KeyboardEvent, find: Find) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const to = movedBy(event.key, at, total, Math.max(1, Math.floor(height() / rowHeight()) - 1));
    if (to !== null) go(to);
    else if (event.key === ' ') onChoose(find.id, !chosen.has(find.id));
    else return;
    event.preventDefault();
  };
  return (
    <div class="find-box" ref={box} onScroll={look} onFocusOut={() => setMoving(false)}>
      <ul aria-label={t('workshop_finds')} class="find-rows" style={{ '--find-total': total }}>
        {rows.map((one, offset) => (
          <Row
            key={one.id}
            find={one}
            index={from + offset}
            total={total}
            unit={unit}
            chosen={chosen.has(one.id)}
            active={from + offset === at}
            focused={moving && from + offset === at}
            onChoose={onChoose}
            onFocus={setActive}
            onKey={press}
          />
        ))}
      </ul>
    </div>
  );
}
