import type { Basis, Condition, Correction, Fact, Item, Kind } from '../listing/reading.ts';
import { CONDITIONS, GRADES, KINDS, MATERIALS, NO_FACTS, PLANS } from '../listing/reading.ts';
import type { Currency } from '../units/money.ts';
import { parseCount, parseLength, parseMoney, parseNumber, parseWeight, parseWeights } from './correction-values.ts';

const basisOf = (correction: Correction): Basis => correction.basis ?? 'stated';
const fact = <T>(value: T, correction: Correction): Fact<T> => ({
  value,
  basis: basisOf(correction),
  rule: 'buyer',
  evidence: [],
});

const oneOf = <T extends string>(words: readonly T[], value: unknown): T | null => words.find((word) => word === value) ?? null;

/** Conditions that shut one another out. */
const OPPOSITES: readonly (readonly Condition[])[] = [
  ['bent', 'straight'],
  ['seized-sleeves', 'spins'],
  ['rust-light', 'rust', 'rust-heavy', 'no-rust'],
  ['stored-outdoors', 'stored-indoors'],
];

function setCondition(item: Item, word: Condition, on: boolean, correction: Correction): Item {
  const out = on ? (OPPOSITES.find((group) => group.includes(word)) ?? [word]) : [word];
  const kept = item.conditions.filter((one) => !out.includes(one.value));
  return { ...item, conditions: on ? [...kept, fact(word, correction)] : kept };
}

/** "bent" adds a word; "bent, rust" likewise; nothing takes all words away. */
function setConditions(item: Item, correction: Correction): Item | null {
  if (correction.value === null || correction.value === '') return { ...item, conditions: [] };
  if (typeof correction.value !== 'string') return null;
  const words = correction.value.split(',').map((word) => oneOf(CONDITIONS, word.trim()));
  let next: Item | null = item;
  for (const word of words) {
    if (word === null || next === null) return null;
    next = setCondition(next, word, true, correction);
  }
  return next;
}

/** Total weight follows count and unit weight when one of them is set. */
function retotal(item: Item): Item {
  if (item.count === null || item.unitWeight === null) return { ...item, totalWeight: null };
  const { value, unit } = item.unitWeight.value;
  return { ...item, totalWeight: { ...item.unitWeight, value: { value: value * item.count.value, unit } } };
}

/** A field set to what the correction parses to, or taken out by nothing; null when it doesn't parse. */
function set<K extends keyof Item>(item: Item, key: K, correction: Correction, value: unknown): Item | null {
  if (correction.value === null) return { ...item, [key]: null };
  return value === null ? null : { ...item, [key]: fact(value, correction) };
}

const LENGTHS = ['boreMm', 'shaftMm', 'sleeveMm', 'lengthMm', 'diameterMm', 'heightMm', 'widthMm', 'bowMm'] as const;

/** Pieces on a scale are there, whatever the ad says of their number; what they weigh is measured unless said otherwise. */
function setWeighed(item: Item, correction: Correction): Item | null {
  const next = set(item, 'weighed', { ...correction, basis: correction.basis ?? 'measured' }, parseWeights(correction));
  const pieces = next?.weighed?.value.length ?? 0;
  if (next === null || pieces <= (item.count?.value ?? 0)) return next;
  const counted = { ...next, count: fact(pieces, { ...correction, basis: 'measured' }) };
  return item.unitWeight === null ? counted : retotal(counted);
}

/** The item with one field set; null when the field or value means nothing. `currency` is that of sums without one. */
export function correctItem(item: Item, field: string, correction: Correction, currency: Currency): Item | null {
  const condition = field.startsWith('condition.') ? oneOf(CONDITIONS, field.slice('condition.'.length)) : null;
  if (condition !== null) {
    return typeof correction.value === 'boolean' ? setCondition(item, condition, correction.value, correction) : null;
  }
  const length = oneOf(LENGTHS, field);
  if (length !== null) return set(item, length, correction, parseLength(correction));
  switch (field) {
    case 'kind': {
      const kind = oneOf(KINDS, correction.value);
      return kind === null ? null : { ...item, kind: fact<Kind>(kind, correction) };
    }
    case 'count': {
      const next = set(item, 'count', correction, parseCount(correction));
      return next !== null && item.unitWeight !== null ? retotal(next) : next;
    }
    case 'unitWeight': {
      const next = set(item, 'unitWeight', correction, parseWeight(correction));
      return next !== null && item.count !== null ? retotal(next) : next;
    }
    case 'totalWeight':
    case 'capacity':
      return set(item, field, correction, parseWeight(correction));
    case 'fits':
      return set(item, 'fits', correction, oneOf(['50mm', '25mm'] as const, correction.value));
    case 'tensilePsi':
      return set(item, 'tensilePsi', correction, parseNumber(correction));
    case 'material':
      return set(item, 'material', correction, oneOf(MATERIALS, correction.value));
    case 'grade':
      return set(item, 'grade', correction, oneOf(GRADES, correction.value));
    case 'ownPrice':
      return set(item, 'ownPrice', correction, parseMoney(correction, item.ownPrice?.value.currency ?? currency));
    case 'resale':
      return set(item, 'resale', correction, parseMoney(correction, currency));
    case 'plan':
      return set(item, 'plan', correction, oneOf(PLANS, correction.value));
    case 'weighed':
      return setWeighed(item, correction);
    case 'condition':
    case 'conditions':
      return setConditions(item, correction);
    default:
      return null;
  }
}

/** A new item of the kind that the correction names; null when that is no kind. */
export function newItem(id: string, correction: Correction): Item | null {
  const kind = oneOf(KINDS, correction.value);
  if (kind === null) return null;
  return {
    id,
    kind: fact(kind, correction),
    ...NO_FACTS,
    conditions: [],
    basis: basisOf(correction),
    evidence: [],
  };
}
