/** How many washers, how near they come, what they cost beside bought plates, and whether they go on. */
import type { WasherFit, WasherOffer } from '../../../src/kit/washer-offer.ts';
import { convert, pounds, type Weight } from '../../../src/units/mass.ts';
import type { Currency } from '../../../src/units/money.ts';
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';

export interface WasherAnswerProps {
  readonly offer: WasherOffer;
  readonly wanted: Weight;
  readonly isWeighed: boolean;
  readonly currency: Currency;
  readonly fits: readonly { readonly sleeve: number; readonly fit: WasherFit }[];
}

export function WasherAnswer({ offer, wanted, isWeighed, currency, fits }: WasherAnswerProps) {
  const { say, t } = useWords();
  const { stack, forBoth, cost, bought } = offer;
  const weight = (value: number): string => say.weight(convert(pounds(value), wanted.unit), 3);
  const money = (minor: number) => ({ money: { minor: Math.round(minor), currency } });
  const answer = t('weigh_stack', { n: stack.washers, weight: weight(stack.pounds) });
  return (
    <div class="washer-answer">
      <Announcer onlyChanges text={answer} />
      <p>
        <strong>{answer}</strong>{' '}
        {t(stack.withinTolerance ? 'weigh_stack_within' : 'weigh_stack_off', {
          wanted: weight(stack.pounds - stack.off),
          off: weight(Math.abs(stack.off)),
        })}{' '}
        {t('weigh_stack_both', { n: forBoth, thickness: say.number(stack.thicknessMm, 0) })}
      </p>
      {!isWeighed && offer.pounds.low < offer.pounds.high && (
        <p data-range>{t('weigh_stack_range', { low: weight(offer.pounds.low), high: weight(offer.pounds.high) })}</p>
      )}
      {!isWeighed && <p>{t('weigh_stack_match')}</p>}
      {cost !== null && <p>{t('weigh_stack_cost', { cost: money(cost) })}</p>}
      {bought && (
        <p>{t('weigh_stack_bought', { low: money(bought.low), high: money(bought.high), likely: money(bought.likely) })}</p>
      )}
      <ul class="plain-list">
        {fits.map(({ sleeve, fit }) => (
          <li key={sleeve} data-fit={fit}>
            {t(`weigh_fit_${fit}`, { sleeve })}
          </li>
        ))}
      </ul>
      <p>{t('weigh_stack_tape')}</p>
    </div>
  );
}
