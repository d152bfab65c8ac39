/**
 * Goods that pronouns tell apart: "2 barbells. One is 7 ft, 45 lb, … Other is 6 ft, with a bend". Each is a piece with a label; what stands
 * from its pronoun to the next one is said of it.
 */
import { isPronoun, PRONOUN_REACH, TOLD_APART } from '../recognisers/pronouns.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, draft, firstToken } from './draft.ts';

/** "Two bars, an olympic bar and a curl bar": the list behind the sum names each piece. */
function isListed(scan: Scan, told: readonly Draft[], sum: Draft, noun: number, pieces: number): boolean {
  if (!/^[,:(-]/.test(scan.plain.slice(noun + 1, noun + 2))) return false;
  const listed = told.filter(
    (item) =>
      item !== sum &&
      TOLD_APART.includes(item.kind) &&
      item.kind.endsWith('bar') === sum.kind.endsWith('bar') &&
      firstToken(item) > noun &&
      scan.clause[firstToken(item)] === scan.clause[noun],
  );
  return listed.length === pieces && listed.every(({ count }) => count === null || count.value === 1);
}

/** "3 bars: … 3 - tricep bar": one that is none of the common bars. */
const isOddBar = (scan: Scan, item: Draft, sum: Draft): boolean =>
  item.kind === 'other' && sum.kind === 'bar' && (scan.tokens[item.kindAt]?.text ?? '').endsWith(' bar');

/** "Olympic bar, bent. Another olympic bar that is straight": two, each with what stands at it. */
function labelOthers(scan: Scan, drafts: readonly Draft[]): void {
  for (const [index, item] of drafts.entries()) {
    if (!TOLD_APART.includes(item.kind) || item.label !== undefined || (item.count?.value ?? 1) !== 1) continue;
    const noun = scan.plain[item.kindAt] === 'k' ? item.kindAt : firstToken(item);
    if (![noun - 1, noun - 2].some((at) => scan.clause[at] === scan.clause[noun] && says(scan, at, 'another'))) continue;
    const first = drafts.slice(0, index).findLast(({ kind, label }) => kind === item.kind && label === undefined);
    if (!first || (first.count?.value ?? 1) !== 1) continue;
    first.label = 'first';
    item.label = 'another';
    for (const one of [first, item]) one.count ??= { value: 1, rule: 'told-apart', from: one.kindAt, to: one.kindAt };
  }
}

/** The drafts, with goods counted in one word made the pieces that pronouns tell of. */
export function tellApart(scan: Scan, drafts: readonly Draft[]): Draft[] {
  labelOthers(scan, drafts);
  let told = [...drafts];
  for (const sum of drafts) {
    const pieces = sum.count?.value ?? 0;
    const noun = sum.places[0]?.to ?? 0;
    if (
      !TOLD_APART.includes(sum.kind) ||
      sum.weight ||
      sum.label ||
      sum.ownPrice ||
      sum.count?.implied ||
      pieces < 2 ||
      pieces > (scan.ordinals.length === pieces ? 8 : 3)
    )
      continue;
    if (isListed(scan, told, sum, noun, pieces)) {
      told = told.filter((item) => item !== sum);
      continue;
    }
    const pronouns = scan.ordinals.filter((at) => at > noun);
    if (pronouns.length !== pieces) pronouns.length = 0;
    for (let i = noun + 1; i < scan.tokens.length && i - noun < PRONOUN_REACH && pronouns.length < pieces; i += 1)
      if (isPronoun(scan, i)) pronouns.push(i);
    const [first] = pronouns;
    if (first === undefined || pronouns.length !== pieces) continue;
    const own = told.filter((item) => item !== sum && item.kind === sum.kind && firstToken(item) > first);
    // A bar with a weight in the part of a pronoun is that one.
    pronouns.forEach((at, index) => {
      const next = pronouns[index + 1] ?? at + PRONOUN_REACH;
      const part = own.filter((item) => firstToken(item) >= at && firstToken(item) < next);
      // "One's a good bar, 7 ft, 45 lb": its name and its weight.
      const mine = part.find(({ weight }) => weight !== null) ?? part[0];
      told = told.filter((item) => item === mine || !part.includes(item) || item.weight !== null || item.ownPrice !== null);
      const count = { value: 1, rule: 'told-apart', from: at, to: at };
      // "The other is a curl bar": told by its own name.
      const named = told.some(
        (item) =>
          item.kind !== sum.kind &&
          (TOLD_APART.includes(item.kind) || isOddBar(scan, item, sum)) &&
          firstToken(item) > at &&
          firstToken(item) < Math.min(next, at + 8),
      );
      if (named && !mine) return;
      if (mine) {
        mine.count = count;
        mine.label = `${index + 1}`;
        mine.places.push({ rule: 'told-apart', from: at, to: at });
      } else told.push(draft(sum.kind, { rule: 'told-apart', from: at, to: at }, { count, label: `${index + 1}` }));
    });
    // "Both bars", "the bar" elsewhere speak of the same.
    const again = (item: Draft): boolean =>
      item.kind === sum.kind &&
      item.label === undefined &&
      item.weight === null &&
      (item.count === null || item.count.implied === true || item.count.value === pieces);
    told = told.filter((item) => item !== sum && !again(item));
    // What is said of the goods as a whole ("two olympic bars") is said of each.
    for (const item of told) if (item.kind === sum.kind && item.label !== undefined) item.places.push(...sum.places);
  }
  return told.length === drafts.length && told.every((item, index) => item === drafts[index])
    ? told
    : told.sort((a, b) => firstToken(a) - firstToken(b));
}
