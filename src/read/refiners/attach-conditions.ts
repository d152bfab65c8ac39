/** Attaches conditions to the goods they speak of; what is said of some goods comes before what is said of the lot. */
import { OF_ONE_PIECE } from '../../listing/reading.ts';
import type { Finding } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { BARS, FRAMES, isOfPiece, PIECES, STRONGER, vie } from './condition-scopes.ts';
import { type Subject, subjectOfCondition } from './condition-subject.ts';
import type { Draft } from './draft.ts';
import { isOver } from './left-out-goods.ts';

/** What one part of a piece may be beside another, the worse first. */
const OF_PARTS = [
  ['seized-sleeves', 'spins'],
  ['bent', 'straight'],
] as const;

export function attachConditions(scan: Scan, drafts: readonly Draft[], findings: readonly Finding[]): void {
  const lines = new Set(drafts.flatMap((item) => item.places.map(({ from }) => scan.tokens[from]?.line)));
  let last: Subject | null = null;
  const found = findings.map((finding): { finding: Finding; subject: Subject } => {
    let subject = subjectOfCondition(scan, drafts, finding, lines.size);
    const spoken: readonly Draft[] = last?.drafts ?? [];
    if (subject.rest)
      subject = {
        ...subject,
        drafts: subject.drafts.filter(
          (item) => !spoken.some((one) => isSame(one, item)) && !isOver(item, spoken) && isAlike(item, spoken),
        ),
      };
    last = subject;
    return { finding, subject };
  });
  for (const { finding, subject } of found) if (subject.told) for (const item of subject.drafts) put(scan, item, finding);
  for (const { finding, subject } of found) {
    if (subject.told) continue;
    // "One sleeve spins, the other is stuck": the worse of what one sentence says stands.
    const worse = (known: Draft['conditions'][number]): boolean =>
      scan.clause[known.to] === scan.clause[finding.from] &&
      OF_PARTS.some(([strong, weak]) => strong === finding.condition && weak === known.value);
    const free = subject.drafts.filter(
      (item) => !item.conditions.some((known) => vie(known.value, finding.condition) && !worse(known)),
    );
    for (const item of free) put(scan, item, finding);
  }
  for (const item of drafts) {
    const lone = item.count?.value === 1 && PIECES.includes(item.kind) ? loneIn(scan, item) : null;
    if (lone) put(scan, item, lone);
  }
  const odd = oddHeading(scan);
  if (odd) for (const item of drafts) if (PIECES.includes(item.kind) && item.count?.value === 1) put(scan, item, odd);
}

/** "One lonely two and a half": within the words of an item. */
function loneIn(scan: Scan, item: Draft): Finding | null {
  for (const { from, to } of item.places)
    for (let at = Math.max(0, from - 1); at <= to; at += 1)
      if (scan.tokens[at]?.term?.sense === 'lone') return { rule: 'lone-piece', condition: 'odd', from: at, to: at };
  return null;
}

/** "Odd olympic plates": as a heading said of all that are single. */
function oddHeading(scan: Scan): Finding | null {
  for (let at = scan.plain.indexOf('m'); at >= 0; at = scan.plain.indexOf('m', at + 1)) {
    if (scan.tokens[at]?.term?.sense !== 'odd') continue;
    let noun = at + 1;
    while (scan.plain[noun] === 'm') noun += 1;
    const term = scan.plain[noun] === 'k' ? scan.tokens[noun]?.term : undefined;
    if (term?.plural && PIECES.includes(term.kind ?? 'other'))
      return { rule: 'odd-heading', condition: 'odd', from: at, to: noun };
  }
  return null;
}

/** The same goods, which may be told twice: "2x45, 4x25 … chips on the 45s". */
const isSame = (one: Draft, item: Draft): boolean =>
  one === item || (one.weight !== null && one.kind === item.kind && one.weight.value === item.weight?.value);

/** "The rest" of plates are plates. */
const isAlike = (item: Draft, spoken: readonly Draft[]): boolean =>
  spoken.length === 0 ||
  spoken.some(({ kind }) => kind === item.kind) ||
  (item.weight !== null && spoken.some(({ weight }) => weight !== null));

/** "One has a crack", "crack in one of them": the clause names a single piece beside the word. */
function isOfOne(scan: Scan, { from, to }: Finding): boolean {
  for (let i = Math.max(0, from - 6); i <= Math.min(scan.tokens.length - 1, to + 4); i += 1) {
    const token = scan.tokens[i];
    if (scan.clause[i] !== scan.clause[from]) continue;
    if (token?.text === 'one' || (token?.term?.code === 'd' && token.term.value === 1)) return true;
    // "Eine ist verbogen", where the word is an article too.
    if (says(scan, i, 'one-of-them') && (says(scan, i + 1, 'has') || i + 1 === from)) return true;
  }
  return false;
}

const STEEL =
  /\b(?:frames?|weld(?:s|ed)?|legs?|steel|metal|uprights?|posts?|braces?|bases?|spine|beams?|ladder|hinge|rahmen|schweißn[aä]hte?|beine?|rohre?|streben?)\b/i;
const PAD =
  /\b(?:pads?|seats?|vinyl|upholstery|covers?|cushions?|foam|leather|padding|polster\w*|bezug|kunstleder|leder|sitz\w*)\b/i;
const BROKEN = /\b(?:broken?|snapped|fractur\w*|\w*(?:ge|zer)brochen\w*|\w*bruch\w*)\b/i;
/** How many tokens away the word for the part may stand. */
const PART = 6;

/** Of a bench "cracked" speaks of the cover, unless steel is named nearer to it than any cover, or it is broken and no cover is named. */
function isOfCover(scan: Scan, { from, to }: Finding): boolean {
  for (let away = 0; away <= PART; away += 1)
    for (const at of [from - away, to + away]) {
      const text = scan.clause[at] === scan.clause[from] ? (scan.tokens[at]?.text ?? '') : '';
      if (PAD.test(text)) return true;
      if (STEEL.test(text)) return false;
    }
  return !BROKEN.test(scan.tokens[to]?.text ?? '');
}

/**
 * "Bar is bent so I'm chucking it": of a bar that is not on offer, and so of no frame beside it. "A bend that you'd only notice in the
 * rack": a bend is a bar's, unless a part of the frame is named.
 */
function isOfBar(scan: Scan, { from, to }: Finding): boolean {
  const near = scan.tokens
    .slice(Math.max(0, from - PART), to + PART)
    .filter((_, index) => scan.clause[Math.max(0, from - PART) + index] === scan.clause[from]);
  if (near.some(({ text }) => STEEL.test(text))) return false;
  const fault = scan.tokens[to]?.term?.sense?.startsWith('fault') === true;
  return fault || near.some(({ term }) => BARS.includes(term?.kind ?? 'other'));
}

/** "Frame is not bent", "uprights are straight"; a bench that "goes straight" is flat. */
const isOfFrame = (scan: Scan, { from, to, rule }: Finding): boolean =>
  rule === 'condition-denied' ||
  scan.tokens
    .slice(Math.max(0, from - PART), to + PART)
    .some(({ text }, index) => scan.clause[Math.max(0, from - PART) + index] === scan.clause[from] && STEEL.test(text));

/** "Handle bent from being dropped." */
const isOfHandle = (scan: Scan, { from, to }: Finding): boolean =>
  scan.tokens.slice(Math.max(0, from - PART), to + PART).some(({ term }) => term?.sense === 'handle');

function put(scan: Scan, item: Draft, finding: Finding): void {
  if (finding.condition === 'bent' && !BARS.includes(item.kind) && isOfBar(scan, finding)) return;
  if (finding.condition === 'straight' && FRAMES.includes(item.kind) && !isOfFrame(scan, finding)) return;
  if (finding.condition === 'bent' && item.kind === 'dumbbell' && !isOfHandle(scan, finding)) return;
  const { from, to, hearsay } = finding;
  const several = (item.count?.value ?? 0) > 1;
  const rule = several && isOfPiece(finding.condition, item) && isOfOne(scan, finding) ? OF_ONE_PIECE : finding.rule;
  const torn = finding.condition === 'cracked' && item.kind === 'bench' && isOfCover(scan, finding);
  const value = torn ? 'torn' : finding.condition;
  if (item.conditions.some((known) => known.value === value) || (item.material?.value === 'wood' && vie('rust', value))) return;
  item.conditions.push({ value, rule, from, to, ...(hearsay ? { hearsay } : {}) });
}

/** Of words that rule each other out the stronger stands. */
export function settleConditions(drafts: readonly Draft[]): void {
  for (const item of drafts) {
    for (const [strong, weak] of STRONGER) {
      if (item.conditions.some(({ value }) => value === strong))
        item.conditions = item.conditions.filter(({ value }) => !weak.includes(value));
    }
  }
}
