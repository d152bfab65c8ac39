/** How to look at a bar. */
import { LyingBar, Measure, Picture } from './picture.tsx';

interface Named {
  readonly name: string;
}

/** Rolled over flat ground: a bent one hops in the middle. */
export const SpinTest = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-line" d="M4 88H316" />
    <LyingBar y={78} />
    <LyingBar y={78} bow={-16} faint />
    <Measure from={[160, 60]} to={[160, 78]} />
    <path class="picture-move" d="M40 40a24 24 0 0 1 44 0m-8-4l8 4 3-9" />
  </Picture>
);

/** A string from collar to collar, and the gap where it is widest. */
export const StringLine = ({ name }: Named) => (
  <Picture name={name}>
    <LyingBar y={58} bow={14} />
    <path class="picture-string" d="M68 50H252" />
    <Measure from={[160, 50]} to={[160, 71]} />
  </Picture>
);

/** The same with the gap at some place, and how far that is from the end. */
export const StringPlace = ({ name }: Named) => (
  <Picture name={name}>
    <LyingBar y={58} bow={14} />
    <path class="picture-string" d="M68 50H252" />
    <Measure from={[118, 50]} to={[118, 67]} />
    <Measure from={[70, 98]} to={[118, 98]} />
    <path class="picture-faint picture-line" d="M118 70V98M70 66V98" />
  </Picture>
);

/** On two supports: the end draws a circle while the bar is turned. */
export const EndCircle = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-shaft" d="M30 60L130 52L262 60" />
    <path class="picture-body" d="M70 62l-9 34h18zM208 62l-9 34h18z" />
    <ellipse class="picture-move" cx="272" cy="56" rx="9" ry="22" />
    <Measure from={[298, 34]} to={[298, 78]} />
    <Measure from={[70, 104]} to={[208, 104]} />
    <Measure from={[208, 104]} to={[272, 104]} />
  </Picture>
);

/** Caliper across the bare shaft, beside the knurling. */
export const ShaftWidth = ({ name }: Named) => (
  <Picture name={name}>
    <rect class="picture-body" x="20" y="46" width="280" height="22" />
    {[28, 38, 48, 58, 68, 78, 222, 232, 242, 252, 262, 272, 282].map((x) => (
      <path key={x} class="picture-faint picture-line" d={`M${x} 46l12 22M${x + 12} 46l-12 22`} />
    ))}
    <path class="picture-body" d="M140 30H150V46H176L168 38 150 30M140 84H150V68H176L168 76 150 84" />
    <path class="picture-body" d="M138 8H150V104H138zM132 76H150V92H132z" />
    <Measure from={[192, 46]} to={[192, 68]} />
  </Picture>
);

/** The sleeve turned by hand while the shaft is held. */
export const SleeveSpin = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-shaft" d="M10 58H150" />
    <path class="picture-line" d="M152 34V82" />
    <rect class="picture-body" x="154" y="44" width="136" height="28" rx="3" />
    <path class="picture-move" d="M214 36c-22-22-2-30 10-30s34 12 10 30m-9-7l9 7 7-10" />
    <path class="picture-line" d="M60 44c10-10 26-10 34 0M60 72c10 10 26 10 34 0" />
  </Picture>
);
