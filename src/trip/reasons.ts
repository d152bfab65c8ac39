/** Why the call is what it is, most telling first. */
import { POUND_IN_KILOGRAMS } from '../units/mass.ts';
import { type Message, message } from '../words/message.ts';
import type { Facts } from './call.ts';
import { round } from './rounding.ts';

const MOST_FLAGS = 3;

/** The number that it comes down to, against going rate and new. */
function againstRates({ appraisal }: Facts): Message[] {
  const { perUsablePound, goingRate, newDelivered, goingWorth } = appraisal.worth;
  if (goingRate === null || newDelivered === null) return [];
  if (perUsablePound !== null && goingRate.per !== 'lot' && perUsablePound.per !== 'lot') {
    const rate = (value: { likely: number; currency: string }) => ({
      rate: { minor: Math.round(value.likely), currency: value.currency },
      per: goingRate.per === 'kg' ? ('kg' as const) : ('lb' as const),
    });
    return [message('because_rate', { cost: rate(perUsablePound), going: rate(goingRate), fresh: rate(newDelivered) })];
  }
  if (goingWorth === null) return [];
  return [
    message('because_lot', {
      going: { money: round(goingWorth) },
      fresh: { money: round(appraisal.worth.newWorth ?? newDelivered) },
    }),
  ];
}

function losses({ appraisal, settings }: Facts): Message[] {
  const lost = appraisal.worth.offered.likely - appraisal.worth.usable.likely;
  if (lost < 0.5) return [];
  const weight = (pounds: number) => ({
    value: Math.round(settings.unit === 'kg' ? pounds * POUND_IN_KILOGRAMS : pounds),
    unit: settings.unit,
  });
  return [
    message('because_lost', { lost: { weight: weight(lost) }, offered: { weight: weight(appraisal.worth.offered.likely) } }),
  ];
}

export function reasonsOf(facts: Facts): Message[] {
  const { flags, trip } = facts;
  const reasons = [...againstRates(facts), ...losses(facts)];
  if (trip !== null)
    reasons.push(message('because_trip', { cost: { money: round(trip.cost) }, distance: { distance: trip.distance } }));
  const telling = flags.filter((flag) => flag.weight !== 'note').slice(0, MOST_FLAGS);
  return [...reasons, ...telling.map((flag) => flag.says)];
}
