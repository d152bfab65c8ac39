/** The answer of the screen: what is lacking, and whether the money does for it. */
import type { KitStatus } from '../../../src/kit/status.ts';
import type { KitFigures } from '../../../src/listing/settings.ts';
import { likely } from '../../components/figures.ts';
import { useWords, type Words } from '../../components/speech.ts';
import { countedName } from './thing-words.ts';
import type { OpenKit } from './use-kit.ts';

export interface StatusProps {
  readonly kit: OpenKit;
  readonly figures: KitFigures;
  readonly status: KitStatus;
}

/** Whether what is left does for the rest; null without a budget, or when nothing is lacking. */
export function fitWords({ t }: Words, { fits, shortBy, left, open }: KitStatus, currency: string): string | null {
  const amount = (minor: number) => ({ money: { minor: 100 * Math.round(minor / 100), currency } });
  if (left !== null && left < 0) return t('kit_overspent', { by: amount(-left) });
  if (fits === null || left === null || open.length === 0) return null;
  return t(`kit_money_${fits}`, { short: amount(shortBy), left: amount(left) });
}

export function Answer({ kit, status }: StatusProps) {
  const words = useWords();
  const { t } = words;
  const { currency } = kit.settings;
  const { open, rest, lines, fits } = status;
  const total = lines.reduce((sum, { need }) => sum + need.pieces, 0);
  const there = lines.reduce((sum, { owned }) => sum + owned, 0);
  const fit = fitWords(words, status, currency);
  return (
    <div class="kit-answer" data-complete={open.length === 0 && lines.length > 0 ? '' : undefined}>
      <p class="kit-headline" data-headline>
        {lines.length === 0
          ? t('kit_no_needs')
          : open.length === 0
            ? t('kit_complete')
            : t('kit_lacking', { n: total - there, total })}
      </p>
      {open.length > 0 && (
        <p data-rest>
          {t('kit_rest', { used: likely(words, { ...rest.used, currency }), fresh: likely(words, { ...rest.fresh, currency }) })}
        </p>
      )}
      {fit && (
        <p class={fits === 'short' ? 'kit-short' : undefined} data-fit={fits ?? 'over'}>
          {fit}
        </p>
      )}
      {open.length > 0 && (
        <ul class="kit-open" data-open>
          {open.map((need) => (
            <li key={need.id}>{countedName(words, need)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
