/** Which plate goes with which, on which side and why; and the words to chalk on each. */
import type { Ref } from 'preact';
import type { ChalkedPair } from '../../../src/kit/chalk.ts';
import type { Pairing } from '../../../src/kit/pairing.ts';
import type { Swap } from '../../../src/kit/swaps.ts';
import { convert, type MassUnit, pounds } from '../../../src/units/mass.ts';
import { Announcer } from '../../components/announcer.tsx';
import { useWords, type Words } from '../../components/speech.ts';

export interface PairListProps {
  /** Where whoever comes for the pairs is taken. */
  readonly heading: Ref<HTMLHeadingElement>;
  readonly pairing: Pairing;
  readonly pairs: readonly ChalkedPair[];
  /** Worst difference in pounds in the order in which the plates were written down. */
  readonly asGiven: number;
  /** What changes places, from the order in which they were written down. */
  readonly swaps: readonly Swap[];
  readonly unit: MassUnit;
}

/** Pounds in the buyer's unit to the hundredth, as scales for plates show at best. */
const weighed = ({ say }: Words, value: number, unit: MassUnit): string => say.weight(convert(pounds(value), unit));

/** Face values need no hundredths but for 1.25 and 2.5. */
const faceIn = ({ say }: Words, face: number, unit: MassUnit): string => say.number(convert(pounds(face), unit).value, 2);

export function PairList({ heading, pairing, pairs, asGiven, swaps, unit }: PairListProps) {
  const words = useWords();
  const { t } = words;
  const { worst, worstShare, alone, proven } = pairing;
  const said = t('weigh_worst', { worst: weighed(words, worst, unit), share: { percent: 100 * worstShare, digits: 1 } });
  return (
    <>
      <section aria-labelledby="pairs-heading" class="pairs">
        <h2 id="pairs-heading" ref={heading} tabIndex={-1}>
          {t('weigh_pairs')}
        </h2>
        <Announcer text={said} />
        <p class="pairs-worst">
          {said} {asGiven > worst && t('weigh_worst_as_given', { worst: weighed(words, asGiven, unit) })}
        </p>
        {!proven && <p data-unproven>{t('weigh_unproven')}</p>}
        <p>
          {t('weigh_nearest')} {t('weigh_scale')}
        </p>
        <ol class="plain-list">
          {pairs.map((pair) => (
            <li key={pair.left.id} data-pair={`${pair.face} ${pair.letter}`}>
              {pairWords(words, pair, unit)}
            </li>
          ))}
        </ol>
        {alone.map((plate) => (
          <p key={plate.id} data-alone>
            {t('weigh_alone', {
              plate: plate.id,
              weight: weighed(words, plate.pounds, unit),
              face: faceIn(words, plate.face, unit),
            })}
          </p>
        ))}
        {swaps.length > 0 && (
          <>
            <h3>{t('weigh_swaps')}</h3>
            <ol class="plain-list" data-swaps>
              {swaps.map((swap) => (
                <li key={swap.comes.id}>{swapWords(words, swap, unit)}</li>
              ))}
            </ol>
          </>
        )}
        <p class="no-print">
          <button type="button" data-print onClick={() => print()}>
            {t('weigh_print')}
          </button>
        </p>
      </section>
      <section aria-labelledby="labels-heading">
        <h2 id="labels-heading">{t('weigh_labels')}</h2>
        <ul class="labels">
          {pairs.flatMap((pair) =>
            (['left', 'right'] as const).map((side) => (
              <li key={pair[side].id}>
                <strong>{t(`weigh_label_${side}`, { face: faceIn(words, pair.face, unit), letter: pair.letter })}</strong>
                <span>{t('weigh_label_plate', { plate: pair[side].id, weight: weighed(words, pair[side].pounds, unit) })}</span>
              </li>
            )),
          )}
        </ul>
      </section>
    </>
  );
}

/** "Swap plates 2 and 4: plate 1 then differs by 0.3 lb from its mate, not by 1.4 lb." */
function swapWords(words: Words, { stays, comes, goes, was, becomes }: Swap, unit: MassUnit): string {
  const { t } = words;
  const said = { stays: stays.id, comes: comes.id, becomes: weighed(words, becomes, unit) };
  if (goes === null || was === null) return t('weigh_swap_join', said);
  return t('weigh_swap', { ...said, goes: goes.id, was: weighed(words, was, unit) });
}

/** What to do with a pair, and why that way round, in two sentences. */
function pairWords(words: Words, { face, letter, left, right, difference, against }: ChalkedPair, unit: MassUnit): string {
  const { say, t } = words;
  const name = (of: { readonly face: number; readonly letter: string }) => `${faceIn(words, of.face, unit)} ${of.letter}`;
  const what = t('weigh_pair', {
    pair: name({ face, letter }),
    left: left.id,
    leftWeight: weighed(words, left.pounds, unit),
    right: right.id,
    rightWeight: weighed(words, right.pounds, unit),
  });
  if (difference === 0) return `${what} ${t('weigh_pair_even')}`;
  const side = difference > 0 ? 'left' : 'right';
  const over = weighed(words, Math.abs(difference), unit);
  const most = say.list(against.slice(0, 3).map(name));
  const why =
    against.length === 0 ? t(`weigh_pair_${side}_alone`, { over }) : t(`weigh_pair_${side}_against`, { over, pairs: most });
  return `${what} ${why}`;
}
