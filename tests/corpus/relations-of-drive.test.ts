/** What holds of drive, chances and questions for every ad, whatever it is worth. Relations need no labels and no source. */
import { describe, it } from 'vitest';
import { judge } from '../../src/evaluate.ts';
import type { Call, Evaluation, Prospect } from '../../src/listing/evaluation.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import { plateWeights } from '../../src/price/usable.ts';
import { unknownsOf } from '../../src/trip/unknowns.ts';
import { holdsOfEveryTenth as holds } from './relation.ts';

const CENT = 1.5; // Money is rounded to the cent at each end.
const away = (miles: number, changes: Partial<Settings> = {}): Settings => ({
  ...DEFAULT_SETTINGS,
  distance: { value: miles, unit: 'mi' },
  ...changes,
});

/** To ask or to talk the price down is between going and leaving; neither is above the other. */
const RANK: Readonly<Record<Call['kind'], number>> = { go: 2, ask: 1, haggle: 1, leave: 0 };
const MILES = [0, 2, 9, 30, 110];

/** What is wrong in each step from one answer to the next. */
const steps = (answers: readonly Evaluation[], wrong: (before: Evaluation, after: Evaluation) => string | null): string[] =>
  answers.slice(1).flatMap((after, index) => {
    const before = answers[index];
    const fault = before ? wrong(before, after) : null;
    return fault === null ? [] : [fault];
  });

describe('every ad', { timeout: 120_000 }, () => {
  it('costs no less, is called no better and promises no more from further off', () =>
    holds(({ reading }) => {
      const answers = MILES.map((miles) => judge(reading, away(miles)));
      if (answers[0]?.worth.allIn === null || answers[0]?.worth.walkAway === null) return null;
      return steps(answers, (near, far) => {
        if ((far.worth.allIn?.likely ?? 0) < (near.worth.allIn?.likely ?? 0)) return 'all-in fell';
        if ((far.worth.walkAway?.minor ?? 0) > (near.worth.walkAway?.minor ?? 0)) return 'most to pay rose';
        if (RANK[far.call.kind] > RANK[near.call.kind]) return `call rose from ${near.call.kind} to ${far.call.kind}`;
        const [a, b] = [near.prospect?.afterDrive?.minor, far.prospect?.afterDrive?.minor];
        return a !== undefined && b !== undefined && b > a + CENT ? 'expected saving rose' : null;
      });
    }, 250));

  it('costs more with a toll, and not less with a van or a lower payload', () =>
    holds(({ reading }) => {
      const plain = judge(reading, away(15));
      if (plain.trip === null || plain.worth.allIn === null) return null;
      const costOf = (changes: Partial<Settings>): number => judge(reading, away(15, changes)).trip?.cost.likely ?? 0;
      const faults: string[] = [];
      if (Math.abs(costOf({ tolls: 4 }) - plain.trip.cost.likely - 400) > 1e-6) faults.push('toll');
      const van = { cost: 60, per: 'trip' as const };
      if (costOf({ van }) < plain.trip.cost.likely) faults.push('van');
      if (costOf({ van, longestMm: 1500 }) < costOf({ van })) faults.push('length');
      if (costOf({ payloadLb: 150 }) < costOf({ payloadLb: 300 })) faults.push('payload');
      if (costOf({ payloadLb: 150, van }) > costOf({ payloadLb: 150 }) + (costOf({ van }) - plain.trip.cost.likely))
        faults.push('a van to choose made it dearer');
      return faults;
    }, 250));

  it('with parts of the drive that sum to its cost, and to the step of it', () =>
    holds(({ reading }) => {
      const { trip, worth } = judge(
        reading,
        away(40, { tolls: 3, van: { cost: 25, per: 'trip' }, longestMm: 2000, payloadLb: 350 }),
      );
      // An ad in which there is nothing to value tells no working.
      if (trip === null || worth.steps.length === 0) return null;
      const sum = Object.values(trip.parts).reduce((total, part) => total + part.likely, 0);
      const step = worth.steps.find(({ id }) => id === 'trip')?.result.likely ?? Number.NaN;
      return Math.abs(sum - trip.cost.likely) < 1e-6 && Math.abs(step - sum) < 1e-6 ? [] : [`${sum} ${trip.cost.likely} ${step}`];
    }, 250));

  it('has questions that are worth something, and none more than knowing everything', () =>
    holds(({ reading }) => {
      const faults: string[] = [];
      let applied = false;
      for (const miles of [5, 25, 60, 150]) {
        const { prospect, questions } = judge(reading, away(miles));
        if (prospect === null || questions.length === 0) continue;
        applied = true;
        for (const { id, value } of questions) {
          if (value.minor <= 0) faults.push(`${id} is worth nothing`);
          if (value.minor > prospect.knowingAll.minor + CENT) faults.push(`${id} is worth more than everything`);
        }
      }
      return applied ? faults : null;
    }, 60));

  it('has chances from 0 to 1, and an average saving that is at least what it saves on average with no way back', () =>
    holds(({ reading }) => {
      const { prospect, worth } = judge(reading, away(20));
      if (prospect === null) return null;
      const faults: string[] = [];
      if (!(prospect.refusal >= 0 && prospect.refusal <= 1 + 1e-9)) faults.push(`refusal ${prospect.refusal}`);
      if (prospect.saving.minor < 0 || prospect.knowingAll.minor < 0) faults.push('below zero');
      const price = worth.allIn === null || worth.walkAway === null ? null : worth.allIn.likely;
      const most = prospect.breakEvenPrice?.minor ?? 0;
      const pays = (prospect.afterDrive?.minor ?? 0) >= 0;
      const asked = (price ?? 0) - (prospect.saving.minor - (prospect.afterDrive?.minor ?? 0));
      if (pays && asked > most + 100 + CENT) faults.push(`pays at ${asked}, but only up to ${most}`);
      if (!pays && asked < most - CENT) faults.push(`does not pay at ${asked}, but up to ${most}`);
      return faults;
    }, 200));
});

describe('an answer before the drive', { timeout: 120_000 }, () => {
  it('lowers what going there is worth in no ad, on average over what the seller may say', () =>
    holds(({ reading }) => {
      const unknowns = unknownsOf(reading, plateWeights(reading, DEFAULT_SETTINGS), DEFAULT_SETTINGS);
      // Where more is open than is weighed together, an answer lets another unknown in: that is another model, not another answer.
      if (unknowns.length === 0 || unknowns.length >= 5) return null;
      const faults: string[] = [];
      let applied = false;
      for (const miles of [5, 40, 120]) {
        const blind = judge(reading, away(miles)).prospect;
        if (blind === null) continue;
        for (const { id, chance, bad, good } of unknowns) {
          const [worse, better] = [bad, good].map((answer) => judge(reading, away(miles), answer).prospect);
          if (!worse || !better) continue;
          applied = true;
          const mean = (of: (one: Prospect) => number): number => chance * of(worse) + (1 - chance) * of(better);
          const home = (one: Prospect): number => Math.max(0, one.afterDrive?.minor ?? 0);
          if (mean((one) => one.saving.minor) < blind.saving.minor - CENT) faults.push(`${id} at ${miles}: saving fell`);
          if (mean(home) < home(blind) - CENT) faults.push(`${id} at ${miles}: worth of going fell`);
        }
      }
      return applied ? faults : null;
    }, 60));
});
