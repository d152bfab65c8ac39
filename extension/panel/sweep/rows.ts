/** One line of the list: what an evaluation comes to, in figures that can be sorted and words that are shown. Pure. */
import { askingOf } from '../../../src/finds/history.ts';
import type { CallKind, Evaluation, Rate } from '../../../src/listing/evaluation.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { type Item, type Kind, measuredBore } from '../../../src/listing/reading.ts';
import { inMiles } from '../../../src/units/length.ts';
import type { Money } from '../../../src/units/money.ts';
import { likely, perWords } from '../../components/figures.ts';
import type { Words } from '../../components/speech.ts';
import type { SweptAd, Tag } from './sweep-host.ts';

/** The call, or why there is none: too little said, an ad of somebody who seeks, nothing of this trade, or not to be judged. */
export type Verdict = CallKind | 'unsaid' | 'wanted' | 'other';

export interface Row {
  readonly id: string;
  readonly listing: PageListing;
  readonly title: string;
  readonly verdict: Verdict;
  readonly says: string;
  /** Likely cost of a usable pound (or kilogram, for all rows alike) in minor units. */
  readonly cost: number | null;
  readonly costSays: string | null;
  /** The same in short, for the label in the page. */
  readonly costTag: string | null;
  /** The price of everything; null where none is stated, or a stand-in. */
  readonly asking: Money | null;
  readonly asked: string | null;
  /** By how much the all-in cost lies under what the goods are worth at the going rate, in minor units; below 0 when it lies over. */
  readonly saving: number | null;
  readonly savingSays: string | null;
  /** Miles, one way. */
  readonly distance: number | null;
  readonly distanceSays: string | null;
  readonly kinds: readonly Kind[];
}

const FIGURES = [
  'unitWeight',
  'totalWeight',
  'boreMm',
  'shaftMm',
  'sleeveMm',
  'lengthMm',
  'diameterMm',
  'capacity',
  'tensilePsi',
] as const satisfies readonly (keyof Item)[];

/** Whether the ad itself says anything to go by. A name and a price alone are judged by what such goods mostly are: that is a guess and no answer. */
function saysEnough({ reading }: Evaluation): boolean {
  if (reading.statedTotal) return true;
  return reading.items.some(
    (item) => item.conditions.length > 0 || FIGURES.some((name) => isSaid(name === 'boreMm' ? measuredBore(item) : item[name])),
  );
}

const isSaid = (fact: Item[(typeof FIGURES)[number]]): boolean =>
  fact !== null && fact.basis !== 'assumed' && fact.evidence.length > 0;

function verdictOf(evaluation: Evaluation): Verdict {
  const { reading, call } = evaluation;
  if (!reading.aboutThisTrade && reading.items.length === 0) return 'other';
  if (reading.wanted) return 'wanted';
  return saysEnough(evaluation) ? call.kind : 'unsaid';
}

const isCall = (verdict: Verdict): verdict is CallKind => verdict !== 'unsaid' && verdict !== 'wanted' && verdict !== 'other';

const titleOf = ({ title, text }: PageListing): string => title || text.trim().split('\n', 1)[0] || '';

export function rowOf(words: Words, { id, listing }: SweptAd, evaluation: Evaluation): Row {
  const { t, say } = words;
  const { worth, trip, reading, call } = evaluation;
  const verdict = verdictOf(evaluation);
  const judged = isCall(verdict);
  const cost = judged ? worth.perUsablePound : null;
  const saving =
    judged && worth.goingWorth && worth.allIn && !reading.asking.placeholder
      ? Math.round(worth.goingWorth.likely - worth.allIn.likely)
      : null;
  const asking = askingOf(reading);
  return {
    id,
    listing,
    title: titleOf(listing),
    verdict,
    says: judged ? say(call.says) : t(`sweep_verdict_${verdict}`),
    cost: cost?.likely ?? null,
    costSays: cost ? t('sweep_cost', { rate: likely(words, cost), per: perWords(words, cost) }) : null,
    costTag: cost ? t(`sweep_tag_per_${cost.per}`, { rate: likely(words, cost) }) : null,
    asking,
    asked: asking && t('sweep_asked', { price: { money: asking } }),
    saving,
    savingSays: saving === null ? null : savingWords(words, saving, worth.currency),
    distance: trip ? inMiles(trip.distance) : null,
    distanceSays: trip ? t('panel_distance_value', { distance: { distance: trip.distance } }) : null,
    kinds: [...new Set(reading.items.map((item) => item.kind.value))],
  };
}

const savingWords = ({ t, say }: Words, minor: number, currency: Rate['currency']): string =>
  t(minor < 0 ? 'sweep_over_going' : 'sweep_under_going', { amount: say.money({ minor: Math.abs(minor), currency }, 'whole') });

/** An ad that the core could not judge: it stays in the list, and says so. */
export const unjudged = ({ t }: Words, { id, listing }: SweptAd): Row => ({
  id,
  listing,
  title: titleOf(listing),
  verdict: 'other',
  says: t('sweep_verdict_failed'),
  cost: null,
  costSays: null,
  costTag: null,
  asking: null,
  asked: null,
  saving: null,
  savingSays: null,
  distance: null,
  distanceSays: null,
  kinds: [],
});

/** What stands beside the ad in the page. */
export const tagOf = ({ t }: Words, { id, says, costTag, verdict }: Row): Tag => ({
  id,
  words: costTag ? t('sweep_tag', { call: says, cost: costTag }) : says,
  tone: isCall(verdict) ? 'plain' : 'faint',
});
