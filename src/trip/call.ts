/** The answer: go, haggle, ask or leave, with its number and its reasons. */
import type { Call, Flag, Trip } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import type { Appraisal } from '../price/index.ts';
import { type Message, message } from '../words/message.ts';
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

const call = (kind: Call['kind'], says: Message, ...because: readonly Message[]): Call => ({ kind, says, because });
const leave = (...because: readonly Message[]): Call => call('leave', message('call_leave'), ...because);

/** There is nothing to value: why. */
function nothing({ reading, flags, appraisal, settings }: Facts): Call | null {
  if (reading.wanted) return leave(message('because_wanted'));
  if (!reading.aboutThisTrade) return leave(message('because_nothing_here'));
  if (reading.items.length === 0) return leave(message('because_nothing_on_offer'));
  const { worth, goods } = appraisal;
  const broken = flags.filter((flag) => flag.weight === 'deal-breaker');
  if (broken.length > 0 && goods.every((good) => good.quantity.likely === 0 && !good.unknown && good.category !== null)) {
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

export function decide(facts: Facts): Call {
  const early = nothing(facts);
  if (early !== null) return early;
  const { appraisal, trip, outlook, settings, reading } = facts;
  const { walkAway } = appraisal.worth;
  const because = reasonsOf(facts);
  if (walkAway === null || walkAway.minor <= 0) return leave(message('because_worth_nothing'), ...because);
  const most = { most: { money: walkAway } };
  const price = appraisal.price?.range.likely ?? null;
  if (price === null) return call('ask', message('call_ask_price', most), message('because_unread_price'), ...because);

  if (price <= walkAway.minor) {
    if (outlook.decisive.length > 0) {
      return call(
        'ask',
        message('call_ask'),
        ...outlook.decisive.map((unknown) => message(`because_unknown_${unknown.id}`)),
        ...because,
      );
    }
    if (appraisal.goods.some((good) => good.unknown) && appraisal.worth.usable.likely === 0)
      return call('ask', message('call_ask'), ...because);
    if (trip !== null) return call('go', message('call_go'), ...because);
    const limit = breakEven((appraisal.ceiling ?? 0) - price, settings, distanceUnit(settings));
    return call(
      'go',
      limit === null ? message('call_go') : message('call_go_up_to', { distance: { distance: limit } }),
      ...because,
    );
  }
  const share = reading.asking.firm?.value === true ? FIRM_GIVES : WITHIN_TALK;
  if (walkAway.minor >= share * price) return call('haggle', message('call_haggle', most), ...because);
  return call(
    'leave',
    message('call_leave'),
    message(share === FIRM_GIVES ? 'because_firm' : 'because_too_dear', most),
    ...because,
  );
}
