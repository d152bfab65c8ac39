/** One bar cut into what a whole is made of. Parts are told apart by pattern and by the list below, which says all that is drawn. */
import { useId } from 'preact/hooks';

export interface SplitPart {
  readonly id: string;
  readonly label: string;
  /** Above zero. */
  readonly amount: number;
  readonly figure: string;
  /** The part in per cent, as written. */
  readonly share: string;
}

export interface SplitBarProps {
  readonly caption: string;
  readonly parts: readonly SplitPart[];
}

/** Lines of one tile of 6 by 6 px, beside the two that need none: filled, and left empty. */
const LINES = ['M0 6L6 0', 'M0 3H6', 'M0 0L6 6', 'M3 0V6', 'M0 6L6 0M0 0L6 6'];
export const PATTERNS = LINES.length + 2;

/** The fill of the part with that number. */
const fill = (id: string, index: number): string => {
  const pattern = index % PATTERNS;
  if (pattern === 0) return 'var(--bar)';
  return pattern > LINES.length ? 'var(--ground)' : `url(#${id}-${pattern})`;
};

export function SplitBar({ caption, parts }: SplitBarProps) {
  const id = useId();
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0) || 1;
  const ends = parts.map((_, index) => parts.slice(0, index + 1).reduce((sum, { amount }) => sum + amount, 0));
  const percent = (amount: number): string => `${((amount / whole) * 100).toFixed(3)}%`;
  return (
    <figure class="chart">
      <figcaption>
        <strong>{caption}</strong>
      </figcaption>
      <svg width="100%" height="26" aria-hidden="true" focusable="false">
        <defs>
          {LINES.map((line, index) => (
            <pattern key={line} id={`${id}-${index + 1}`} width="6" height="6" patternUnits="userSpaceOnUse">
              <path class="chart-hatch" d={line} />
            </pattern>
          ))}
        </defs>
        {parts.map(({ id: part, amount }, index) => (
          <rect
            key={part}
            class="chart-part"
            data-part={part}
            x={percent((ends[index] ?? 0) - amount)}
            width={percent(amount)}
            y="2"
            height="20"
            fill={fill(id, index)}
          />
        ))}
      </svg>
      <ul class="chart-key">
        {parts.map(({ id: part, label, figure, share }, index) => (
          <li key={part}>
            <svg width="16" height="12" aria-hidden="true" focusable="false">
              <rect class="chart-part" x="1" y="1" width="14" height="10" fill={fill(id, index)} />
            </svg>
            <span class="chart-key-label">{label}</span> <span class="chart-key-figure">{figure}</span>{' '}
            <span class="quiet">{share}</span>
          </li>
        ))}
      </ul>
    </figure>
  );
}
