/** Which kinds of goods each condition can be said of: in so many words (`told`), and when it is said of no goods in particular (`lot`). */
import type { Condition, Kind } from '../../listing/reading.ts';

export interface Scope {
  readonly told: readonly Kind[];
  readonly lot: readonly Kind[];
}

export const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
export const PLATES: readonly Kind[] = ['plate', 'bumper', 'micro'];
export const PIECES: readonly Kind[] = [...PLATES, 'dumbbell', 'kettlebell'];
export const FRAMES: readonly Kind[] = ['rack', 'stands', 'bench', 'storage'];
const GOODS: readonly Kind[] = [...PIECES, ...BARS, ...FRAMES];
/** Goods that are not scored take what is said of them, so that it is put on nothing else. */
const ANY: readonly Kind[] = [...GOODS, 'other'];

/** Faults that make the piece that has them scrap, and leave the others what they are. */
export const isOfPiece = (condition: Condition, { kind }: { readonly kind: Kind }): boolean =>
  condition === 'cracked' || condition === 'split-hub' || (condition === 'bent' && BARS.includes(kind));

const whole: Scope = { told: [...ANY, 'collars'], lot: GOODS };
const bars: Scope = { told: [...BARS, 'other'], lot: BARS };
const frames: Scope = { told: [...FRAMES, 'other'], lot: ['rack', 'stands'] };

export const SCOPES: Readonly<Record<Condition, Scope>> = {
  new: { told: [...ANY, 'collars'], lot: [...GOODS, 'collars'] },
  'like-new': { told: [...ANY, 'collars'], lot: [...GOODS, 'collars'] },
  'no-rust': whole,
  'rust-light': whole,
  rust: whole,
  'rust-heavy': whole,
  'stored-indoors': whole,
  'stored-outdoors': whole,
  repainted: { told: ANY, lot: PIECES },
  chipped: { told: ANY, lot: PIECES },
  cracked: { told: [...ANY, 'collars'], lot: PIECES },
  bent: { ...bars, told: [...bars.told, ...FRAMES, 'dumbbell'] },
  straight: { ...bars, told: [...bars.told, ...FRAMES] },
  spins: bars,
  'seized-sleeves': bars,
  welded: { ...frames, told: [...frames.told, ...BARS] },
  bolted: frames,
  wobbly: { ...frames, told: [...frames.told, 'dumbbell'] },
  'missing-parts': { told: [...FRAMES, ...BARS, 'other'], lot: ['rack', 'stands', 'bench'] },
  // Found by the buyer; ads are read for it by the flag itself.
  'missing-catches': { told: [], lot: [] },
  'home-made': { told: ANY, lot: FRAMES },
  torn: { told: ['bench', 'bumper', 'dumbbell', 'kettlebell', 'other'], lot: ['bench'] },
  'split-hub': { told: PLATES, lot: [] },
  odd: { told: PIECES, lot: [] },
  mismatched: { told: PIECES, lot: PLATES },
};

const GROUPS: readonly (readonly Condition[])[] = [
  ['no-rust', 'rust-light', 'rust', 'rust-heavy'],
  ['bent', 'straight'],
  ['spins', 'seized-sleeves'],
  ['stored-indoors', 'stored-outdoors'],
  ['new', 'like-new'],
];

/** Whether two words say the same thing or things that rule each other out. */
export const vie = (a: Condition, b: Condition): boolean =>
  a === b || GROUPS.some((group) => group.includes(a) && group.includes(b));

/** The worst word of rust stands; "bent" beats "straight"; torn is what cracked means of a bench. */
export const STRONGER: readonly (readonly [Condition, readonly Condition[]])[] = [
  ['rust-heavy', ['rust', 'rust-light', 'no-rust']],
  ['rust-light', ['no-rust', 'rust']],
  ['rust', ['no-rust']],
  ['new', ['like-new']],
  ['seized-sleeves', ['spins']],
  ['bent', ['straight']],
  ['stored-outdoors', ['stored-indoors']],
  ['split-hub', ['cracked']],
];
