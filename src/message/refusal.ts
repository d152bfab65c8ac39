/** Why to leave it, in words that a seller need not take amiss: said at the door or sent afterwards. */
import type { Evaluation, Flag } from '../listing/evaluation.ts';
import { type Condition, type Item, isKept } from '../listing/reading.ts';
import { type Message, message } from '../words/message.ts';
import type { Paragraph } from './compose.ts';

/** Flags by id, or by what they say where that differs by degree, that have words of their own. */
const WORDS: Readonly<Record<string, string>> = {
  bent: 'message_refuse_bent',
  'bow-doubtful': 'message_refuse_bow',
  'shaft-thick': 'message_refuse_shaft',
  'one-inch-bar': 'message_refuse_bar_size',
  'short-bar': 'message_refuse_bar_size',
  'cracked-bar': 'message_refuse_bar_cracked',
  'bar-parts-missing': 'message_refuse_parts',
  'frozen-sleeves': 'message_refuse_sleeves',
  'bore-oversized': 'message_refuse_holes',
  'bore-undersized': 'message_refuse_holes',
  'one-inch-plates': 'message_refuse_holes',
  'two-inch-plates': 'message_refuse_holes',
  cracked: 'message_refuse_cracked',
  'cracked-piece': 'message_refuse_cracked',
  'cracked-weight': 'message_refuse_cracked',
  flag_cracked_bar_casing: 'message_refuse_part_broken',
  flag_cracked_weight_casing: 'message_refuse_part_broken',
  'bent-handle': 'message_refuse_handle_bent',
  'loose-head': 'message_refuse_head',
  'broken-collars': 'message_refuse_collars',
  'split-hub': 'message_refuse_hub',
  'bumper-small': 'message_refuse_bumper_size',
  'cement-filled': 'message_refuse_cement',
  'cracked-frame': 'message_refuse_frame_cracked',
  'bent-frame': 'message_refuse_frame_bent',
  flag_cracked_frame_attachment: 'message_refuse_part_broken',
  flag_bent_frame_attachment: 'message_refuse_part_broken',
  'single-stands': 'message_refuse_stands',
  'rack-pins-missing': 'message_refuse_catches',
  'rack-parts-missing': 'message_refuse_parts',
  'rack-wobbly': 'message_refuse_wobbly',
  'storage-wobbly': 'message_refuse_wobbly',
  'bench-wobbly': 'message_refuse_wobbly',
  'home-made': 'message_refuse_home_made',
  'rack-no-floor': 'message_refuse_floor',
  'rack-too-tall': 'message_refuse_height',
  'low-capacity': 'message_refuse_rating',
  'rack-low-capacity': 'message_refuse_rating',
  'bench-low-capacity': 'message_refuse_rating',
  rust: 'message_refuse_rust',
};

/** Notes that become a reason once the buyer has measured what they speak of. */
const ONCE_MEASURED: Readonly<Record<string, readonly [field: 'heightMm' | 'widthMm' | 'shaftMm', words: string]>> = {
  'bench-height': ['heightMm', 'message_refuse_bench_size'],
  'bench-width': ['widthMm', 'message_refuse_bench_size'],
  'shaft-thin': ['shaftMm', 'message_refuse_shaft_thin'],
};

/** Faults that lower the price and raise no flag: a reason where the buyer found them. */
const FOUND: Readonly<Partial<Record<Condition, string>>> = { torn: 'message_refuse_torn', chipped: 'message_refuse_worn' };

function wordsFor(flag: Flag, item: Item | undefined): string | null {
  const own = WORDS[flag.says.key] ?? WORDS[flag.id] ?? null;
  if (flag.weight !== 'note') return own ?? (flag.weight === 'deal-breaker' ? 'message_refuse_other' : null);
  const [field, words] = ONCE_MEASURED[flag.id] ?? [];
  return field !== undefined && words !== undefined && item?.[field]?.basis === 'measured' ? words : null;
}

type Judged = Pick<Evaluation, 'flags' | 'reading' | 'worth'>;

/** Goods that are good for nothing, so that a price can only be for the rest. */
const hasRest = ({ flags }: Judged): boolean => flags.some(({ weight, item }) => weight === 'deal-breaker' && item !== null);

/** What to pay, where less than what is asked for. */
function priceOf(judged: Judged): Message | null {
  const { asking } = judged.reading;
  const asked = asking.placeholder ? null : asking.amount?.value;
  const most = judged.worth.walkAway;
  if (!asked || !most || asked.currency !== most.currency || asked.minor <= most.minor) return null;
  if (most.minor <= 0) return message('message_refuse_no_price');
  return message(hasRest(judged) ? 'message_refuse_rest' : 'message_refuse_price', { most: { money: most } });
}

/** Reasons to leave it, each once: what is wrong with it, worst first, then the price. None where nothing speaks against it. */
export function refusals(judged: Judged): Message[] {
  const { flags, reading } = judged;
  const items = new Map(reading.items.map((item) => [item.id, item]));
  const faults = flags.map((flag) => wordsFor(flag, flag.item === null ? undefined : items.get(flag.item)));
  const found = reading.items
    .filter(isKept)
    .flatMap(({ conditions }) => conditions.map(({ value, basis }) => (basis === 'measured' ? FOUND[value] : undefined) ?? null));
  const words = new Set([...faults, ...found].filter((key) => key !== null));
  const price = priceOf(judged);
  return [...[...words].map((key) => message(key)), ...(price === null ? [] : [price])];
}

/** Notes of what nobody has looked at yet. */
const UNSEEN: ReadonlySet<string> = new Set(['straightness-unknown', 'rack-pins-unsaid']);

/** What still speaks against it, or is not known, though it gives no reason to tell the seller. */
export const stillOpen = (flags: readonly Flag[]): Flag[] =>
  flags.filter(({ id, weight }) => weight !== 'note' || UNSEEN.has(id));

/** The reasons in a message of thanks; null without one. */
export function refusalMessage(evaluation: Judged): Paragraph[] | null {
  const reasons = refusals(evaluation);
  if (reasons.length === 0) return null;
  const offers = reasons.some(({ params }) => params?.most !== undefined);
  return [
    { says: [message('message_refuse_thanks'), ...reasons], list: false },
    { says: [message(offers ? 'message_refuse_closing' : 'message_refuse_goodbye')], list: false },
  ];
}
