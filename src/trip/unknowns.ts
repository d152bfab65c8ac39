/** What an ad leaves open that would change its worth: each with a chance of being bad, and what the reading would then say. */
import type { Correction, Item, Reading } from '../listing/reading.ts';
import { isKept, isPlate } from '../listing/reading.ts';
import type { Settings, UnknownId } from '../listing/settings.ts';
import { isWideSleeve, TIGHT_FROM_MM } from '../price/fit.ts';
import type { PlateWeight } from '../price/usable.ts';
import { type Message, message } from '../words/message.ts';

/** Goods whose worth depends on unknowns of their own only. */
export const PARTS = ['plates', 'bars', 'rest'] as const;
type Part = (typeof PARTS)[number];

export const partOf = (item: Item): Part => {
  if (isPlate(item.kind.value)) return 'plates';
  return item.kind.value === 'bar' ? 'bars' : 'rest';
};

export interface Unknown<Id extends string = string> {
  readonly id: Id;
  readonly part: Part;
  /** Path that the answer would set. */
  readonly about: string;
  readonly says: Message;
  /** Chance of the bad answer. */
  readonly chance: number;
  /** What the reading becomes with the bad and with the good answer. */
  readonly bad: readonly Correction[];
  readonly good: readonly Correction[];
}

/** Chances of a bad answer. Assumptions: no figures are published. */
const BENT = 0.15;
const THICK = 0.15;
const FEWER = 0.3;

const said = (item: Item, words: readonly string[]): boolean => item.conditions.some((fact) => words.includes(fact.value));

function straightness(bar: Item): Unknown<UnknownId> | null {
  if (bar.bowMm !== null || said(bar, ['bent', 'straight', 'new'])) return null;
  return {
    id: 'straightness',
    part: 'bars',
    about: `${bar.id}.conditions`,
    says: message('question_straightness'),
    chance: BENT,
    bad: [{ path: `${bar.id}.condition.bent`, value: true }],
    good: [{ path: `${bar.id}.condition.straight`, value: true }],
  };
}

function shaft(bar: Item): Unknown<UnknownId> | null {
  if (bar.shaftMm !== null) return null;
  return {
    id: 'shaft',
    part: 'bars',
    about: `${bar.id}.shaftMm`,
    says: message('question_shaft'),
    chance: THICK,
    bad: [{ path: `${bar.id}.shaftMm`, value: 32, unit: 'mm' }],
    good: [{ path: `${bar.id}.shaftMm`, value: 28.5, unit: 'mm' }],
  };
}

/** One question for the holes of all plates whose holes the ad doesn't state well enough. */
function bore(plates: readonly PlateWeight[]): Unknown<UnknownId> | null {
  const open = plates.filter(({ item, fit }) => !fit.known && item.kind.value !== 'bumper' && isKept(item));
  const first = open[0];
  if (first === undefined) return null;
  const { sleeveMm, chance } = first.fit;
  // For a sleeve wider than 50 mm a 50 mm plate is no answer: the hole itself is.
  const set = (fits: boolean): Correction[] =>
    open.map(({ item }) =>
      item.fits === null && sleeveMm <= TIGHT_FROM_MM
        ? { path: `${item.id}.fits`, value: isWideSleeve(sleeveMm) === fits ? '50mm' : '25mm' }
        : { path: `${item.id}.boreMm`, value: fits ? sleeveMm + 0.5 : sleeveMm - 2 },
    );
  return {
    id: 'bore',
    part: 'plates',
    about: `${first.item.id}.boreMm`,
    says: message('question_bore', { sleeve: { mm: sleeveMm } }),
    chance: 1 - chance,
    bad: set(false),
    good: set(true),
  };
}

function count(item: Item): Unknown<UnknownId> | null {
  if (!isPlate(item.kind.value) || item.count !== null || item.unitWeight === null || item.totalWeight !== null) return null;
  return {
    id: 'count',
    part: 'plates',
    about: `${item.id}.count`,
    says: message('question_count', { weight: { weight: item.unitWeight.value } }),
    chance: FEWER,
    bad: [{ path: `${item.id}.count`, value: 1 }],
    good: [{ path: `${item.id}.count`, value: 2 }],
  };
}

/** At most so many unknowns are weighed together: the states double with each, and each costs a valuation of all items. */
const mostFor = (items: number): number => (items <= 40 ? 5 : 2);

/** The unknowns of a reading, likeliest to matter first, at the buyer's own chances where there are any. */
export function unknownsOf(reading: Reading, plates: readonly PlateWeight[], settings: Settings): Unknown<UnknownId>[] {
  const found: (Unknown<UnknownId> | null)[] = [bore(plates)];
  const bars = reading.items.filter((item) => item.kind.value === 'bar').slice(0, 2);
  for (const bar of bars) found.push(straightness(bar), shaft(bar));
  for (const item of reading.items) found.push(found.length < 20 ? count(item) : null);
  return found
    .filter((one) => one !== null)
    .slice(0, mostFor(reading.items.length))
    .map((one) => ({ ...one, chance: settings.chances[one.id] ?? one.chance }));
}
