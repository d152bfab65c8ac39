/** Loads and gaps in words. */
import { weightOf } from '../../../../src/kit/exact-weight.ts';
import type { Gap } from '../../../../src/kit/loads.ts';
import type { MassUnit } from '../../../../src/units/mass.ts';
import type { Words } from '../../../components/speech.ts';

/** A total in one unit, to the hundredth. */
export const totalIn = ({ say }: Words, exact: number, unit: MassUnit): string => say.weight(weightOf(exact, unit));

/** Null where there is no gap at all. */
export const gapWords = (words: Words, gap: Gap | null, unit: MassUnit): string | null =>
  gap === null || gap.to === gap.from
    ? null
    : words.t('kit_gap', {
        by: totalIn(words, gap.to - gap.from, unit),
        from: totalIn(words, gap.from, unit),
        to: totalIn(words, gap.to, unit),
      });
