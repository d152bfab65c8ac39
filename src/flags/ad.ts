/** Flags of the ad as a whole. */
import type { Condition, SaleTerm } from '../listing/reading.ts';
import { isPlate } from '../listing/reading.ts';
import type { AdRule, Context, Finding, ItemRule } from './rule.ts';
import { stated } from './rule.ts';

const term =
  (wanted: SaleTerm) =>
  ({ reading }: Context): Finding | null => {
    const fact = reading.terms.find(({ value }) => value === wanted);
    return fact === undefined ? null : { evidence: fact.evidence };
  };

const wanted: AdRule = {
  id: 'wanted',
  weight: 'deal-breaker',
  source: 'the-ad',
  test: ({ reading }) => (reading.wanted ? { evidence: [] } : null),
};

const placeholder: AdRule = {
  id: 'placeholder-price',
  weight: 'note',
  source: 'the-ad',
  test: ({ reading }) => (reading.asking.placeholder ? { evidence: reading.asking.amount?.evidence ?? [] } : null),
};

const noWeight: AdRule = {
  id: 'no-weight-stated',
  weight: 'caution',
  source: 'the-ad',
  test({ reading }) {
    const plates = reading.items.filter((item) => isPlate(item.kind.value));
    if (plates.length === 0 || reading.statedTotal !== null) return null;
    return plates.every((item) => item.unitWeight === null && item.totalWeight === null)
      ? { evidence: plates.flatMap((item) => item.evidence) }
      : null;
  },
};

const noTest: AdRule = { id: 'no-test', weight: 'caution', source: 'common-practice', test: term('no-test') };
const stock: AdRule = { id: 'stock-wording', weight: 'caution', source: 'ftc', test: term('stock-photo') };
const payAhead: AdRule = { id: 'pay-ahead', weight: 'caution', source: 'ftc', test: term('paid-ahead') };

export const adRules: readonly AdRule[] = [wanted, placeholder, noWeight, payAhead, noTest, stock];

const RUST: readonly (readonly [Condition, string])[] = [
  ['rust-heavy', 'flag_rust_heavy'],
  ['rust', 'flag_rust_some'],
  ['rust-light', 'flag_rust_light'],
];

/** Rust by degree: on iron plates it brushes off, in a bar's sleeves and knurl it stays. */
export const rust: ItemRule = {
  id: 'rust',
  kinds: ['plate', 'micro', 'bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'dumbbell', 'kettlebell'],
  weight: 'note',
  source: 'common-practice',
  test(item) {
    for (const [condition, says] of RUST) {
      const fact = stated(item, condition);
      if (fact === null) continue;
      const onBar = item.kind.value === 'bar' || item.kind.value === 'curl-bar' || item.kind.value === 'hex-bar';
      const weight = condition === 'rust-heavy' || (onBar && condition === 'rust') ? 'caution' : 'note';
      return { weight, says: `${says}_${onBar ? 'bar' : 'iron'}`, evidence: fact.evidence };
    }
    return null;
  },
};
