/** Makes the items of the reading from drafts: facts with basis, rule and evidence. */
import type { Span } from '../../listing/page-listing.ts';
import type { Basis, Fact, Item } from '../../listing/reading.ts';
import type { Weight } from '../../units/mass.ts';
import { money } from '../../units/money.ts';
import { VAGUE_BORE } from '../recognisers/measures.ts';
import { type Scan, span } from '../text/scan.ts';
import type { Draft, Known } from './draft.ts';
import { firstToken } from './draft.ts';

const factOf = <T>(scan: Scan, known: Known<T>): Fact<T> => ({
  value: known.value,
  basis: known.implied || known.hearsay ? 'implied' : 'stated',
  rule: known.rule,
  evidence: [span(scan, known.from, known.to)],
});

export function nameDrafts(drafts: readonly Draft[]): { id: string; item: Draft }[] {
  const numbers = new Map<string, number>();
  return [...drafts]
    .sort((a, b) => firstToken(a) - firstToken(b))
    .map((item) => {
      const number = (numbers.get(item.kind) ?? 0) + 1;
      numbers.set(item.kind, number);
      return { id: `${item.kind}-${number}`, item };
    });
}

export function finishItem(scan: Scan, id: string, item: Draft, currency: string): Item {
  const evidence: Span[] = item.places.map(({ from, to }) => span(scan, from, to));
  const unit = item.unit ?? 'lb';
  const unitWeight: Fact<Weight> | null = item.weight
    ? {
        ...factOf(scan, item.weight),
        value: { value: item.weight.value, unit },
        basis: item.weight.implied ? 'implied' : item.unit === null ? 'implied' : 'stated',
      }
    : null;
  const worked = item.weight && item.count ? item.weight.value * item.count.value : null;
  const totalWeight: Fact<Weight> | null = item.total
    ? {
        value: { value: item.total.value, unit: item.total.unit },
        basis: 'stated',
        rule: item.total.place.rule,
        evidence: [span(scan, item.total.place.from, item.total.place.to)],
      }
    : worked !== null && unitWeight
      ? {
          value: { value: Math.round(worked * 1000) / 1000, unit },
          basis: 'implied',
          rule: 'count-times-unit-weight',
          evidence: unitWeight.evidence,
        }
      : null;
  const measure = (
    name: 'boreMm' | 'shaftMm' | 'sleeveMm' | 'lengthMm' | 'diameterMm' | 'heightMm' | 'widthMm' | 'tensilePsi',
  ): Fact<number> | null => {
    const found = item.measures.get(name);
    if (!found || found.rule === VAGUE_BORE) return null;
    const basis: Basis = found.hearsay ? 'implied' : 'stated';
    return { value: found.value, basis, rule: found.rule, evidence: [span(scan, found.from, found.to)] };
  };
  const capacity = item.measures.get('capacity');
  const own = item.ownPrice;
  // Every key by its name: spread over another object they take three times as long.
  return {
    count: item.count ? factOf(scan, item.count) : null,
    unitWeight,
    totalWeight,
    fits: item.fits ? factOf(scan, item.fits) : null,
    boreMm: measure('boreMm'),
    shaftMm: measure('shaftMm'),
    sleeveMm: measure('sleeveMm'),
    lengthMm: measure('lengthMm'),
    capacity: capacity
      ? {
          value: { value: capacity.value, unit: capacity.unit ?? 'lb' },
          basis: 'stated',
          rule: capacity.rule,
          evidence: [span(scan, capacity.from, capacity.to)],
        }
      : null,
    tensilePsi: measure('tensilePsi'),
    diameterMm: measure('diameterMm'),
    heightMm: measure('heightMm'),
    widthMm: measure('widthMm'),
    bowMm: null,
    material: item.material ? factOf(scan, item.material) : null,
    grade: item.grade ? factOf(scan, item.grade) : null,
    ownPrice: own
      ? {
          value: money(own.amount, own.currency ?? currency),
          basis: 'stated',
          rule: own.place.rule,
          evidence: [span(scan, own.place.from, own.place.to)],
        }
      : null,
    weighed: null,
    plan: null,
    resale: null,
    id,
    kind: {
      value: item.kind,
      basis: item.kindAssumed ? 'implied' : 'stated',
      rule: item.kindRule,
      evidence: [span(scan, item.kindAt, item.kindAt)],
    },
    conditions: item.conditions.map((known) => factOf(scan, known)),
    basis: item.implied ? 'implied' : 'stated',
    evidence,
  };
}
