/** The next best lists, each by what it does otherwise. */
import type { Found, Kit } from '../../../src/kit/buy-list/index.ts';
import { useWords } from '../../components/speech.ts';
import type { Names } from './names.ts';

export interface OthersProps {
  readonly best: Kit;
  readonly others: readonly Found[];
  /** By what they are dearer. */
  readonly least: 'cost' | 'spent';
  readonly names: Names;
}

export function Others({ best, others, least, names }: OthersProps) {
  const { t } = useWords();
  if (others.length === 0) return null;
  const quoted = (ids: readonly string[]): string => ids.map((id) => t('buy_quoted', { name: names.find(id) })).join(', ');
  return (
    <section class="no-print" aria-labelledby="buy-others">
      <h2 id="buy-others">{t('buy_others')}</h2>
      <ol class="buy-others">
        {others.map(({ kit }) => {
          const added = kit.chosen.filter((id) => !best.chosen.includes(id));
          const gone = best.chosen.filter((id) => !kit.chosen.includes(id));
          const key = added.length === 0 ? 'buy_other_without' : gone.length === 0 ? 'buy_other_with' : 'buy_other_instead';
          const dearer = kit[least] - best[least];
          return (
            <li key={kit.chosen.join()} data-other={dearer}>
              {t(key, { added: quoted(added), gone: quoted(gone), dearer: names.money(dearer) })}{' '}
              <span class="quiet">{t('buy_other_spent', { spent: names.money(kit.spent) })}</span>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
