/**
 * Goods told one by one under labels: "Two power racks. Rack one: … Rack two: …", "Bar A straight, Bar B bent". Each label is one piece,
 * a label named again is the same piece, and the sum told before them ("two power racks") names them and nothing more.
 */
import type { Kind } from '../../listing/reading.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import { type Draft, firstToken } from './draft.ts';

const LABELLED: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'bench', 'storage'];

/** The label behind a noun: "one", "2", "#2", "A"; null when there is none. */
function labelAt(scan: Scan, at: number): string | null {
  const next = scan.plain[at + 1] === 'h' ? at + 2 : at + 1;
  const token = scan.tokens[next];
  if (!token || scan.clause[next] !== scan.clause[at]) return null;
  const value = 'nd'.includes(scan.plain[next] ?? '_') ? valueAt(scan, next) : null;
  if (value !== null) return value >= 1 && value <= 6 ? `${value}` : null;
  return token.type === 'word' && /^[a-f]$/.test(token.text) && /^[A-F]/.test(scan.text.slice(token.start)) ? token.text : null;
}

/** The noun's token; a draft of a noun begins at its count. */
const nounOf = (scan: Scan, item: Draft): number => (scan.plain[item.kindAt] === 'k' ? item.kindAt : (item.places[0]?.to ?? 0));

/** Labels of drafts, for kinds that have at least two of them. */
function labelsOf(scan: Scan, drafts: readonly Draft[]): ReadonlyMap<Draft, string> {
  const labels = new Map<Draft, string>();
  for (const kind of LABELLED) {
    const told = drafts.flatMap((item): [Draft, string][] => {
      const label = item.kind === kind ? labelAt(scan, nounOf(scan, item)) : null;
      return label === null ? [] : [[item, label]];
    });
    // "Bench 1, bench 2" are labels; a lone "rack 1" is a count.
    const names = new Set(told.map(([, label]) => label));
    if (names.size > 1 && (names.has('1') || names.has('a'))) for (const [item, label] of told) labels.set(item, label);
  }
  return labels;
}

/** The drafts with one piece for each label, and without the sums that the labels tell. */
export function settleLabels(scan: Scan, drafts: readonly Draft[]): Draft[] {
  const labels = labelsOf(scan, drafts);
  if (labels.size === 0) return [...drafts];
  for (const [item, label] of labels) {
    item.count = { value: 1, rule: 'labelled', from: item.kindAt, to: item.kindAt };
    item.label = label;
  }
  return drafts.filter((item) => {
    if (labels.has(item) || item.ownPrice) return true;
    const pieces = new Set([...labels].filter(([other]) => other.kind === item.kind).map(([, label]) => label));
    const later = [...labels.keys()].every((other) => other.kind !== item.kind || firstToken(other) > firstToken(item));
    return !(later && item.weight === null && item.count?.value === pieces.size);
  });
}
