/** One quantity that falls or rises along another: a line with its band, zero, and what is marked on the way; a table says the same. */
import { anchorAt, axisOver, axisTo, grown, TICKS, WORDS } from './axis.ts';

export interface LinePoint {
  readonly x: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface LineMark {
  readonly id: string;
  readonly x: number;
  readonly label: string;
}

export interface LineChartProps {
  /** What is drawn, in a few words, and what line and band are. */
  readonly caption: string;
  readonly note: string;
  /** At least two, by rising x from zero. */
  readonly points: readonly LinePoint[];
  /** Each gets a row of its own above the drawing. */
  readonly marks: readonly LineMark[];
  /** Heads of the table: what x is, and the three figures. */
  readonly heads: readonly [string, string, string, string];
  readonly writeX: (x: number) => string;
  readonly writeY: (y: number) => string;
}

const MARK_ROW = 15;
const PLOT = 96;

/** The figures at any x, straight between the points on either side. */
function pointAt(points: readonly LinePoint[], x: number): LinePoint {
  const next = points.findIndex((point) => point.x >= x);
  const [before, after] = [points[next - 1], points[next < 0 ? points.length - 1 : next]];
  if (after === undefined) throw new RangeError('line chart: no points');
  if (before === undefined || after.x === before.x) return { ...after, x };
  const share = (x - before.x) / (after.x - before.x);
  const between = (key: 'low' | 'likely' | 'high'): number => before[key] + share * (after[key] - before[key]);
  return { x, low: between('low'), likely: between('likely'), high: between('high') };
}

export function LineChart({ caption, note, points, marks, heads, writeX, writeY }: LineChartProps) {
  const across = axisTo(points.at(-1)?.x ?? 0);
  const up = axisOver(Math.min(...points.map(({ low }) => low)), Math.max(...points.map(({ high }) => high)));
  const top = marks.length * MARK_ROW + 4;
  const floor = top + PLOT;
  const x = (value: number): string => `${across.at(value).toFixed(3)}%`;
  const y = (value: number): number => top + PLOT * (1 - up.at(value) / 100);
  /** In the drawing's own square of 100 by 100, which is stretched to the width that there is. */
  const path = (key: 'low' | 'likely' | 'high', from = points): string =>
    from.map((point) => `${across.at(point.x).toFixed(2)},${(100 - up.at(point[key])).toFixed(2)}`).join(' ');
  return (
    <figure class="chart">
      <figcaption>
        <strong>{caption}</strong> {note}
      </figcaption>
      <svg width="100%" height={grown(floor + 18)} aria-hidden="true" focusable="false">
        {up.ticks.map((tick) => (
          <line
            key={tick}
            class={tick === 0 ? 'chart-zero' : 'chart-grid'}
            x1="0"
            x2="100%"
            y1={grown(y(tick))}
            y2={grown(y(tick))}
          />
        ))}
        <svg
          x="0"
          y={grown(top)}
          width="100%"
          height={grown(PLOT)}
          viewBox="0 0 100 100"
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          <polygon class="chart-band" points={`${path('high')} ${path('low', points.toReversed())}`} />
          <polyline class="chart-edge" points={path('high')} />
          <polyline class="chart-edge" points={path('low')} />
          <polyline class="chart-line" points={path('likely')} />
        </svg>
        {marks.map((mark, row) => (
          <g key={mark.id} data-mark={mark.id}>
            <line
              class={`chart-mark chart-mark-${mark.id}`}
              x1={x(mark.x)}
              x2={x(mark.x)}
              y1={grown(row * MARK_ROW + 2)}
              y2={grown(floor)}
            />
            <circle class={`chart-dot chart-dot-${mark.id}`} cx={x(mark.x)} cy={grown(y(pointAt(points, mark.x).likely))} r="4" />
            <text
              x={x(mark.x)}
              dx={across.at(mark.x) > 50 ? '-0.5em' : '0.5em'}
              y={grown(row * MARK_ROW + 11, WORDS)}
              text-anchor={across.at(mark.x) > 50 ? 'end' : 'start'}
            >
              {mark.label}
            </text>
          </g>
        ))}
        {up.ticks.map((tick) => (
          <text key={tick} class="chart-tick" x="0" y={grown(y(tick) - 3, TICKS)}>
            {writeY(tick)}
          </text>
        ))}
        {across.ticks.map((tick) => (
          <text key={tick} class="chart-tick" x={x(tick)} y={grown(floor + 14, TICKS)} text-anchor={anchorAt(across.at(tick))}>
            {writeX(tick)}
          </text>
        ))}
      </svg>
      <div class="unseen">
        <table>
          <caption>{caption}</caption>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {tableRows(across.ticks, marks).map(({ at, label }) => {
              const point = pointAt(points, at);
              return (
                <tr key={label ?? at}>
                  <th scope="row">{label ?? writeX(at)}</th>
                  <td>{writeY(point.low)}</td>
                  <td>{writeY(point.likely)}</td>
                  <td>{writeY(point.high)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </figure>
  );
}

/** The ticks and the marks, along the axis; where both stand the mark says it. */
function tableRows(ticks: readonly number[], marks: readonly LineMark[]): { at: number; label: string | null }[] {
  const bare = ticks.filter((tick) => marks.every(({ x }) => Math.abs(x - tick) > 1e-6));
  const rows = [...bare.map((at) => ({ at, label: null })), ...marks.map(({ x, label }) => ({ at: x, label }))];
  return rows.sort((one, other) => one.at - other.at);
}
