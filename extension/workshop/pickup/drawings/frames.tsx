/** How to look at what holds the bar, and the lifter. */
import { Measure, Picture } from './picture.tsx';

interface Named {
  readonly name: string;
}

/** Welds and feet: where a frame cracks, and whether it rocks. */
export const FrameCorners = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-line" d="M20 104H300" />
    <path class="picture-tube" d="M110 14V98M210 14V98M110 14H210M90 100H132M188 100H230" />
    {[
      [110, 14],
      [210, 14],
      [110, 98],
      [210, 98],
    ].map(([x, y]) => (
      <circle key={`${x} ${y}`} class="picture-move" cx={x} cy={y} r="10" />
    ))}
    <Measure from={[262, 14]} to={[262, 104]} />
  </Picture>
);

/** Both safety pins through, just under the range of motion, and both hooks. */
export const PinsAndHooks = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-tube" d="M110 8V104M210 8V104" />
    <path class="picture-pin" d="M92 74H228" />
    <path class="picture-line" d="M110 32h-16v-9M210 32h16v-9" />
    <path class="picture-shaft" d="M60 26H260" />
    <path class="picture-move" d="M160 36v28m-6-8l6 8 6-8" />
  </Picture>
);

/** From the floor to the top of the pad, and across it. */
export const BenchSize = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-line" d="M10 100H310" />
    <rect class="picture-body" x="60" y="40" width="150" height="14" rx="4" />
    <path class="picture-tube" d="M80 54V98M190 54V98" />
    <Measure from={[40, 40]} to={[40, 100]} />
    <path class="picture-body" d="M240 34h50v14h-50z" />
    <Measure from={[240, 62]} to={[290, 62]} />
  </Picture>
);

/** Collars on the sleeve, pulled at. */
export const CollarGrip = ({ name }: Named) => (
  <Picture name={name}>
    <rect class="picture-body" x="40" y="44" width="240" height="24" rx="3" />
    <rect class="picture-line" x="150" y="34" width="26" height="44" rx="4" />
    <path class="picture-move" d="M190 24h56m-9-6l9 6-9 6" />
  </Picture>
);
