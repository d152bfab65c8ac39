/** Every limit that a flag is held against, with its unit and where it comes from. Common practice is a default, not a rule. */

export type LimitSource =
  | 'common-practice'
  | 'assumption'
  | 'iwf'
  | 'ipf'
  | 'ipf-and-practice'
  | 'steel'
  | 'geometry'
  | 'ftc'
  | 'the-ad';

export interface Limit {
  readonly value: number;
  readonly unit: 'mm' | 'lb' | 'kg' | 'fraction';
  readonly source: LimitSource;
}

const limit = (value: number, unit: Limit['unit'], source: LimitSource): Limit => ({ value, unit, source });

export const LIMITS = {
  /** Clearance (hole minus sleeve) from which plates on a 50 mm sleeve lean and creep. */
  boreClearance: limit(2, 'mm', 'common-practice'),
  boreClearanceOneInch: limit(5, 'mm', 'assumption'),
  /** IPF Technical Rulebook 2026: a disc's hole is 52 to 53 mm, so 53 mm is still within the rule. */
  boreIpfHigh: limit(53, 'mm', 'ipf'),
  /** A stated hole this much under the sleeve may still be a rounded figure. */
  boreTight: limit(0.5, 'mm', 'assumption'),
  /** Clearance from which a plate can't be used at all. */
  boreUseless: limit(8, 'mm', 'assumption'),
  /** Hub thickness of a plate when the ad doesn't give it. */
  hub: limit(32, 'mm', 'assumption'),
  shaftThick: limit(32, 'mm', 'common-practice'),
  shaftThin: limit(26, 'mm', 'common-practice'),
  /** IWF TCRR 2025, 3.3.3: the women's bar is 2010 mm long, so anything about that length is a full bar. */
  barShort: limit(2000, 'mm', 'iwf'),
  barTooShort: limit(1700, 'mm', 'common-practice'),
  /** Least weight, in kg, that no bar shorter than `barTooShort` has. */
  barFullWeight: limit(18, 'kg', 'steel'),
  barCapacity: limit(600, 'lb', 'common-practice'),
  rackCapacity: limit(500, 'lb', 'assumption'),
  benchCapacity: limit(500, 'lb', 'assumption'),
  /** Share of a good new bar's price under which the price is luck or junk. */
  barTooCheap: limit(0.4, 'fraction', 'common-practice'),
  /** IPF Technical Rulebook 2026: a bench is at least 1.22 m long. */
  benchLength: limit(1220, 'mm', 'ipf'),
  /** IWF TCRR 2025: discs of 10 kg and over are 450 ± 1 mm. */
  bumperDiameter: limit(449, 'mm', 'iwf'),
} as const;
