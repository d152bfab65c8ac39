/** Which values a line of the reading has, by kind, and how each is written. */
import { type Item, isPlate, type Kind, measuredBore } from '../../src/listing/reading.ts';
import type { Words } from '../components/speech.ts';
import { keyTail, kindWords } from './item-words.ts';
import type { KnownPart } from './known-how.tsx';

const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const HEAVY: readonly Kind[] = ['rack', 'stands', 'bench', 'storage', 'other'];

export const isBar = (kind: Kind): boolean => BARS.includes(kind);
export const hasWeight = (kind: Kind): boolean => !HEAVY.includes(kind);
export const hasFit = (kind: Kind): boolean => isPlate(kind) || isBar(kind) || kind === 'collars';
export const hasBore = isPlate;

const millimetres = ({ t }: Words, value: number): string => t('panel_mm', { value: { mm: value } });

/** The values of a line that can be set, with what `before` (the same line as read) said. */
export function itemParts(words: Words, item: Item, before: Item | null): KnownPart[] {
  const { say, t } = words;
  const kind = item.kind.value;
  const part = (field: string, fact: KnownPart['fact'], was: string | null | undefined): KnownPart => ({
    path: `${item.id}.${field}`,
    name: t(`panel_name_${field}`),
    fact,
    was: was ?? null,
  });
  const parts = [
    part('kind', null, before ? kindWords(words, before) : null),
    part('count', item.count, before?.count && say.number(before.count.value)),
  ];
  if (hasWeight(kind)) {
    const weight = before?.unitWeight;
    parts.push(part('unitWeight', item.unitWeight, weight && t('panel_one_weight', { weight: { weight: weight.value } })));
  }
  if (hasFit(kind)) parts.push(part('fits', item.fits, before?.fits && t(`panel_fits_${before.fits.value}`)));
  if (hasBore(kind)) parts.push(part('boreMm', item.boreMm, before?.boreMm && millimetres(words, before.boreMm.value)));
  if (isBar(kind)) {
    parts.push(part('shaftMm', item.shaftMm, before?.shaftMm && millimetres(words, before.shaftMm.value)));
    parts.push(part('lengthMm', item.lengthMm, before?.lengthMm && millimetres(words, before.lengthMm.value)));
  }
  return parts;
}

/** What else is known of it: "fits 50 mm sleeves, 52 mm hole, cast, light rust". */
export function itemDetails(words: Words, item: Item): string {
  const { say, t } = words;
  const facts: string[] = [];
  if (item.fits) facts.push(t(`panel_fits_${item.fits.value}`));
  const bore = measuredBore(item);
  if (bore) facts.push(t('panel_detail_bore', { value: { mm: bore.value } }));
  if (item.shaftMm) facts.push(t('panel_detail_shaft', { value: { mm: item.shaftMm.value } }));
  if (item.lengthMm) facts.push(t('panel_detail_length', { value: { mm: item.lengthMm.value } }));
  if (item.diameterMm) facts.push(t('panel_detail_diameter', { value: { mm: item.diameterMm.value } }));
  if (item.capacity) facts.push(t('panel_detail_capacity', { weight: { weight: item.capacity.value } }));
  if (item.grade) facts.push(t(`panel_grade_${keyTail(item.grade.value)}`));
  if (item.material) facts.push(t(`panel_material_${item.material.value}`));
  for (const condition of item.conditions) facts.push(t(`panel_condition_${keyTail(condition.value)}`));
  if (item.ownPrice) facts.push(t('panel_detail_own_price', { price: { money: item.ownPrice.value } }));
  return say.list(facts);
}
