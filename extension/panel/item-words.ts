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

export function nameOf(words: Words, items: readonly Item[], id: string | null): string | null {
  const item = items.find((one) => one.id === id);
  return item ? itemName(words, item) : null;
}
