/** Faults that can be ticked in each step of a pickup, by the kind of goods: only such as change the answer and the words for leaving it. */
import type { Condition, Kind } from '../listing/reading.ts';
import type { PickupStepId } from './steps.ts';

const FRAME: readonly Condition[] = ['cracked', 'bent', 'wobbly', 'missing-parts', 'home-made', 'rust-heavy'];
const HANDLE: readonly Condition[] = ['cracked', 'bent', 'rust-heavy'];
const CATCHES: readonly Condition[] = ['missing-catches'];

/** In the order in which they weigh. */
const FAULTS: Readonly<Partial<Record<PickupStepId, Readonly<Partial<Record<Kind, readonly Condition[]>>>>>> = {
  // Whether a bar is bent is measured in a step of its own; curl bars and hex bars are looked at.
  spin: { bar: ['missing-parts'], 'curl-bar': ['missing-parts'] },
  cracks: {
    plate: ['cracked', 'split-hub', 'chipped', 'rust-heavy'],
    bumper: ['cracked', 'split-hub', 'chipped'],
    micro: ['cracked', 'chipped', 'rust-heavy'],
    dumbbell: ['cracked', 'bent', 'wobbly', 'rust-heavy'],
    kettlebell: ['cracked', 'chipped', 'rust-heavy'],
    bar: ['cracked', 'rust-heavy'],
    'curl-bar': HANDLE,
    'hex-bar': HANDLE,
  },
  frame: { rack: FRAME, stands: FRAME, storage: ['cracked', 'bent', 'wobbly'] },
  pins: { rack: CATCHES },
  hooks: { stands: CATCHES, bench: CATCHES },
  collars: { collars: ['cracked'] },
  bench: { bench: ['cracked', 'bent', 'wobbly', 'missing-parts', 'torn', 'home-made'] },
};

export const faultsOf = (step: PickupStepId, kind: Kind): readonly Condition[] => FAULTS[step]?.[kind] ?? [];

/** Said by the same word elsewhere, but of another part: "cracked" is a weld here, a plate there. Null where the plain word will do. */
export function faultOn(fault: Condition, kind: Kind): 'frame' | 'bar' | 'dumbbell' | 'collars' | null {
  if (kind === 'collars') return 'collars';
  if (kind === 'dumbbell') return fault === 'wobbly' ? kind : null;
  const frame = kind === 'rack' || kind === 'stands' || kind === 'bench' || kind === 'storage';
  const bar = kind === 'bar' || kind === 'curl-bar' || kind === 'hex-bar';
  if (frame && (fault === 'cracked' || fault === 'bent')) return 'frame';
  return bar && (fault === 'cracked' || fault === 'missing-parts') ? 'bar' : null;
}
