/** The picture that goes with each step. Bars have one for each way to measure straightness. */
import type { FunctionComponent } from 'preact';
import type { PickupStepId } from '../../../../src/pickup/steps.ts';
import type { BarMeasure } from '../../../../src/pickup/straightness.ts';
import { EndCircle, ShaftWidth, SleeveSpin, SpinTest, StringLine, StringPlace } from './bars.tsx';
import { BenchSize, CollarGrip, FrameCorners, PinsAndHooks } from './frames.tsx';
import { BoreWidth, CrackPlaces, OnTheScale } from './plates.tsx';

type Drawing = FunctionComponent<{ readonly name: string }>;

export const STEP_DRAWINGS: Readonly<Partial<Record<PickupStepId, Drawing>>> = {
  spin: SleeveSpin,
  shaft: ShaftWidth,
  bore: BoreWidth,
  cracks: CrackPlaces,
  frame: FrameCorners,
  pins: PinsAndHooks,
  bench: BenchSize,
  collars: CollarGrip,
  weigh: OnTheScale,
};

export const WAY_DRAWINGS: Readonly<Record<BarMeasure['way'], Drawing>> = {
  wobble: SpinTest,
  string: StringLine,
  stringAt: StringPlace,
  circle: EndCircle,
};
