/** Makes drafts of the quantities and of the nouns that no quantity took. */
import { isPlate, type Kind } from '../../listing/reading.ts';
import type { Noun, Quantity, Total } from '../mention.ts';
import { isInLeftOutList } from '../recognisers/left-out-lists.ts';
import { countBefore, isAside } from '../recognisers/nouns.ts';
import { pronounOwner } from '../recognisers/pronouns.ts';
import { BESIDE } from '../recognisers/totals.ts';
import { isTradedAway, isTradedFor } from '../recognisers/traded-for.ts';
import { says } from '../text/says.ts';
import { blank, type Scan } from '../text/scan.ts';
import { assignKinds, sizeKind } from './assign-kinds.ts';
import { isBar } from './attach-facts.ts';
import { type Draft, draft } from './draft.ts';

const HOLDERS: readonly Kind[] = ['storage', 'rack', 'stands', 'bench', 'other'];

const known = <T>(value: T, place: { rule: string; from: number; to: number }, implied = false) => ({
  value,
  rule: place.rule,
  from: place.from,
  to: place.to,
  implied,
});

/** The metal that heads a list: "IRON, all 2 inch". */
function materialOf(scan: Scan, at: number | undefined): Draft['material'] {
  const material = at === undefined ? undefined : scan.tokens[at]?.term?.material;
  return at === undefined || !material ? null : known(material, { rule: 'heading', from: at, to: at });
}

/** "per side", "on each end" behind a quantity in its clause doubles it. */
function sides(scan: Scan, quantity: Quantity): number {
  for (let i = quantity.to + 1; i < scan.tokens.length && scan.clause[i] === scan.clause[quantity.to]; i += 1) {
    if (scan.plain[i] === 'g') return 2;
  }
  for (let i = quantity.from - 1; i >= 0 && scan.clause[i] === scan.clause[quantity.from] && quantity.from - i < 12; i -= 1) {
    if (scan.plain[i] === 'g') return 2;
  }
  return 1;
}

/** Weights that are spoken of but not sold: "keeping the 45s", "no 45s". */
function isKept(scan: Scan, quantity: Quantity): boolean {
  if (isTradedFor(scan, quantity.from) || isBesideNoPlates(scan, quantity) || isSought(scan, quantity.from)) return true;
  if (isMissing(scan, quantity) || isCapacity(scan, quantity.from) || isInLeftOutList(scan, quantity.from)) return true;
  const before = scan.plain.slice(Math.max(0, quantity.from - 4), quantity.from);
  return (
    scan.clause[quantity.from] === scan.clause[Math.max(0, quantity.from - 1)] &&
    (/(?:N[aX]?|Q[a-zX,]{0,2})$/.test(before) || (quantity.count === null && /X[a]$/.test(before)))
  );
}

/** "Looking for two 35s and a 10 in trade": a list right behind the word of seeking, and no sum of money. */
function isSought(scan: Scan, from: number): boolean {
  for (let i = from - 1; i >= 0 && from - i < 16 && scan.clause[i] === scan.clause[from]; i -= 1) {
    if (scan.plain[i] === 'W' || (scan.senses.has('trade') && says(scan, i, 'wants-label'))) return scan.letters[i + 1] !== 'M';
    if (!'nduhsqvimCkafxpo,/c'.includes(scan.plain[i] ?? '_')) return false;
  }
  return false;
}

/** "Missing two 45s", "leider fehlt eine 5 kg Scheibe", "eine 5 kg Scheibe fehlt". */
function isMissing(scan: Scan, { from, to }: Quantity): boolean {
  const said = (at: number): boolean => scan.clause[at] === scan.clause[from] && says(scan, at, 'missing');
  return (
    said(from - 1) ||
    (scan.plain[from - 1] === 'a' && said(from - 2)) ||
    (said(to + 1) && !/[,(]/.test(scan.plain[to + 1] ?? ','))
  );
}

/** "Weight tree, holds up to ten 45s", "rack, room for 12 pairs": what goes on a thing that holds goods. */
function isCapacity(scan: Scan, from: number): boolean {
  let at = from - 1;
  while (at >= 0 && from - at < 5 && 'Uazmp'.includes(scan.plain[at] ?? '_')) at -= 1;
  if (!'XK'.includes(scan.plain[at] ?? '_')) return false;
  for (let i = at - 1; i >= 0 && at - i < 20 && scan.clause[i] === scan.clause[at]; i -= 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (kind !== undefined) return HOLDERS.includes(kind);
  }
  return false;
}

/** "No plates for sale, the 4x45 in the photo hold it down": plates are denied in the same clause before. */
function isBesideNoPlates(scan: Scan, quantity: Quantity): boolean {
  if (quantity.noun !== null) return false;
  for (let i = quantity.from - 1; i > 0 && quantity.from - i < 20 && scan.clause[i] === scan.clause[quantity.from]; i -= 1) {
    const term = scan.plain[i] === 'k' ? scan.tokens[i]?.term : undefined;
    if (term?.kind === 'plate' && term.plural && /N[am]?$/.test(scan.plain.slice(Math.max(0, i - 2), i))) return true;
  }
  return false;
}

/** Lines of a list under a heading such as "NOT included:". */
function excludedLines(scan: Scan): Set<number> {
  const lines = new Set<number>();
  if (!scan.plain.includes('Q')) return lines;
  const rows = scan.plain.split('l');
  let under = false;
  rows.forEach((row, line) => {
    const listed = /^[•-]/.test(row);
    if (!listed) under = /^Q/.test(row) && !row.includes('k');
    else if (under) lines.add(line);
  });
  return lines;
}

export function draftsOfQuantities(scan: Scan, quantities: readonly Quantity[]): Draft[] {
  const kinds = assignKinds(scan, quantities);
  const excluded = excludedLines(scan);
  const shares = new Map<number, number>();
  kinds.forEach(({ at, kind }, index) => {
    if (isBar(kind) && quantities[index]?.count === null) shares.set(at, (shares.get(at) ?? 0) + 1);
  });
  // "3 bars. 45 lb chrome $80, 45 lb black $100, 35 lb $90": as many weights as bars, each that of one.
  const oneByOne = new Set([...shares].flatMap(([at, told]) => (told > 1 && countBefore(scan, at).count === told ? [at] : [])));
  const drafts: Draft[] = [];
  quantities.forEach((quantity, index) => {
    const assigned = kinds[index];
    if (!assigned) return;
    const { rule, from, to } = quantity;
    const noun = quantity.noun;
    if (noun !== null && isAside(scan, noun)) return;
    if (isKept(scan, quantity) || excluded.has(scan.tokens[from]?.line ?? -1)) return;
    const factor = isPlate(assigned.kind) && quantity.weight !== null ? sides(scan, quantity) : 1;
    // The noun of a bar or a bench tells how many there are, and is used up so that it makes no second item.
    const owned =
      quantity.count === null && !isPlate(assigned.kind) && (scan.letters[assigned.at] === 'k' || quantity.noun === assigned.at);
    // One of "two bars": the noun stays for what the pronouns tell apart.
    const singly = quantity.count === null && oneByOne.has(assigned.at);
    const spoken = owned && quantity.noun === null && pronounOwner(scan, from) === assigned.at;
    const told = spoken || singly ? { count: 1 } : owned ? countBefore(scan, assigned.at) : null;
    if (owned && !spoken) blank(scan, assigned.at);
    const one = owned && scan.tokens[assigned.at]?.term?.plural !== true && assigned.kind !== 'dumbbell';
    const pieces =
      quantity.count === null && told !== null
        ? (told.count ?? (one ? 1 : null))
        : quantity.count === null
          ? factor === 2 && quantity.rule !== 'weight-alone'
            ? 1
            : null
          : quantity.count;
    const single =
      assigned.kind === 'kettlebell' &&
      pieces === null &&
      quantity.weight !== null &&
      !'sv'.includes(scan.plain[quantity.to] ?? '_');
    const couple = assigned.kind === 'collars' || assigned.kind === 'stands';
    drafts.push(
      draft(
        assigned.kind,
        { rule, from, to },
        {
          kindAt: rule === 'headed-line' ? from : assigned.at,
          kindAssumed: assigned.assumed,
          count:
            pieces === null
              ? single || couple
                ? known(couple ? 2 : 1, quantity, true)
                : null
              : known(pieces * factor, quantity, quantity.countImplied),
          weight: quantity.weight === null ? null : known(quantity.weight, quantity),
          unit: quantity.unit,
          partitive: quantity.partitive === true || isTradedAway(scan, quantity.from),
          either: quantity.either === true,
          list: quantity.list ?? null,
          ...(quantity.was === undefined ? {} : { was: quantity.was }),
          material: materialOf(scan, assigned.metal),
        },
      ),
    );
  });
  return drafts;
}

export function draftsOfNouns(scan: Scan, nouns: readonly Noun[]): Draft[] {
  const excluded = excludedLines(scan);
  return nouns
    .filter((noun) => !excluded.has(scan.tokens[noun.from]?.line ?? -1))
    .map((noun) => {
      const place = { rule: noun.rule, from: noun.from, to: noun.to };
      const pairs = noun.kind === 'collars' || noun.kind === 'stands';
      const single = !noun.plural && !isPlate(noun.kind) && noun.kind !== 'dumbbell' && noun.kind !== 'kettlebell';
      const count = noun.count ?? (pairs ? 2 : single ? 1 : null);
      return draft(noun.kind, place, { count: count === null ? null : known(count, place, noun.count === null) });
    });
}

/** A total of goods with no pieces told is the plates' total. */
export function applyTotals(drafts: readonly Draft[], totals: readonly Total[]): void {
  const plates = drafts.filter((item) => isPlate(item.kind) && !item.sold);
  const told = plates.filter((item) => item.weight !== null);
  const [first] = plates;
  const goods =
    totals.find((total) => ['weight-of-goods', 'heavy-goods', BESIDE].includes(total.rule) && !total.set) ??
    // "Iron plates, standard hole, approx 160 lbs total", where nothing else that weighs is named.
    (plates.length === 1 && plates[0]?.count === null && !drafts.some(({ weight, sold }) => weight && !sold)
      ? totals.find(
          (total) => ['weight-in-goods', 'total-behind', 'total-first', 'lone-total'].includes(total.rule) && !total.set,
        )
      : undefined);
  if (first && told.length === 0 && goods) {
    first.total = { value: goods.weight, unit: goods.unit ?? 'lb', place: goods };
    if (!first.places.some(({ from }) => from === goods.from)) first.places.push(goods);
  }
}

/** Kinds by size once units are known. */
export function settleKinds(drafts: readonly Draft[]): void {
  for (const item of drafts) item.kind = sizeKind(item.kind, item.weight?.value ?? null, item.unit);
}
