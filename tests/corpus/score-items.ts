/** Compares the items of a reading with those of a label: which are there, then the facts of those that are. */
import { type Item, isPlate, type Reading } from '../../src/listing/reading.ts';
import { inPounds } from '../../src/units/mass.ts';
import { inMajor } from '../../src/units/money.ts';
import { type Label, type LabelItem, weightOf } from './case.ts';
import { type Judge, near } from './verdict.ts';

/** Storage and other goods are not what the buyer is after. */
const isScored = (kind: string): boolean => kind !== 'other' && kind !== 'storage';
const shown = (item: LabelItem): string => `${item.count ?? '?'} ${item.kind} ${item.unitWeight ?? '?'}`;

const asLabel = (item: Item): LabelItem => ({
  kind: item.kind.value,
  count: item.count?.value ?? null,
  unitWeight: item.unitWeight ? `${item.unitWeight.value.value} ${item.unitWeight.value.unit}` : null,
  fits: item.fits?.value ?? null,
  boreMm: item.boreMm?.value ?? null,
  shaftMm: item.shaftMm?.value ?? null,
  lengthMm: item.lengthMm?.value ?? null,
  material: item.material?.value ?? null,
  condition: item.conditions.map(({ value }) => value),
  ownPrice: item.ownPrice ? inMajor(item.ownPrice.value) : null,
});

/** A set's implied composition is not held against a label that leaves it open. */
function readItems(reading: Reading, label: Label): LabelItem[] {
  const open = label.items?.filter((item) => item.implied) ?? [];
  return reading.items
    .filter((item) => isScored(item.kind.value) && !(open.length > 0 && item.basis === 'implied'))
    .map(asLabel)
    .filter((item) => !(item.unitWeight === null && open.some(({ kind }) => kind === item.kind)));
}

const wantedItems = (label: Label): LabelItem[] =>
  (label.items ?? []).filter((item) => isScored(item.kind) && !(item.implied && !item.unitWeight));

function sameWeight(a: string | null | undefined, b: string | null | undefined): boolean {
  const first = weightOf(a);
  const second = weightOf(b);
  return first === null || second === null ? first === second : first.unit === second.unit && near(first.value, second.value);
}

/** Kind, count and unit weight must all be right. */
const sameItem = (a: LabelItem, b: LabelItem): boolean =>
  a.kind === b.kind && (a.count ?? null) === (b.count ?? null) && sameWeight(a.unitWeight, b.unitWeight);

interface Matched {
  readonly pairs: readonly (readonly [LabelItem, LabelItem])[];
  readonly extra: readonly LabelItem[];
  readonly missing: readonly LabelItem[];
}

function matchItems(read: readonly LabelItem[], want: readonly LabelItem[]): Matched {
  const extra = [...read];
  const pairs: [LabelItem, LabelItem][] = [];
  const missing: LabelItem[] = [];
  for (const wanted of want) {
    const at = extra.findIndex((item) => sameItem(item, wanted));
    const [found] = at === -1 ? [] : extra.splice(at, 1);
    if (found) pairs.push([found, wanted]);
    else missing.push(wanted);
  }
  return { pairs, extra, missing };
}

export function scoreItems(judged: Judge, reading: Reading, label: Label): void {
  const { pairs, extra, missing } = matchItems(readItems(reading, label), wantedItems(label));
  const items = judged.tally('items');
  items.right += pairs.length;
  items.wrong += extra.length;
  items.missed += missing.length;
  if (extra.length + missing.length > 0)
    judged.fault(`items: read too much [${extra.map(shown).join(', ')}], missed [${missing.map(shown).join(', ')}]`);
  const decisive = extra.filter((item) => isPlate(item.kind) && item.count !== null && item.unitWeight !== null);
  if (decisive.length > 0 && !decisive.every((item) => judged.doubted(item.kind))) judged.verdict.confidentlyWrong.push('items');
  for (const [read, want] of pairs) scoreFacts(judged, read, want);
}

function scoreFacts(judged: Judge, read: LabelItem, want: LabelItem): void {
  const of = (value: unknown): string | null => (value === null ? null : `${value} (${shown(want)})`);
  for (const field of ['fits', 'material'] as const) {
    const [said, told] = [read[field] ?? null, want[field] ?? null];
    judged.compare(`item.${field}`, of(said), of(told), said === told);
  }
  for (const field of ['boreMm', 'shaftMm', 'lengthMm', 'ownPrice'] as const) {
    const [said, told] = [read[field] ?? null, want[field] ?? null];
    judged.compare(`item.${field}`, of(said), of(told), said === null || told === null ? said === told : near(said, told, 0.01));
  }
  for (const word of new Set([...(read.condition ?? []), ...(want.condition ?? [])])) {
    const said = (read.condition ?? []).includes(word);
    const told = (want.condition ?? []).includes(word);
    judged.compare('item.condition', said ? of(word) : null, told ? of(word) : null, said && told);
  }
}

const poundsOf = (item: LabelItem): number => {
  const unit = weightOf(item.unitWeight);
  const total = weightOf(item.totalWeight);
  return total ? inPounds(total) : unit && item.count ? item.count * inPounds(unit) : 0;
};

/** Weight of all plates together, within one per cent: what the cost per usable pound hangs on. */
export function scorePlateWeight(judged: Judge, reading: Reading, label: Label): void {
  const want = wantedItems(label)
    .filter((item) => isPlate(item.kind))
    .reduce((sum, item) => sum + poundsOf(item), 0);
  if (want <= 0) return;
  const read = reading.items
    .filter((item) => isPlate(item.kind.value))
    .reduce((sum, item) => sum + (item.totalWeight ? inPounds(item.totalWeight.value) : 0), 0);
  const weight = judged.tally('plateWeight');
  if (near(read, want, 0.01)) {
    weight.right += 1;
    return;
  }
  weight.missed += 1;
  weight.wrong += read > 0 ? 1 : 0;
  judged.fault(`plateWeight: read ${Math.round(read)} lb, label ${Math.round(want)} lb`);
}
