/** How to look at plates. */
import { Measure, Picture } from './picture.tsx';

interface Named {
  readonly name: string;
}

/** Inner jaws of a caliper across the hole, at two right angles. */
export const BoreWidth = ({ name }: Named) => (
  <Picture name={name}>
    <circle class="picture-body" cx="160" cy="55" r="50" />
    <circle class="picture-hole" cx="160" cy="55" r="21" />
    <path class="picture-line" d="M139 44v22M181 44v22M145 48l-6 7 6 7M175 48l6 7-6 7" />
    <Measure from={[139, 55]} to={[181, 55]} />
    <path class="picture-faint picture-measure" d="M160 34V76" />
  </Picture>
);

/** Where cracks run: from the hole, across the spokes, in from the rim. */
export const CrackPlaces = ({ name }: Named) => (
  <Picture name={name}>
    <circle class="picture-body" cx="160" cy="55" r="50" />
    <circle class="picture-line" cx="160" cy="55" r="40" />
    <circle class="picture-hole" cx="160" cy="55" r="14" />
    <path class="picture-crack" d="M170 45l6-4 1-7 7-5M146 60l-7 1-3 6-8 2M193 93l-7-8 1-6-6-6" />
    <path class="picture-move" d="M230 20l-42 10M96 92l32-20M236 96l-40-8" />
  </Picture>
);

/** Alone and flat on the scale, the scale on hard ground. */
export const OnTheScale = ({ name }: Named) => (
  <Picture name={name}>
    <path class="picture-line" d="M4 100H316" />
    <rect class="picture-body" x="96" y="80" width="128" height="20" rx="3" />
    <rect class="picture-hole" x="140" y="85" width="40" height="10" />
    <rect class="picture-body" x="84" y="62" width="152" height="18" rx="5" />
    <path class="picture-move" d="M160 16v36m-7-9l7 9 7-9" />
  </Picture>
);
