/** Every limit that a flag is held against, with its unit and where it comes from. Common practice is a default, not a rule. */
import type { Settings } from '../listing/settings.ts';

export type LimitSource =
  | 'common-practice'
  | 'assumption'
  | 'iwf'
  | 'ipf'
  | 'ipf-and-practice'
  | 'steel'
  | 'geometry'
  | 'ceiling'
  | 'ftc'
  | 'iso'
  | 'niosh'
  | 'own'
  | 'the-ad';

export interface Limit {
  readonly value: number;
  readonly unit: 'mm' | 'lb' | 'kg' | 'fraction' | 'money';
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
  /** A shaft this much under the limit may still be a rounded figure: 1-1/4 in is 31.75 mm. */
  shaftSlack: limit(0.3, 'mm', 'assumption'),
  shaftThin: limit(26, 'mm', 'common-practice'),
  /** IWF TCRR 2025, 3.3.3: the women's bar is 2010 mm long, so anything about that length is a full bar. */
  barShort: limit(2000, 'mm', 'iwf'),
  barTooShort: limit(1700, 'mm', 'common-practice'),
  /** Least weight, in kg, that no bar shorter than `barTooShort` has. */
  barFullWeight: limit(18, 'kg', 'steel'),
  /** How far a stated weight may lie outside of what the bar's own steel allows: share of the worked-out bounds. */
  barSteelSlack: limit(0.05, 'fraction', 'assumption'),
  barCapacity: limit(600, 'lb', 'common-practice'),
  rackCapacity: limit(500, 'lb', 'assumption'),
  benchCapacity: limit(500, 'lb', 'assumption'),
  /** Share of a good new bar's price under which the price is luck or junk. */
  barTooCheap: limit(0.4, 'fraction', 'common-practice'),
  /** IPF Technical Rulebook 2026: a bench is at least 1.22 m long. */
  benchLength: limit(1220, 'mm', 'ipf'),
  /** IPF Technical Rulebook 2026: a bench is 29 to 32 cm wide and 42 to 45 cm high; common practice is 12 in and 17 in. */
  benchNarrow: limit(290, 'mm', 'ipf'),
  benchWide: limit(320, 'mm', 'ipf'),
  benchLow: limit(420, 'mm', 'ipf'),
  benchHigh: limit(450, 'mm', 'ipf'),
  /** A stated size this far off may still be a rounded figure. */
  benchSlack: limit(6, 'mm', 'assumption'),
  /** Room over a rack, to tilt it up and to hang its upper bolts. */
  ceilingRoom: limit(50, 'mm', 'assumption'),
  /** Face value from which a plain cast plate's deviation is felt: 45s have been weighed from 41.75 to 59.5 lb. */
  castHeavy: limit(33, 'lb', 'common-practice'),
  /** What a pound of 2-inch flat washers costs, in US dollars: about $2 apiece at 0.63 to 0.88 lb. */
  washerPound: limit(4, 'money', 'assumption'),
  /** IWF TCRR 2025: discs of 10 kg and over are 450 ± 1 mm; another millimetre for the tape. */
  bumperDiameter: limit(450, 'mm', 'iwf'),
  bumperSlack: limit(2, 'mm', 'assumption'),
  /** Bow of a bar: up to the first it is usable as a straight one, over the second it is bent, between them doubtful. */
  bowUsable: limit(3, 'mm', 'common-practice'),
  bowBent: limit(5, 'mm', 'common-practice'),
  /** NIOSH Applications Manual 94-110: what its equation allows from 10 in high, 15 in out, over 30 in, as out of a car's boot. */
  liftFromBoot: limit(25.4, 'lb', 'niosh'),
} as const;

export type LimitName = keyof typeof LIMITS;

/** Limits of common practice, and assumptions, that the buyer may set otherwise; published rules and geometry stand as they are. */
export const CHANGEABLE = [
  'boreClearance',
  'boreClearanceOneInch',
  'shaftThick',
  'shaftThin',
  'barTooShort',
  'barCapacity',
  'rackCapacity',
  'benchCapacity',
  'barTooCheap',
  'ceilingRoom',
  'castHeavy',
  'washerPound',
] as const satisfies readonly LimitName[];

/** A limit in force, and "own" for its source where the buyer set it. */
export interface Held {
  readonly value: number;
  readonly source?: 'own';
}

/** The buyer's own limit where one is set and may be, else the table's. */
export function held(name: LimitName, { limits }: Pick<Settings, 'limits'>): Held {
  const own = (CHANGEABLE as readonly LimitName[]).includes(name) ? limits[name] : undefined;
  return own === undefined ? { value: LIMITS[name].value } : { value: own, source: 'own' };
}
