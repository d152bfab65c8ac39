/** The answer: go, haggle, ask or leave, with its number and its reasons. */
import type { Call, Flag, Prospect, Trip } from '../listing/evaluation.ts';
import { isKept, type Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { Appraisal } from '../price/index.ts';
import { MILE_IN_KILOMETRES } from '../units/length.ts';
import type { Money } from '../units/money.ts';
import { type Message, message } from '../words/message.ts';
import { distanceUnit } from './distance.ts';
import { breakEven, costPerMileAway } from './drive.ts';
import { reasonsOf } from './reasons.ts';
import type { Unknown } from './unknowns.ts';

export interface Facts {
  readonly reading: Reading;
  readonly flags: readonly Flag[];
  readonly appraisal: Appraisal;
  readonly trip: Trip | null;
  readonly prospect: Prospect | null;
  /** Unknowns, likely enough to be bad, that would make the drive not worth it. */
  readonly decisive: readonly Unknown[];
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

/** Flags that say why a plate can't be loaded, beside the deal-breakers. */
const UNLOADED: ReadonlySet<string> = new Set(['odd-plate', 'odd-bumper', 'cracked-piece', 'split-hub']);

/** There is nothing to value: why. */
function nothing({ reading, flags, appraisal, settings }: Facts): Call | null {
  if (reading.wanted) return leave(message('because_wanted'));
  if (!reading.aboutThisTrade) return leave(message('because_nothing_here'));
  if (reading.items.length === 0) return leave(message('because_nothing_on_offer'));
  const { worth, goods } = appraisal;
  if (goods.every((good) => good.quantity.likely === 0 && good.ceiling === 0 && !good.unknown && good.category !== null)) {
    // What most likely does not fit may yet.
    if (worth.losses.some(({ reason }) => reason === 'unknown-bore'))
      return call('ask', message('call_ask'), message('because_unknown_bore'));
    const broken = flags.filter(({ id, weight }) => weight === 'deal-breaker' || UNLOADED.has(id));
    if (broken.length > 0) return leave(...broken.slice(0, 3).map((flag) => flag.says));
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

/** Nobody drives further for iron, whatever the sums say: an assumption, in miles. */
const FAR_ENOUGH = 250;

/** Go: with no distance known, as far as the saving carries that is expected when the buyer may refuse at the door. */
function go({ reading, appraisal, trip, prospect, settings }: Facts, price: number, because: readonly Message[]): Call | null {
  if (trip !== null) return call('go', message('call_go'), ...because);
  const unit = distanceUnit(settings);
  const saving = prospect?.saving.minor ?? (appraisal.ceiling ?? 0) - price;
  const limit = breakEven(saving, reading, settings, unit);
  if (limit === null) return saving > 0 && costPerMileAway(settings) === 0 ? call('go', message('call_go'), ...because) : null;
  if (limit.value < 1) return null;
  const cap = unit === 'km' ? Math.round(FAR_ENOUGH * MILE_IN_KILOMETRES) : FAR_ENOUGH;
  const far = limit.value > cap;
  const distance = { distance: { distance: far ? { ...limit, value: cap } : limit } };
  return call('go', message(far ? 'call_go_far' : 'call_go_up_to', distance), ...because);
}

/** Pins or hooks of something that the buyer means to keep are known to be missing or broken: what is to be said of it. */
function missingCatches({ flags, reading }: Facts): Message | null {
  const flag = flags.find(({ id }) => id === 'rack-pins-missing');
  const item = flag && reading.items.find(({ id }) => id === flag.item);
  return item && isKept(item) ? flag.says : null;
}

/** Whether the seller may come down to `most`, both in minor units. */
const isWithinTalk = ({ asking }: Reading, most: number, price: number): boolean =>
  most >= (asking.firm?.value === true ? FIRM_GIVES : WITHIN_TALK) * price;

/** The price is right on paper: ask first what may turn that, go if the chances bear it, else talk the price down until they do. */
function atThePrice(facts: Facts, price: number, walkAway: Money, because: readonly Message[]): Call {
  const { decisive, prospect } = facts;
  const open = decisive.map((unknown) => message(`because_unknown_${unknown.id}`));
  if (open.length > 0) return call('ask', message('call_ask'), ...open, ...because);
  // Without what catches the bar a rack is no place to lift in: whether it can still be had comes before the drive.
  const catches = missingCatches(facts);
  if (catches !== null) return call('ask', message('call_ask_catches'), catches, ...because);
  // Nobody drives to a seller who wants the money first.
  const ahead = facts.flags.find(({ id }) => id === 'pay-ahead');
  if (ahead !== undefined) return call('ask', message('call_ask'), ahead.says, ...because);
  const most = (money: Money): Message => message('call_haggle', { most: { money } });
  if ((prospect?.afterDrive?.minor ?? 0) >= 0) return go(facts, price, because) ?? call('haggle', most(walkAway), ...because);
  const bearable = prospect?.breakEvenPrice ?? null;
  if (bearable === null || bearable.minor <= 0 || !isWithinTalk(facts.reading, bearable.minor, price))
    return leave(message('because_chances'), ...because);
  return call('haggle', most(bearable), message('because_chances'), ...because);
}

export function decide(facts: Facts): Call {
  const early = nothing(facts);
  if (early !== null) return early;
  const { appraisal, prospect, reading } = facts;
  const { walkAway } = appraisal.worth;
  const because = reasonsOf(facts);
  if (walkAway === null || walkAway.minor <= 0) return leave(message('because_worth_nothing'), ...because);
  const most = { most: { money: walkAway } };
  const price = appraisal.price?.range.likely ?? null;
  if (price === null) return call('ask', message('call_ask_price', most), message('because_unread_price'), ...because);
  if (price <= walkAway.minor) return atThePrice(facts, price, walkAway, because);

  // What the ad doesn't weigh may well be worth the difference.
  if (appraisal.goods.some((good) => good.unknown))
    return call('ask', message('call_ask'), message('because_no_weight'), ...because);
  if (isWithinTalk(reading, walkAway.minor, price)) return call('haggle', message('call_haggle', most), ...because);
  // Too dear on paper, but if what is open turns out well it pays, and if not one refuses at the door: no reason to leave it unasked.
  const hope = prospect?.afterDrive ?? null;
  if (hope !== null && hope.minor > 0) {
    return call('ask', message('call_ask'), message('because_hope', { saving: { money: hope } }), ...because);
  }
  return leave(message(reading.asking.firm?.value === true ? 'because_firm' : 'because_too_dear', most), ...because);
}
