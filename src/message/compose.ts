/** A short and polite message to the seller: the questions in order of worth, an opening offer with its reason, and when to come. */
import type { Evaluation } from '../listing/evaluation.ts';
import { type Condition, type Item, isOnePiece, type Reading } from '../listing/reading.ts';
import { inMiles } from '../units/length.ts';
import type { Money } from '../units/money.ts';
import { type Message, message } from '../words/message.ts';
import type { Speaker } from '../words/say.ts';

export const MESSAGE_PARTS = ['questions', 'offer', 'pickup'] as const;
export type MessagePart = (typeof MESSAGE_PARTS)[number];

/** More questions than this are an interrogation: the rest is checked at the door. */
export const MOST_QUESTIONS = 4;

type Judged = Pick<Evaluation, 'reading' | 'questions' | 'worth' | 'trip'>;

/** A paragraph: sentences in a row, or, where `list` holds, a line for each after the first. */
export interface Paragraph {
  readonly says: readonly Message[];
  readonly list: boolean;
}

const inARow = (...says: readonly Message[]): Paragraph => ({ says, list: false });

/**
 * The message without the parts that are left out, and without those that there is nothing to say in. `title` is the ad's, may be empty;
 * `only` is what the buyer takes of it, empty for all.
 */
export function sellerMessage(
  judged: Judged,
  title: string,
  parts: readonly MessagePart[] = MESSAGE_PARTS,
  only: readonly Item[] = [],
): Paragraph[] {
  const name = shortened(title);
  const interest = name === '' ? message('message_interest_untitled') : message('message_interest', { title: name });
  const asked = parts.includes('questions') ? questions(judged) : [];
  const offered = parts.includes('offer') ? offer(judged) : [];
  return [
    inARow(message('message_greeting')),
    inARow(interest, ...onlyThis(judged, only), message(isOnePiece(judged.reading) ? 'message_there' : 'message_all_there')),
    ...asked,
    ...offered,
    ...(parts.includes('pickup') ? [inARow(message('message_pickup'))] : []),
    inARow(message('message_closing')),
  ];
}

/** Named in the ad's own words, which the seller knows in any language; without any, the questions and the price must do. */
function onlyThis({ reading: { text } }: Judged, only: readonly Item[]): Message[] {
  const words = only.flatMap(({ evidence }) => {
    const spans = evidence.map(({ start, end }) => text.slice(start, end).trim().replace(/\s+/g, ' '));
    return spans.sort((one, other) => other.length - one.length).slice(0, 1);
  });
  return words.length === 0 ? [] : [message('message_only', { goods: words.join('; ') })];
}

/** A title may be a whole ad's first line: cut behind a word, and without what hangs on to it. */
const MOST_TITLE = 60;
function shortened(title: string): string {
  const whole = title.trim().replace(/\s+/g, ' ');
  const cut = whole.length > MOST_TITLE ? whole.slice(0, MOST_TITLE).replace(/\s\S*$/, '') : whole;
  return cut.replace(/[\s,;:.–-]+$/, '');
}

function questions({ questions: open }: Judged): Paragraph[] {
  const asked = open.slice(0, MOST_QUESTIONS).map(({ says }) => says);
  if (asked.length === 0) return [];
  return [{ says: [message('message_ask', { n: asked.length }), ...asked], list: true }];
}

/** Where the price is good the message says so; where it is firm, or the offer is in another currency than the ad, it names no figure of its own. */
function offer({ reading, worth, trip }: Judged): Paragraph[] {
  const { amount, placeholder, firm } = reading.asking;
  const { openingOffer, walkAway } = worth;
  if (amount === null || placeholder || !openingOffer || !walkAway || openingOffer.currency !== amount.value.currency) return [];
  const asked = amount.value;
  if (asked.minor <= openingOffer.minor) return [inARow(message('message_price_fine', { price: { money: asked } }))];
  if (firm?.value === true) {
    return asked.minor <= walkAway.minor ? [inARow(message('message_price_fine', { price: { money: asked } }))] : [];
  }
  if (openingOffer.minor <= 0) return [];
  return [
    inARow(message('message_offer', { open: { money: openingOffer }, because: { message: reason(reading, worth, trip) } })),
  ];
}

const NEEDS_WORK: readonly Condition[] = ['rust', 'rust-heavy', 'missing-parts', 'torn', 'wobbly', 'seized-sleeves', 'chipped'];

/** One way in miles from which a seller understands that the drive counts. An assumption. */
const FAR = 15;

/**
 * Whether the buyer has seen what such iron goes for: every rate by weight that went in was learned from finds. A figure out of the table,
 * or one that the buyer guessed, is no news of the market to tell a seller.
 */
function isLearned({ steps }: Evaluation['worth']): boolean {
  const rates = steps.filter(({ id, unit }) => id.startsWith('used-rate:') && unit === 'money-per-lb');
  return rates.length > 0 && rates.every(({ fromFinds }) => fromFinds === true);
}

/** The best honest reason for an offer below the price. */
function reason(reading: Reading, worth: Evaluation['worth'], trip: Evaluation['trip']): Message {
  const { goingRate } = worth;
  const needsWork = reading.items.some(({ conditions }) => conditions.some(({ value }) => NEEDS_WORK.includes(value)));
  if (needsWork) return message('message_because_work');
  if (trip !== null && inMiles(trip.distance) >= FAR)
    return message('message_because_drive', { distance: { distance: trip.distance } });
  if (goingRate !== null && goingRate.per !== 'lot' && isLearned(worth)) {
    const rate: Money = { minor: Math.round(goingRate.likely), currency: goingRate.currency };
    return message('message_because_rate', { rate: { rate, per: goingRate.per } });
  }
  return message(isOnePiece(reading) ? 'message_because_cash_for_it' : 'message_because_cash');
}

/** Paragraphs as text, an empty line between them, in the speaker's words. */
export const written = (say: Speaker, paragraphs: readonly Paragraph[]): string =>
  paragraphs
    .map(({ says, list }) => {
      const [first = '', ...rest] = says.map(say);
      return list ? [first, ...rest.map((one) => `- ${one}`)].join('\n') : [first, ...rest].join(' ');
    })
    .join('\n\n');
