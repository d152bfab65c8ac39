/** What no ad of the list fills: to be bought new. */
import type { Kit } from '../../../src/kit/buy-list/index.ts';
import { useWords } from '../../components/speech.ts';
import type { Names } from './names.ts';
import type { Worked } from './work-out.ts';

export function Fresh({
  fresh,
  worked,
  names,
}: {
  readonly fresh: Kit['fresh'];
  readonly worked: Worked;
  readonly names: Names;
}) {
  const { t } = useWords();
  if (fresh.length === 0) return null;
  const each = new Map(worked.made.market.needs.map(({ id, fresh: price }) => [id, price ?? 0]));
  return (
    <section aria-labelledby="buy-new">
      <h2 id="buy-new">{t('buy_new')}</h2>
      <ul class="buy-new">
        {fresh.map(({ need, pieces }) => (
          <li key={need} data-new={need}>
            <span>{names.pieces(need, pieces)}</span>{' '}
            <span>{t('buy_about', { price: names.money(pieces * (each.get(need) ?? 0)) })}</span>
          </li>
        ))}
      </ul>
      <p class="quiet">{t('buy_new_how')}</p>
    </section>
  );
}
