/** Why to leave it, in words that a seller need not take amiss: said at the door or sent afterwards. */
import type { Evaluation } from '../listing/evaluation.ts';
import { type Message, message } from '../words/message.ts';
import type { Paragraph } from './compose.ts';

/** Deal-breakers by id that have words of their own. */
const WORDS: Readonly<Record<string, string>> = {
  bent: 'message_refuse_bent',
  'shaft-thick': 'message_refuse_shaft',
  'one-inch-bar': 'message_refuse_bar_size',
  'short-bar': 'message_refuse_bar_size',
  'bore-oversized': 'message_refuse_holes',
  'bore-undersized': 'message_refuse_holes',
  'one-inch-plates': 'message_refuse_holes',
  'two-inch-plates': 'message_refuse_holes',
  cracked: 'message_refuse_cracked',
  'cracked-piece': 'message_refuse_cracked',
  'cement-filled': 'message_refuse_cement',
  'single-stands': 'message_refuse_stands',
  'rack-too-tall': 'message_refuse_height',
};

/** Reasons to leave it, each once: what is wrong with it, then the price. None where nothing speaks against it. */
export function refusals({ flags, reading, worth }: Pick<Evaluation, 'flags' | 'reading' | 'worth'>): Message[] {
  const faults = flags.filter(({ weight }) => weight === 'deal-breaker').map(({ id }) => WORDS[id] ?? 'message_refuse_other');
  const asked = reading.asking.placeholder ? null : reading.asking.amount?.value;
  const most = worth.walkAway;
  const dear = asked && most && asked.currency === most.currency && asked.minor > most.minor;
  const price = !dear
    ? []
    : [most.minor > 0 ? message('message_refuse_price', { most: { money: most } }) : message('message_refuse_no_price')];
  return [...[...new Set(faults)].map((key) => message(key)), ...price];
}

/** The reasons in a message of thanks; null without one. */
export function refusalMessage(evaluation: Parameters<typeof refusals>[0]): Paragraph[] | null {
  const reasons = refusals(evaluation);
  if (reasons.length === 0) return null;
  return [
    { says: [message('message_refuse_thanks'), ...reasons], list: false },
    { says: [message('message_refuse_closing')], list: false },
  ];
}
