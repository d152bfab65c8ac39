/** The budget: what was spent, what is left, and what the rest costs used and new. */
import { likelyAndSpan } from '../../components/figures.ts';
import { NumberField } from '../../components/number-field.tsx';
import { parseAmount } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import { fitWords, type StatusProps } from './answer.tsx';
import { thingName } from './thing-words.ts';

const MOST = 1_000_000;

export function Money({ kit, figures, status }: StatusProps) {
  const words = useWords();
  const { say, t } = words;
  const { currency } = kit.settings;
  const { spent, left, rest, foreign, open } = status;
  const budget = (value: number | null) => kit.save({ budget: value });
  const fit = fitWords(words, status, currency);
  const line = (name: string, value: string) => (
    <>
      <dt>{t(`kit_money_${name}`)}</dt>
      <dd data-money={name}>{value}</dd>
    </>
  );
  return (
    <section aria-labelledby="kit-money">
      <h2 id="kit-money">{t('kit_money')}</h2>
      <NumberField
        path="budget"
        label={t('kit_budget')}
        labelShown
        value={figures.budget}
        write={(value) => say.number(value)}
        parse={parseAmount}
        low={0}
        high={MOST}
        complaint={t('kit_bad_number', { low: 0, high: MOST })}
        onValue={budget}
        onEmpty={() => budget(null)}
        width={7}
        hint="kit-budget-hint"
        unit={currency}
      />
      <p id="kit-budget-hint" class="line-notes">
        {t('kit_budget_hint')}
      </p>
      <dl class="kit-sums">
        {line('spent', say.money({ minor: spent, currency }))}
        {left !== null && line('left', say.money({ minor: left, currency }))}
        {open.length > 0 && line('used', likelyAndSpan(words, { ...rest.used, currency }))}
        {open.length > 0 && line('fresh', likelyAndSpan(words, { ...rest.fresh, currency }))}
      </dl>
      <p class="line-notes" data-money-drive>
        {t(left === null ? 'kit_money_drive' : 'kit_money_drive_left')}
      </p>
      {fit && <p>{fit}</p>}
      {rest.unpriced.length > 0 && (
        <p class="quiet">{t('kit_unpriced', { what: rest.unpriced.map((need) => thingName(words, need)).join('; ') })}</p>
      )}
      {foreign.length > 0 && (
        <p class="quiet">
          {t('kit_foreign', { what: foreign.map((one) => say.money(one)).join(', ') })}{' '}
          <a href={addressOf('settings')}>{t('workshop_settings')}</a>
        </p>
      )}
      {open.some(({ kind }) => kind === 'platform') && rest.unpriced.every(({ kind }) => kind !== 'platform') && (
        <p class="line-notes">{t(figures.platform === null ? 'kit_platform_usual' : 'kit_platform_measured')}</p>
      )}
    </section>
  );
}
