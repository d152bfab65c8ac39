/** Nothing is lacking: what the kit cost, against what all of it costs new. */
import { asWritten } from '../../../src/words/write-figures.ts';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import type { KitNeeds } from './use-kit-needs.ts';

export function Complete({ kit, currency }: { readonly kit: KitNeeds; readonly currency: string }) {
  const { t, say } = useWords();
  const { status } = kit;
  // As they stand beside their difference.
  const [allNew, spent] = [kit.allNew, status.spent].map((minor) => asWritten({ minor, currency }).minor) as [number, number];
  const money = (minor: number): string => say.money({ minor, currency });
  return (
    <div class="buy-answer" data-list="complete">
      <p class="buy-headline" data-headline>
        {t('buy_complete', { spent: money(spent) })}
      </p>
      <p data-against-new>
        {t(allNew >= spent ? 'buy_complete_new' : 'buy_complete_dearer', {
          fresh: money(allNew),
          saved: money(Math.abs(allNew - spent)),
        })}
      </p>
      {status.left !== null && (
        <p data-left>
          {status.left >= 0
            ? t('buy_complete_left', { left: money(status.left) })
            : t('kit_overspent', { by: money(-status.left) })}
        </p>
      )}
      <p>
        <a href={addressOf('kit')}>{t('workshop_kit')}</a>
      </p>
    </div>
  );
}
