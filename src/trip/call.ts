/** The answer: go, haggle, ask or leave, with its number and its reasons. */
import type { Call, Flag, Trip } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { Appraisal } from '../price/index.ts';
import { MILE_IN_KILOMETRES } from '../units/length.ts';
import { type Message, message, type Param } from '../words/message.ts';
import { breakEven } from './drive.ts';
import type { Outlook } from './outlook.ts';
import { reasonsOf } from './reasons.ts';

export interface Facts {
  readonly reading: Reading;
  readonly flags: readonly Flag[];
  readonly appraisal: Appraisal;
  readonly trip: Trip | null;
  readonly outlook: Outlook;
  readonly settings: Settings;
}

/** A price is worth haggling over when this share of it would be fair; further off, leave it. An assumption. */
const WITHIN_TALK = 0.6;
/** A firm price moves this little. An assumption. */
const FIRM_GIVES = 0.95;

/** A call with its reasons, each said once however many items give it. */
const call = (kind: Call['kind'], says: Message, ...because: readonly Message[]): Call => ({
  kind,
  says,
  because: [...new Map(because.map((reason) => [JSON.stringify(reason), reason])).values()],
});
const leave = (...because: readonly Message[]): Call => call('leave', message('call_leave'), ...because);

/** There is nothing to value: why. */
function nothing({ reading, flags, appraisal, settings }: Facts): Call | null {
  if (reading.wanted) return leave(message('because_wanted'));
  if (!reading.aboutThisTrade) return leave(message('because_nothing_here'));
  if (reading.items.length === 0) return leave(message('because_nothing_on_offer'));
  const { worth, goods } = appraisal;
  const broken = flags.filter((flag) => flag.weight === 'deal-breaker');
  if (
    broken.length > 0 &&
    goods.every((good) => good.quantity.likely === 0 && good.ceiling === 0 && !good.unknown && good.category !== null)
  ) {
    return leave(...broken.slice(0, 3).map((flag) => flag.says));
  }
  if (worth.walkAway !== null) return null;
  const { currency } = worth;
  if (goods.some((good) => good.unknown)) return call('ask', message('call_ask'), message('because_no_weight'));
  if (goods.some((good) => good.category !== null && good.quantity.likely > 0)) {
    const key = currency === settings.currency ? 'because_no_rates' : 'because_other_currency';
    return call('ask', message('call_ask'), message(key, { currency, own: settings.currency }));
  }
  return leave(message('because_not_valued'));
}

/** The buyer's unit of distance where the ad gives none. */
const distanceUnit = (settings: Settings) => (settings.unit === 'kg' ? 'km' : 'mi');

/** Nobody drives further for iron, whatever the sums say: an assumption, in miles. */
const FAR_ENOUGH = 250;

/** Go: with no distance known, as far as the saving carries. */
function go({ appraisal, trip, settings }: Facts, price: number, most: { most: Param }, because: readonly Message[]): Call {
  if (trip !== null) return call('go', message('call_go'), ...because);
  const saving = (appraisal.ceiling ?? 0) - price;
  const limit = breakEven(saving, settings, distanceUnit(settings));
  if (saving > 0 && limit === null) return call('go', message('call_go'), ...because);
  if (limit === null || limit.value < 1) return call('haggle', message('call_haggle', most), ...because);
  const cap = distanceUnit(settings) === 'km' ? Math.round(FAR_ENOUGH * MILE_IN_KILOMETRES) : FAR_ENOUGH;
  const far = limit.value > cap;
  const distance = { distance: { distance: far ? { ...limit, value: cap } : limit } };
  return call('go', message(far ? 'call_go_far' : 'call_go_up_to', distance), ...because);
}

export function decide(facts: Facts): Call {
  const early = nothing(facts);
  if (early !== null) return early;
  const { appraisal, outlook, reading } = facts;
  const { walkAway } = appraisal.worth;
  const because = reasonsOf(facts);
  if (walkAway === null || walkAway.minor <= 0) return leave(message('because_worth_nothing'), ...because);
  const most = { most: { money: walkAway } };
  const price = appraisal.price?.range.likely ?? null;
  if (price === null) return call('ask', message('call_ask_price', most), message('because_unread_price'), ...because);

  if (price <= walkAway.minor) {
    const open = outlook.decisive.map((unknown) => message(`because_unknown_${unknown.id}`));
    return open.length > 0 ? call('ask', message('call_ask'), ...open, ...because) : go(facts, price, most, because);
  }
  // What the ad doesn't weigh may well be worth the difference.
  if (appraisal.goods.some((good) => good.unknown))
    return call('ask', message('call_ask'), message('because_no_weight'), ...because);
  const share = reading.asking.firm?.value === true ? FIRM_GIVES : WITHIN_TALK;
  if (walkAway.minor >= share * price) return call('haggle', message('call_haggle', most), ...because);
  return call(
    'leave',
    message('call_leave'),
    message(share === FIRM_GIVES ? 'because_firm' : 'because_too_dear', most),
    ...because,
  );
}
