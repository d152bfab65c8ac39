/** Gives each quantity its kind: the noun in its notation, else the noun behind its list, else the noun before it on the line, else the heading, else the ad's own. */
import { isPlate, type Kind } from '../../listing/reading.ts';
import type { Quantity } from '../mention.ts';
import { isAside } from '../recognisers/nouns.ts';
import { pronounOwner } from '../recognisers/pronouns.ts';
import type { Scan } from '../text/scan.ts';
import { isIronHead } from './iron-head.ts';

const WEIGHED: readonly Kind[] = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];
const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];

export interface Assigned {
  readonly kind: Kind;
  readonly at: number;
  readonly assumed: boolean;
  /** Token of the metal that heads the list. */
  readonly metal?: number;
}

function kindAt(scan: Scan, at: number): Kind | undefined {
  const term = scan.plain[at] === 'k' ? scan.tokens[at]?.term : undefined;
  // Technique plates of full height are light bumpers.
  return term?.sense === 'full-height-too' && scan.senses.has('full-height') ? 'bumper' : term?.kind;
}

/** "weights" and the like beside a more telling noun of the ad give way to it. */
function specific(kind: Kind, scan: Scan, at: number, dominant: Kind): Kind {
  if (kind !== 'plate') return kind;
  const weak = scan.tokens[at]?.term?.weak === true && !/plate|disc|disk|scheibe|platte/.test(scan.tokens[at]?.text ?? '');
  // "Some 25 lb weights, dumbbells and a bench": a list, whose next member is another thing.
  const next = /^[,c]{1,2}[amC]{0,3}k/.exec(scan.plain.slice(at + 1, at + 7));
  const listed = next !== null && dominant !== 'bumper' && kindAt(scan, at + next[0].length) === dominant;
  return weak && !listed ? dominant : kind;
}

/** How far before a noun the goods before it with their price may stand. */
const PRICED = 12;

/** "45s .90/lb, bumpers 1.40/lb": a noun with a price of its own behind weights that have theirs. */
const isOwnLine = (scan: Scan, at: number): boolean =>
  /^[-:@]?(?:\$n|n[/r]u)/.test(scan.plain.slice(at + 1, at + 5)) &&
  /[suhv]-?(?:\$n|n[/r]u)[^kl]{0,6},c?$/.test(scan.plain.slice(Math.max(0, at - PRICED), at));

/** Heaviest bars, in lb and kg: those for squats. */
const HEAVIEST_BAR = { lb: 95, kg: 43 } as const;

/** Heaviest plate for a dumbbell's handle, in lb and kg. */
const HANDLE_PLATE = { lb: 12.5, kg: 5 } as const;

/** "Dumbbell set: 2 handles, 4 x 2.5 kg, 4 x 1.25 kg": plates for the handles, where several of a size are told after them. */
function isForHandles(scan: Scan, { from, count, weight, unit }: Quantity, least = 3): boolean {
  if (weight === null || count === null || count < least || weight > HANDLE_PLATE[unit ?? 'lb']) return false;
  for (let i = from - 1; i >= 0 && from - i < 30 && scan.clause[i] === scan.clause[from]; i -= 1)
    if (scan.tokens[i]?.term?.sense === 'handle') return true;
  return false;
}

/** "Wall balls 14 lb, 5", "medicine balls 10 lb, 12 lb and 14 lb", "a weighted vest, 40 lbs": the token of the goods that are no plates. */
function ofHeavyGoods(scan: Scan, { from, noun, count, rule }: Quantity): number | null {
  if (noun !== null) return null;
  // "Stall mats, $30 each, they are 100 lb apiece": a lone weight may stand far behind.
  const lone = count === null && rule === 'weight-alone';
  for (let i = from - 1; i >= 0 && from - i < 24 && scan.clause[i] === scan.clause[from]; i -= 1) {
    if (scan.plain[i] === 'k') return scan.tokens[i]?.term?.sense === 'heavy' ? i : null;
    if (lone && scan.plain[i] !== 'c') continue;
    if (!'nduhsqc,/xp()-:UaC%&'.includes(scan.plain[i] ?? '_') || scan.letters[i] === 'M') return null;
  }
  return null;
}

/** The kind of weighed goods that the ad is mostly about: bumpers or dumbbells only when no plates are named. */
function dominantKind(scan: Scan): Kind {
  const seen = new Map<Kind, number>();
  for (let i = 0; i < scan.tokens.length; i += 1) {
    const kind = kindAt(scan, i);
    // "Weights" may be of any kind, "iron plates" are plates.
    const vague = kind === 'plate' && scan.tokens[i]?.term?.weak && scan.tokens[i - 1]?.term?.material !== 'iron';
    if (kind && WEIGHED.includes(kind) && !isAside(scan, i) && !isOwnLine(scan, i))
      seen.set(kind, (seen.get(kind) ?? 0) + (vague ? 0.5 : 1));
  }
  const plates = seen.get('plate') ?? 0;
  const set =
    /[kt]/.test(scan.plain) && [...scan.plain].some((letter, i) => letter === 'k' && BARS.includes(kindAt(scan, i) ?? 'other'));
  for (const kind of ['bumper', 'dumbbell', 'kettlebell', 'micro'] as const) {
    const count = seen.get(kind) ?? 0;
    if (count > 0 && count >= plates * 2 && !(set && kind !== 'bumper')) return kind;
  }
  // "Dumbbell tree with 5 pairs: 3, 5, 8": what stands on it.
  if (
    seen.size === 0 &&
    !set &&
    scan.tokens.some(({ text, term }) => term?.kind === 'storage' && scan.language.cues['of-dumbbells'].is(text))
  )
    return 'dumbbell';
  return 'plate';
}

function behind(scan: Scan, quantity: Quantity): number | null {
  let joined = false;
  for (let i = quantity.to + 1; i < Math.min(scan.tokens.length, quantity.to + 40); i += 1) {
    const letter = scan.plain[i] ?? 'l';
    if (scan.clause[i] !== scan.clause[quantity.to]) return null;
    const kind = kindAt(scan, i);
    if (kind) {
      // "iron 4 x 20, bumpers 2 x 10": the noun begins a list of its own.
      if (joined && isOwnLine(scan, i)) return null;
      if (WEIGHED.includes(kind) && joined && /^[-:]?[nd]x?[nv]/.test(scan.plain.slice(i + 1, i + 5))) return null;
      if (WEIGHED.includes(kind)) return joined && i - quantity.to > 1 && 'ca'.includes(scan.plain[i - 1] ?? '_') ? null : i;
      // "2 2.5s clips" are plates, then clips; so is what stands before them.
      const beside = !'sv'.includes(scan.plain[quantity.to] ?? '_') && /^[mC]*$/.test(scan.plain.slice(quantity.to + 1, i));
      if (kind === 'collars' && !joined && beside && (quantity.weight ?? 99) <= 5) return i;
      // "A 15 kg 25 mm bar": the one piece that the article counts, its measure between.
      const sized = /^nm?[f"']$/.test(scan.plain.slice(quantity.to + 1, i).replace(/m{1,2}$/, ''));
      if (quantity.rule === 'a-weight' && sized && BARS.includes(kind)) return i;
      return !joined && quantity.count === null && BARS.includes(kind) && i - quantity.to <= 3 ? i : null;
    }
    if (scan.clause[i] !== scan.clause[quantity.to] || letter === 'l' || letter === '|') return null;
    if (letter === 'c' || letter === ',' || letter === '/') joined = true;
    const inList = 'mC,c/()-=xnduhqspetEovi:j.f"'.includes(letter) || (scan.letters[i] === '_' && 'nduhs'.includes(letter));
    if (!inList) return null;
  }
  return null;
}

function before(scan: Scan, quantity: Quantity): number | null {
  const line = scan.tokens[quantity.from]?.line;
  for (let i = quantity.from - 1; i >= 0 && scan.tokens[i]?.line === line && quantity.from - i < 80; i -= 1) {
    const kind = kindAt(scan, i);
    if (
      kind &&
      BARS.includes(kind) &&
      (quantity.weight ?? 0) >= (quantity.unit === 'kg' ? 5 : 10) &&
      scan.tokens[i]?.term?.plural &&
      quantity.count !== null &&
      scan.clause[i] !== scan.clause[quantity.from] &&
      // "Plates fit olympic bars. 4x45 lb".
      !isAside(scan, i)
    )
      return i;
    // "Olympic bars 45 and 35 lb": a list right behind its noun.
    const beside =
      quantity.count === null && quantity.unit !== null && /^[nuhs,c/:-]{0,12}$/.test(scan.plain.slice(i + 1, quantity.from));
    if (kind && BARS.includes(kind) && beside && scan.tokens[i]?.term?.plural && (quantity.weight ?? 0) >= 10) return i;
    // "Collars 2.5 kg", but "bar with collars, 4 x 5 kg".
    if (kind === 'collars' && quantity.from - i <= 2 && (quantity.weight ?? 99) <= 5 && (quantity.count ?? 2) <= 2) return i;
    if (kind && WEIGHED.includes(kind)) return i;
    if (kind && !WEIGHED.includes(kind) && /[:(]/.test(scan.plain.slice(i + 1, i + 3))) return null;
  }
  return null;
}

/** The noun of the nearest heading above: a line that names goods and no quantity of its own. */
function heading(scan: Scan, quantity: Quantity, busy: ReadonlySet<number | undefined>): number | null {
  const line = scan.tokens[quantity.from]?.line ?? 0;
  let i = quantity.from - 1;
  while (i >= 0 && scan.tokens[i]?.line === line) i -= 1;
  for (let steps = 0; i >= 0 && steps < 400; i -= 1, steps += 1) {
    const at = scan.tokens[i]?.line ?? 0;
    if (scan.plain[i] === 'm' && !busy.has(at) && isIronHead(scan, i)) return i;
    const kind = kindAt(scan, i);
    if (kind && !busy.has(at) && at > 0 && WEIGHED.includes(kind) && !isAside(scan, i)) {
      let first = i;
      let last = i;
      while (i - first < 9 && scan.tokens[first - 1]?.line === at) first -= 1;
      while (last - i < 9 && scan.tokens[last + 1]?.line === at) last += 1;
      if (last - first < 8) return i;
    }
  }
  return null;
}

/** "Bars: (2) olympic 45 lb". */
const isBarWeight = ({ weight, unit, count }: Quantity): boolean =>
  weight !== null && count !== null && weight >= (unit === 'kg' ? 5 : 10) && unit !== null;

/** "Bumpers: 2x20 kg, 2x15 kg": a noun and colon before the list name its goods, up to a "+" and other goods behind it. */
function titled(scan: Scan, quantity: Quantity): number | null {
  const next = scan.plain.slice(quantity.to + 1, quantity.to + 6);
  if (/^[mC]{0,4}k/.test(next)) return null;
  for (let i = quantity.from - 1; i >= 0 && scan.clause[i] === scan.clause[quantity.from] && quantity.from - i < 80; i -= 1) {
    if (scan.tokens[i]?.text === '+') return null;
    if (scan.plain[i] !== ':') continue;
    for (let j = i - 1; j >= Math.max(0, i - 5); j -= 1) {
      const kind = kindAt(scan, j);
      if (kind)
        return WEIGHED.includes(kind) || (BARS.includes(kind) && scan.tokens[j]?.term?.plural && isBarWeight(quantity))
          ? j
          : null;
    }
    return null;
  }
  return null;
}

/** "Rubber bumpers - 2 ea 45. Iron - 2 ea 10": iron at the head of a clause speaks of plates. */
function isUnderIron(scan: Scan, quantity: Quantity): boolean {
  let first = quantity.from;
  while (first > 0 && quantity.from - first < 60 && scan.clause[first - 1] === scan.clause[quantity.from]) first -= 1;
  const right = scan.tokens[quantity.from - 1]?.term?.material === 'iron' && behind(scan, quantity) === null;
  return (
    right || (scan.tokens[first]?.term?.material === 'iron' && /^m(?:,[zmC]{1,3})?[-:]/.test(scan.plain.slice(first, first + 6)))
  );
}

/** "12 mens, 20 kg": bars go by those who lift them, where no noun says otherwise. */
const isOfLifters = (scan: Scan, quantity: Quantity): boolean =>
  quantity.noun === null &&
  scan.tokens.slice(quantity.from, quantity.to + 1).some(({ term }) => term?.sense === 'lifter') &&
  isBarWeight(quantity) &&
  (quantity.weight ?? 0) <= (quantity.unit === 'kg' ? 25 : 55) &&
  behind(scan, quantity) === null;

/** Iron beside the weight itself. */
const isOfIron = (scan: Scan, { from, to }: Quantity): boolean =>
  scan.tokens.slice(from, to + 2).some(({ term }) => term?.material === 'iron');

/** "Two bars. One is 45 lb": a lone weight behind a pronoun is that of the goods it stands for. */
const spokenOf = (scan: Scan, quantity: Quantity): number | null =>
  quantity.rule === 'weight-alone' && quantity.unit !== null ? pronounOwner(scan, quantity.from) : null;

/** A lone weight with a unit and no count ("Bar. 45lb. Straight.") is that of the bar, rack or bench named before it. */
function ownerOf(scan: Scan, quantity: Quantity, bareOfPlates: boolean): number | null {
  const article = quantity.rule === 'a-weight' && /^(is|was|it's|its|it)$/.test(scan.tokens[quantity.from - 1]?.text ?? '');
  if ((quantity.rule !== 'weight-alone' && !article) || quantity.unit === null || 'sv'.includes(scan.plain[quantity.to] ?? '_'))
    return null;
  // "Bench and 60 kg": what comes along with it.
  if (/c\/?$/.test(scan.plain.slice(Math.max(0, quantity.from - 2), quantity.from)) && !bareOfPlates) return null;
  const line = scan.tokens[quantity.from]?.line;
  const reach = bareOfPlates ? 60 : 30;
  for (
    let i = quantity.from - 1;
    i >= 0 && (bareOfPlates || scan.tokens[i]?.line === line) && quantity.from - i < reach;
    i -= 1
  ) {
    const named = isAside(scan, i) ? undefined : kindAt(scan, i);
    // "20kg" behind "good for landmines, a pull down handle" weighs none of those.
    const kind = named === 'other' && scan.tokens[i]?.term?.weak ? undefined : named;
    // "Bar: 5'6", with spin locks. Not bent. About 15 lb.": the label names the line's goods.
    const label = kind !== undefined && scan.plain[i + 1] === ':' && (i === 0 || 'l•'.includes(scan.plain[i - 1] ?? 'l'));
    if (kind === 'collars' && !label && (quantity.weight ?? 0) > 6) continue;
    if (kind && !label && !bareOfPlates && quantity.from - i > 15) return null;
    const crowded = !label && !bareOfPlates && scan.clause[i] !== scan.clause[quantity.from] && quantity.from - i > 4 && !article;
    // "Rack with bar and 110 lbs": no bar weighs so much.
    if (kind && BARS.includes(kind) && (quantity.weight ?? 0) > HEAVIEST_BAR[quantity.unit]) return null;
    if (kind) return WEIGHED.includes(kind) || kind === 'collars' || crowded || scan.letters[i] !== 'k' ? null : i;
  }
  return null;
}

export function assignKinds(scan: Scan, quantities: readonly Quantity[]): Assigned[] {
  const dominant = dominantKind(scan);
  // With no plates or dumbbells anywhere a lone weight is that of the bar or bench, however far.
  const bareOfPlates =
    !quantities.some(({ count, noun }) => count !== null && (noun === null || WEIGHED.includes(kindAt(scan, noun) ?? 'plate'))) &&
    ![...scan.plain].some(
      (letter, i) => letter === 'k' && WEIGHED.includes(scan.tokens[i]?.term?.kind ?? 'other') && !isAside(scan, i),
    );
  const busy = new Set(quantities.map(({ from }) => scan.tokens[from]?.line));
  return quantities.map((quantity) => {
    if (isOfLifters(scan, quantity)) return { kind: 'bar', at: quantity.from, assumed: false };
    const heavy = behind(scan, quantity) === null ? ofHeavyGoods(scan, quantity) : null;
    if (heavy !== null) return { kind: 'other', at: heavy, assumed: false };
    const alone = quantity.noun === null && behind(scan, quantity) === null;
    const owner = alone ? (spokenOf(scan, quantity) ?? ownerOf(scan, quantity, bareOfPlates)) : null;
    const inside = quantity.noun ?? owner ?? titled(scan, quantity);
    const found = inside ?? behind(scan, quantity) ?? before(scan, quantity) ?? heading(scan, quantity, busy);
    if (found !== null && found < quantity.from && scan.plain[found] !== 'k')
      return { kind: 'plate', at: quantity.from, assumed: false, metal: found };
    // "20 kg bumpers x 4, 10 kg iron x 4".
    const meant = found === null ? dominant : kindAt(scan, found);
    if (quantity.noun === null && (isUnderIron(scan, quantity) || (meant === 'bumper' && isOfIron(scan, quantity))))
      return { kind: 'plate', at: quantity.from, assumed: false };
    // What is too heavy for a fractional plate is one of the plates that come with it.
    if (found === null && dominant === 'micro' && sizeKind('plate', quantity.weight, quantity.unit) === 'plate')
      return { kind: 'plate', at: quantity.from, assumed: true };
    if (found === null) return { kind: dominant, at: quantity.from, assumed: dominant === 'plate' };
    const named = specific(kindAt(scan, found) ?? dominant, scan, found, dominant);
    // "Four 5s, four 2.5s, and two 10s": one of a list of them.
    const listed = (other: Quantity): boolean =>
      other !== quantity && scan.clause[other.from] === scan.clause[quantity.from] && isForHandles(scan, other);
    const handled = named === 'dumbbell' && isForHandles(scan, quantity, quantities.some(listed) ? 2 : 3);
    const kind = handled ? 'plate' : named;
    return { kind, at: found, assumed: false };
  });
}

/** Below 2.5 lb or 1.25 kg a plate is a micro plate. */
export function sizeKind(kind: Kind, value: number | null, unit: 'lb' | 'kg' | null): Kind {
  if (value === null || !isPlate(kind)) return kind;
  const micro = unit === 'kg' ? value < 1.25 : value < 2.5;
  return micro ? 'micro' : kind;
}
