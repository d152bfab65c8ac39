/** A turn of the call in words. */
import type { CallKind } from '../listing/evaluation.ts';
import type { RateCategory, Settings } from '../listing/settings.ts';
import { MILE_IN_KILOMETRES } from '../units/length.ts';
import { inPounds, POUND_IN_KILOGRAMS } from '../units/mass.ts';
import { exponentOf } from '../units/money.ts';
import { type Message, message, type Param } from '../words/message.ts';
import type { AssumptionKind } from './assumptions.ts';
import { distanceUnit } from './distance.ts';

interface Told {
  readonly kind: AssumptionKind;
  readonly category: RateCategory | null;
  readonly unit: 'money-per-lb' | 'money' | 'lb' | 'fraction' | 'mi';
  readonly side: 'below' | 'above';
  readonly at: number;
  readonly to: CallKind;
}

/** A threshold is found to within about so much of a step. */
const NEAR = 0.02;

/** Rounded away from what is assumed, so that what is said holds: "less than" only of values that surely turn it. */
const away = (value: number, step: number, side: Told['side']): number =>
  side === 'below' ? Math.floor(value / step + NEAR) * step : Math.ceil(value / step - NEAR) * step;

/** The threshold in the buyer's units, rounded to what is shown of it. */
function figureOf({ unit, at, side }: Told, settings: Settings): Param {
  const { currency } = settings;
  const minor = 10 ** exponentOf(currency);
  const kilograms = settings.unit === 'kg';
  switch (unit) {
    case 'money-per-lb': {
      const rate = at * inPounds({ value: 1, unit: settings.unit });
      return { rate: { minor: Math.round(away(rate * minor, 1, side)), currency }, per: settings.unit };
    }
    case 'money': {
      // Whole units from a hundred up, for no more is shown of them.
      const step = at >= 100 ? minor : 1;
      return { money: { minor: Math.round(away(at * minor, step, side)), currency } };
    }
    case 'lb':
      return { weight: { value: away(kilograms ? at * POUND_IN_KILOGRAMS : at, 1, side), unit: settings.unit } };
    case 'mi': {
      const shown = distanceUnit(settings);
      return { distance: { value: away(shown === 'km' ? at * MILE_IN_KILOMETRES : at, 1, side), unit: shown } };
    }
    default:
      return { percent: Math.round(away(at * 100, 1, side)) };
  }
}

const TO: Readonly<Record<CallKind, string>> = {
  go: 'turn_to_go',
  haggle: 'turn_to_haggle',
  ask: 'turn_to_ask',
  leave: 'turn_to_leave',
};

export function saidOf(told: Told, settings: Settings): Message {
  const { kind, category, side, to } = told;
  return message(`turn_${kind.replaceAll('-', '_')}_${side}`, {
    to: { message: message(TO[to]) },
    at: figureOf(told, settings),
    ...(category === null ? {} : { category: { message: message(`category_${category.replaceAll('-', '_')}`) } }),
  });
}
