/** Compares a reading with a label, field by field. */
import { type Item, isPlate, type Reading } from '../../src/listing/reading.ts';
import { inPounds } from '../../src/units/mass.ts';
import { inMajor } from '../../src/units/money.ts';
import { type Label, type LabelItem, weightOf } from './case.ts';

export interface Tally {
  right: number;
  /** Said by the reading but not so. */
  wrong: number;
  /** In the label but not read. */
  missed: number;
}

export interface Verdict {
  readonly name: string;
  readonly fields: Map<string, Tally>;
  /** What differs, in words. */
  readonly faults: string[];
  /** A decisive value is wrong and no doubt was raised about it. */
  confidentlyWrong: string[];
}

const near = (a: number, b: number, tolerance = 0.005): boolean => Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(b));
const SCORED = (kind: string): boolean => kind !== 'other' && kind !== 'storage';

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
const counted = (reading: Reading, label: Label): Item[] => {
  const open = label.items?.some((item) => item.implied) ?? false;
  return reading.items.filter((item) => SCORED(item.kind.value) && !(open && item.basis === 'implied'));
};

const sameWeight = (a: string | null | undefined, b: string | null | undefined): boolean => {
  const first = weightOf(a);
  const second = weightOf(b);
  return first === null || second === null ? first === second : first.unit === second.unit && near(first.value, second.value);
};

function matchItems(
  read: LabelItem[],
  want: LabelItem[],
): { pairs: [LabelItem, LabelItem][]; extra: LabelItem[]; missing: LabelItem[] } {
  const rest = [...read];
  const pairs: [LabelItem, LabelItem][] = [];
  const missing: LabelItem[] = [];
  for (const wanted of want) {
    const at = rest.findIndex(
      (item) =>
        item.kind === wanted.kind &&
        (item.count ?? null) === (wanted.count ?? null) &&
        sameWeight(item.unitWeight, wanted.unitWeight),
    );
    const [found] = at === -1 ? [] : rest.splice(at, 1);
    if (found) pairs.push([found, wanted]);
    else missing.push(wanted);
  }
  return { pairs, extra: rest, missing };
}

export function judge(name: string, reading: Reading, label: Label): Verdict {
  const verdict: Verdict = { name, fields: new Map(), faults: [], confidentlyWrong: [] };
  const doubtful = label.doubtful ?? [];
  const doubted = (path: string): boolean =>
    doubtful.some((about) => about === path || path.startsWith(`${about}.`) || about.startsWith(path)) ||
    reading.doubts.some(
      (doubt) => doubt.about === path || doubt.about.startsWith(path) || path.startsWith(doubt.about.split('.')[0] ?? '-'),
    );
  const tally = (field: string): Tally => {
    const known = verdict.fields.get(field) ?? { right: 0, wrong: 0, missed: 0 };
    verdict.fields.set(field, known);
    return known;
  };
  const compare = (field: string, said: unknown, want: unknown, equal: boolean, decisive = false): void => {
    const counts = tally(field);
    if (equal) {
      if (want !== null && want !== undefined && want !== false) counts.right += 1;
      return;
    }
    if (said !== null && said !== undefined && said !== false) counts.wrong += 1;
    if (want !== null && want !== undefined && want !== false) counts.missed += 1;
    verdict.faults.push(`${field}: read ${JSON.stringify(said)}, label ${JSON.stringify(want)}`);
    if (decisive && !doubted(field) && said !== null && said !== undefined) verdict.confidentlyWrong.push(field);
  };
  const about = label.aboutThisTrade ?? true;
  const wanted = label.wanted ?? false;
  const trade = tally('aboutThisTrade');
  if (reading.aboutThisTrade === about) trade.right += 1;
  else {
    trade.wrong += 1;
    verdict.faults.push(`aboutThisTrade: read ${reading.aboutThisTrade}`);
    if (!doubted('aboutThisTrade')) verdict.confidentlyWrong.push('aboutThisTrade');
  }
  if (!about) return verdict;
  compare('wanted', reading.wanted, wanted, reading.wanted === wanted, true);
  if (wanted) return verdict;
  const asking = label.asking ?? {};
  const amount = reading.asking.amount ? inMajor(reading.asking.amount.value) : null;
  const wantAmount = asking.amount ?? null;
  compare(
    'asking.amount',
    amount,
    wantAmount,
    amount === null || wantAmount === null ? amount === wantAmount : near(amount, wantAmount),
    true,
  );
  compare('asking.basis', reading.asking.basis, asking.basis ?? 'none', reading.asking.basis === (asking.basis ?? 'none'), true);
  const unit = reading.asking.unitAmount ? inMajor(reading.asking.unitAmount.value) : null;
  const wantUnit = asking.unitAmount ?? null;
  compare('asking.unitAmount', unit, wantUnit, unit === null || wantUnit === null ? unit === wantUnit : near(unit, wantUnit));
  if (wantAmount !== null && asking.currency)
    compare(
      'asking.currency',
      reading.asking.currency?.value ?? null,
      asking.currency,
      reading.asking.currency?.value === asking.currency,
    );
  compare(
    'asking.firm',
    reading.asking.firm?.value ?? false,
    asking.firm ?? false,
    (reading.asking.firm?.value ?? false) === (asking.firm ?? false),
  );
  compare(
    'asking.openToOffers',
    reading.asking.openToOffers?.value ?? false,
    asking.openToOffers ?? false,
    (reading.asking.openToOffers?.value ?? false) === (asking.openToOffers ?? false),
  );
  judgeItems(verdict, reading, label, tally, compare, doubted);
  const total = reading.statedTotal?.value ?? null;
  const wantTotal = weightOf(label.statedTotal);
  compare(
    'statedTotal',
    total && `${total.value} ${total.unit}`,
    label.statedTotal ?? null,
    total === null || wantTotal === null ? total === wantTotal : near(inPounds(total), inPounds(wantTotal)),
  );
  return verdict;
}

type Compare = (field: string, said: unknown, want: unknown, equal: boolean, decisive?: boolean) => void;

function judgeItems(
  verdict: Verdict,
  reading: Reading,
  label: Label,
  tally: (field: string) => Tally,
  compare: Compare,
  doubted: (path: string) => boolean,
): void {
  const want = (label.items ?? []).filter((item) => SCORED(item.kind) && !(item.implied && !item.unitWeight));
  const read = counted(reading, label)
    .map(asLabel)
    .filter((item) => !(label.items?.some((other) => other.implied && other.kind === item.kind) && item.unitWeight === null));
  const { pairs, extra, missing } = matchItems(read, want);
  const items = tally('items');
  items.right += pairs.length;
  items.wrong += extra.length;
  items.missed += missing.length;
  if (extra.length + missing.length > 0)
    verdict.faults.push(`items: read too much [${extra.map(shown).join(', ')}], missed [${missing.map(shown).join(', ')}]`);
  const decisive = extra.filter((item) => isPlate(item.kind) && item.count !== null && item.unitWeight !== null);
  if (decisive.length > 0 && !decisive.every((item) => doubted(item.kind))) verdict.confidentlyWrong.push('items');
  for (const [item, wanted] of pairs) {
    const what = shown(wanted);
    for (const field of ['fits', 'material'] as const)
      compare(`item.${field}`, item[field] ?? null, wanted[field] ?? null, (item[field] ?? null) === (wanted[field] ?? null));
    for (const field of ['boreMm', 'shaftMm', 'lengthMm', 'ownPrice'] as const) {
      const said = item[field] ?? null;
      const told = wanted[field] ?? null;
      compare(
        `item.${field}`,
        said === null ? null : `${said} (${what})`,
        told,
        said === null || told === null ? said === told : near(said, told, 0.01),
      );
    }
    for (const word of new Set([...(item.condition ?? []), ...(wanted.condition ?? [])])) {
      const said = item.condition?.includes(word) ?? false;
      const told = (wanted.condition ?? []).includes(word as never);
      compare('item.condition', said ? `${word} (${what})` : null, told ? `${word} (${what})` : null, said && told);
    }
  }
  const pounds = (list: LabelItem[]): number =>
    list
      .filter((item) => isPlate(item.kind))
      .reduce((sum, item) => {
        const unit = weightOf(item.unitWeight);
        const total = weightOf(item.totalWeight);
        return sum + (total ? inPounds(total) : unit && item.count ? item.count * inPounds(unit) : 0);
      }, 0);
  const wantPounds = pounds(want);
  if (wantPounds > 0) {
    const readPounds = reading.items
      .filter((item) => isPlate(item.kind.value))
      .reduce((sum, item) => sum + (item.totalWeight ? inPounds(item.totalWeight.value) : 0), 0);
    const weight = tally('plateWeight');
    if (near(readPounds, wantPounds, 0.01)) weight.right += 1;
    else {
      weight.missed += 1;
      weight.wrong += readPounds > 0 ? 1 : 0;
      verdict.faults.push(`plateWeight: read ${Math.round(readPounds)} lb, label ${Math.round(wantPounds)} lb`);
    }
  }
}
