/** Ranges on one axis from zero, drawn to scale, with a table that says the same to a screen reader. */
import { anchorAt, axisTo, grown, TICKS, WORDS } from './axis.ts';
import { useWords } from './speech.ts';

export interface ChartRow {
  readonly id: string;
  readonly label: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** The three figures as written. */
  readonly words: {
    readonly low: string;
    readonly likely: string;
    readonly high: string;
    readonly span: string;
    readonly per: string;
  };
  /** The ad itself, against which the others stand. */
  readonly own?: boolean;
}

export interface RangeChartProps {
  readonly caption: string;
  readonly rows: readonly ChartRow[];
  readonly writeTick: (value: number) => string;
}

const ROW = 36;
const BAR = 10;

export function RangeChart({ caption, rows, writeTick }: RangeChartProps) {
  const top = Math.max(...rows.map((row) => row.high)) || 1;
  const axis = axisTo(top);
  const { ticks } = axis;
  const at = (value: number): string => `${axis.at(value).toFixed(3)}%`;
  const length = (row: ChartRow): string => `${Math.max(0.5, ((row.high - row.low) / top) * 100).toFixed(3)}%`;
  const floor = rows.length * ROW;
  const own = rows.find((row) => row.own);
  return (
    <figure class="chart">
      <svg width="100%" height={grown(floor + 20)} aria-hidden="true" focusable="false">
        {ticks.map((tick) => (
          <line key={tick} class="chart-grid" x1={at(tick)} x2={at(tick)} y1={0} y2={grown(floor + 3)} />
        ))}
        {own && <line class="chart-own-line" x1={at(own.likely)} x2={at(own.likely)} y1={grown(16)} y2={grown(floor)} />}
        {rows.map((row, index) => (
          <g key={row.id} class={row.own ? 'chart-row chart-row-own' : 'chart-row'}>
            <text x="0" y={grown(index * ROW + 13, WORDS)}>
              {row.label}
            </text>
            <text x="100%" y={grown(index * ROW + 13, WORDS)} text-anchor="end" class="chart-figure">
              <tspan class="chart-figure-likely">{row.words.likely}</tspan>
              {row.low < row.high && (
                <tspan class="chart-figure-span" dx="0.5em">
                  {row.words.span}
                </tspan>
              )}
            </text>
            <rect class="chart-bar" x={at(row.low)} y={grown(index * ROW + 19)} width={length(row)} height={grown(BAR)} rx="1" />
            <line
              class="chart-likely"
              x1={at(row.likely)}
              x2={at(row.likely)}
              y1={grown(index * ROW + 16)}
              y2={grown(index * ROW + 32)}
            />
          </g>
        ))}
        {ticks.map((tick) => (
          <text key={tick} class="chart-tick" x={at(tick)} y={grown(floor + 16, TICKS)} text-anchor={anchorAt(axis.at(tick))}>
            {writeTick(tick)}
          </text>
        ))}
      </svg>
      <ChartTable caption={caption} rows={rows} />
    </figure>
  );
}

function ChartTable({ caption, rows }: Pick<RangeChartProps, 'caption' | 'rows'>) {
  const { t } = useWords();
  return (
    <div class="unseen">
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{t('panel_table_what')}</th>
            <th scope="col">{t('panel_table_low')}</th>
            <th scope="col">{t('panel_table_likely')}</th>
            <th scope="col">{t('panel_table_high')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.label}</th>
              <td>{row.words.low}</td>
              <td>{`${row.words.likely} ${row.words.per}`}</td>
              <td>{row.words.high}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
