/** Every fault that a pickup offers, on every kind of goods: none may pass without a word. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { CONDITIONS, type Condition, type Correction, KINDS, type Kind } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { refusals } from '../../../src/message/refusal.ts';
import { faultOn, faultsOf } from '../../../src/pickup/faults.ts';
import { type PickupStepId, pickupSteps, STEP_IDS } from '../../../src/pickup/steps.ts';
import { speaker } from '../../../src/words/say.ts';
import { readStrings } from '../../tools/evaluate/strings.ts';

/** One good of each kind, cheap and without a fault. */
const ADS: Readonly<Record<Exclude<Kind, 'other'>, string>> = {
  plate: '4 x 45 lb olympic plates, cast iron, hole 50.6 mm, $60',
  bumper: '2 x 45 lb bumper plates, 50.4 mm hole, $40',
  micro: '2 x 1.25 lb olympic micro plates, hole 50.6 mm, $2',
  bar: 'Olympic barbell, 7 ft, 45 lb, 28.5 mm shaft, straight, sleeves spin, $130',
  'curl-bar': 'Olympic EZ curl bar, $10',
  'hex-bar': 'Olympic hex trap bar, $30',
  rack: 'Power rack with safety pins and hooks, $200',
  stands: 'Squat stands, a pair, with hooks, $20',
  bench: 'Flat bench with uprights, $20',
  collars: 'Pair of olympic collars, $1',
  dumbbell: 'Pair of 50 lb dumbbells, $20',
  kettlebell: 'Kettlebell 24 kg, $10',
  storage: 'Weight plate storage tree, $5',
};

const judge = (kind: Exclude<Kind, 'other'>, corrections: readonly Correction[] = []) =>
  evaluate(listingFromText(ADS[kind]), DEFAULT_SETTINGS, corrections);
const itemOf = ({ reading }: Evaluation, kind: Kind) => reading.items.find((item) => item.kind.value === kind);

/** Ticks and choices of a step that say that something is wrong. */
const found = (step: PickupStepId, kind: Kind): Condition[] => [
  ...faultsOf(step, kind),
  ...(step === 'spin' ? (['seized-sleeves'] as const) : []),
  ...(step === 'straight' ? (['bent'] as const) : []),
];

const OFFERED = KINDS.filter((kind) => kind !== 'other').flatMap((kind) =>
  pickupSteps(judge(kind).reading)
    .filter(({ items }) => items.some((item) => item.kind.value === kind))
    .flatMap(({ id }) => found(id, kind).map((fault) => [kind, id, fault] as const)),
);

/** What injures: the answer must be to leave it, or to ask before anything else. */
const GRAVE: readonly Condition[] = ['cracked', 'bent', 'split-hub', 'missing-catches'];

const english = speaker(readStrings(), 'en-US');

describe('every fault that can be ticked', () => {
  it('is a fault of a good ad without any', () => {
    for (const kind of Object.keys(ADS) as Exclude<Kind, 'other'>[]) {
      const before = judge(kind);
      expect(itemOf(before, kind), kind).toBeDefined();
      expect(before.flags.filter(({ weight, id }) => weight === 'deal-breaker' || id === 'rack-pins-missing')).toEqual([]);
      expect(before.worth.walkAway?.minor, kind).toBeGreaterThan(before.reading.asking.amount?.value.minor ?? 0);
    }
  });

  it('is looked for on every kind that can hurt', () => {
    const with_ = (fault: Condition) => [...new Set(OFFERED.filter(([, , one]) => one === fault).map(([kind]) => kind))];
    expect(with_('cracked')).toEqual(KINDS.filter((kind) => kind !== 'other'));
    expect(with_('bent')).toEqual(['bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'bench', 'dumbbell', 'storage']);
    expect(with_('missing-catches')).toEqual(['rack', 'stands', 'bench']);
    expect(OFFERED.length).toBeGreaterThan(45);
  });

  it.each(OFFERED)('%s, %s: %s is told and becomes a reason', (kind, _step, fault) => {
    const before = judge(kind);
    const id = itemOf(before, kind)?.id ?? '';
    const after = judge(kind, [{ path: `${id}.condition.${fault}`, value: true, basis: 'measured' }]);
    const flagsOf = ({ flags }: Evaluation) => flags.map((flag) => `${flag.id} ${flag.weight} ${flag.says.key}`).sort();
    const answers = [before, after].map((one) => [one.call.kind, one.worth.walkAway?.minor ?? null, flagsOf(one)]);
    expect(answers[0]).not.toEqual(answers[1]);
    expect(after.worth.walkAway?.minor ?? 0).toBeLessThanOrEqual(before.worth.walkAway?.minor ?? 0);
    const reasons = refusals(after).map(({ key }) => key);
    const added = reasons.filter((key) => !refusals(before).some((one) => one.key === key) && !/price|_rest$/.test(key));
    expect(added).not.toEqual([]);
    expect(added).not.toContain('message_refuse_other');
    for (const { says } of after.flags) expect(english(says)).not.toContain('[');
    for (const reason of refusals(after)) expect(english(reason)).not.toContain('[');
    const grave = GRAVE.includes(fault) && !(kind === 'storage' && fault === 'bent');
    if (grave) expect(['leave', 'ask']).toContain(after.call.kind);
  });

  it('has words in both languages', () => {
    for (const language of ['en', 'de']) {
      const strings = readStrings(new URL(`../../../extension/_locales/${language}/`, import.meta.url));
      for (const [kind, , fault] of OFFERED) {
        const on = faultOn(fault, kind);
        const key = fault.replaceAll('-', '_');
        expect(strings).toHaveProperty(on === null ? `panel_condition_${key}` : `pickup_fault_${key}_${on}`);
      }
    }
  });

  it('is a condition, in a step that there is', () => {
    for (const step of STEP_IDS)
      for (const kind of KINDS) for (const fault of faultsOf(step, kind)) expect(CONDITIONS).toContain(fault);
  });
});
