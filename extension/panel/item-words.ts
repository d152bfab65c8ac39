/** Names of the things on offer, in the words of the trade. */
import type { Item } from '../../src/listing/reading.ts';
import type { Words } from '../components/speech.ts';

/** A value of the contract ("curl-bar") as the tail of a string's key ("curl_bar"). */
export const keyTail = (value: string): string => value.replace(/[^a-z0-9]+/gi, '_');

export const kindWords = ({ t }: Words, item: Item): string => t(`panel_kind_${keyTail(item.kind.value)}`);

/** "Plates, 45 lb" or "Straight bar" */
export function itemName(words: Words, item: Item): string {
  const kind = kindWords(words, item);
  return item.unitWeight ? words.t('panel_item_named', { kind, weight: { weight: item.unitWeight.value } }) : kind;
}

/** Several lines in one breath: "Plates, 45 lb, 25 lb; Straight bar". */
export function nameAll(words: Words, items: readonly Item[]): string {
  const weights = new Map<string, string[]>();
  for (const item of items) {
    const kind = kindWords(words, item);
    const weight = item.unitWeight ? words.t('panel_one_weight', { weight: { weight: item.unitWeight.value } }) : null;
    const known = weights.get(kind) ?? [];
    weights.set(kind, weight === null || known.includes(weight) ? known : [...known, weight]);
  }
  return [...weights].map(([kind, known]) => words.say.list([kind, ...known])).join('; ');
}

export function nameOf(words: Words, items: readonly Item[], id: string | null): string | null {
  const item = items.find((one) => one.id === id);
  return item ? itemName(words, item) : null;
}
