/** Ranges above single prices, drawn to one scale from zero. Prices far beyond it stand at its edge, so that one does not squeeze the others. */
import { anchorAt, axisTo } from './axis.ts';

export interface StripRange {
  readonly id: string;
  readonly label: string;
  readonly figures: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface StripPrice {
  readonly value: number;
  /** Outside of the range that was learned. */
  readonly far: boolean;
}

export interface PriceStripProps {
  readonly ranges: readonly StripRange[];
  readonly prices: readonly StripPrice[];
  readonly writeTick: (value: number) => string;
}

const ROW = 36;
const STRIP = 26;
/** The scale goes so far beyond the highest range, when there are prices out there. */
const BEYOND = 1.6;

/** Prices that would be drawn over each other are drawn once; at most so many marks. */
const MARKS = 300;

interface Mark extends StripPrice {
  /** 0 to 1 along the scale; null beyond its end. */
  readonly share: number | null;
}

/** Where the prices stand on a scale that ends at `top`. */
export function marksOf(prices: readonly StripPrice[], top: number): readonly Mark[] {
  const seen = new Map<string, Mark>();
  for (const price of prices) {
    const share = price.value > top ? null : price.value / top;
    const key = `${price.far} ${share === null ? 'beyond' : Math.round(share * MARKS)}`;
    if (!seen.has(key)) seen.set(key, { ...price, share });
  }
  return [...seen.values()];
}

export function PriceStrip({ ranges, prices, writeTick }: PriceStripProps) {
  const highest = Math.max(...ranges.map(({ high }) => high)) || 1;
  const top = Math.min(highest * BEYOND, Math.max(highest, ...prices.map(({ value }) => value * 1.02)));
  const axis = axisTo(top);
  const at = (value: number): string => `${axis.at(value).toFixed(3)}%`;
  const floor = ranges.length * ROW + STRIP;
  const middle = floor - STRIP / 2;
  return (
    <svg class="chart-drawing" width="100%" height={floor + 20} aria-hidden="true" focusable="false">
      {axis.ticks.map((tick) => (
        <g key={tick}>
          <line class="chart-grid" x1={at(tick)} x2={at(tick)} y1={0} y2={floor + 3} />
          <text class="chart-tick" x={at(tick)} y={floor + 16} text-anchor={anchorAt(axis.at(tick))}>
            {writeTick(tick)}
          </text>
        </g>
      ))}
      {ranges.map((range, index) => (
        <g key={range.id} class={range.id === 'learned' ? 'chart-row chart-row-own' : 'chart-row'}>
          <text x="0" y={index * ROW + 13}>
            {range.label}
          </text>
          <text x="100%" y={index * ROW + 13} text-anchor="end" class="chart-figure">
            {range.figures}
          </text>
          <rect class="chart-bar" x={at(range.low)} y={index * ROW + 19} width={at(range.high - range.low)} height={10} rx="1" />
          <line class="chart-likely" x1={at(range.likely)} x2={at(range.likely)} y1={index * ROW + 16} y2={index * ROW + 32} />
        </g>
      ))}
      {marksOf(prices, top).map(({ share, far, value }) =>
        share === null ? (
          <svg key="beyond" x="100%" y={middle - 5} overflow="visible" aria-hidden="true">
            <path class="strip-price strip-far" d="M -9 0 L -1 5 L -9 10 Z" />
          </svg>
        ) : (
          <circle
            key={`${far} ${value}`}
            class={far ? 'strip-price strip-far' : 'strip-price'}
            cx={at(value)}
            cy={middle}
            r="4"
          />
        ),
      )}
    </svg>
  );
}
