/** Names of the things of a kit. */
import type { Filled } from '../../../src/kit/filled-by.ts';
import type { Thing } from '../../../src/kit/same-thing.ts';
import { KINDS } from '../../../src/listing/reading.ts';
import type { Words } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';

/** What a kit can need or hold. */
export const KIT_KINDS = [...KINDS, 'platform'] as const;

export const kindName = ({ t }: Words, kind: Thing['kind']): string =>
  kind === 'platform' ? t('kit_kind_platform') : t(`panel_kind_${keyTail(kind)}`);

/** Sold by the weight of one piece: without it a plate or bar says too little. */
export const isWeighed = (kind: Thing['kind']): boolean =>
  kind === 'plate' || kind === 'bumper' || kind === 'micro' || kind === 'bar' || kind === 'dumbbell' || kind === 'kettlebell';

/** "Plates, 45 lb" or "Rack" */
export const thingName = (words: Words, { kind, weight }: Thing): string =>
  weight === null ? kindName(words, kind) : words.t('panel_item_named', { kind: kindName(words, kind), weight: { weight } });

/** "2 × plates, 45 lb"; one of a kind by its name alone. */
export const countedName = (words: Words, thing: Thing & { readonly pieces: number }): string =>
  thing.pieces === 1 ? thingName(words, thing) : words.t('kit_counted', { count: thing.pieces, name: thingName(words, thing) });

/** "2 of 4 × Plates, 45 lb", or the name alone of what is lacking once. */
export const filledName = (words: Words, { need, pieces }: Filled): string =>
  need.pieces === 1
    ? thingName(words, need)
    : words.t('kit_filled', { pieces, lacking: need.pieces, name: thingName(words, need) });
