/** A drawing with its name for who can't see it. Lines take the ink of the text, so that they print and follow the dark theme. */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export interface PictureProps {
  readonly name: string;
  readonly children: ComponentChildren;
}

/** Drawn on 320 by 110. */
export function Picture({ name, children }: PictureProps) {
  const id = useId();
  return (
    <svg class="picture" viewBox="0 0 320 110" role="img" aria-labelledby={id} focusable="false">
      <title id={id}>{name}</title>
      {children}
    </svg>
  );
}

/** A measure: a line with a bar across at both ends. */
export function Measure({ from, to }: { readonly from: readonly [number, number]; readonly to: readonly [number, number] }) {
  const [x1, y1] = from;
  const [x2, y2] = to;
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [across, along] = [(5 * (y2 - y1)) / length, (-5 * (x2 - x1)) / length];
  const cap = (x: number, y: number) => `M${x - across} ${y - along}L${x + across} ${y + along}`;
  return <path class="picture-measure" d={`M${x1} ${y1}L${x2} ${y2}${cap(x1, y1)}${cap(x2, y2)}`} />;
}

/** A whole bar lying across, its shaft from x 70 to 250 at a height; `bow` moves the middle. */
export function LyingBar({ y, bow = 0, faint = false }: { readonly y: number; readonly bow?: number; readonly faint?: boolean }) {
  return (
    <g class={faint ? 'picture-faint' : undefined}>
      <path class="picture-shaft" d={`M70 ${y}Q160 ${y + 2 * bow} 250 ${y}`} />
      <rect class="picture-body" x="14" y={y - 8} width="52" height="16" rx="2" />
      <rect class="picture-body" x="254" y={y - 8} width="52" height="16" rx="2" />
      <path class="picture-line" d={`M68 ${y - 12}v24M252 ${y - 12}v24`} />
    </g>
  );
}
