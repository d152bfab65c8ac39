/** Which pickup: the finds that the buyer is going for. */
import { useMemo } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { type FindPage, failureMessage, type ListQuery } from '../../store/index.ts';
import { addressOf } from '../route.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

const GOING: ListQuery = { order: 'changed', descending: true, statuses: ['going'], from: 0, count: 100 };

export function Choose() {
  const { say, t } = useWords();
  const store = useStore();
  const page = useLive<FindPage>((seen) => store.finds.watchList(GOING, seen), [store]);
  const rows = useMemo(() => (page?.ok ? page.value.rows : []), [page]);
  if (page === null) return <p class="quiet">{t('workshop_opening')}</p>;
  if (!page.ok) return <p role="alert">{say(failureMessage(page.code))}</p>;
  if (rows.length === 0) {
    return (
      <>
        <p>{t('pickup_none')}</p>
        <p>
          <a href={addressOf('finds')}>{t('finds_back')}</a>
        </p>
      </>
    );
  }
  return (
    <>
      <p>{t('pickup_choose')}</p>
      <ul class="pickup-choices">
        {rows.map(({ id, title, summary, prices }) => {
          const asked = prices.at(-1);
          return (
            <li key={id}>
              <a href={addressOf('pickup', id)} data-pickup={id}>
                <bdi>{title || t('finds_untitled')}</bdi>
              </a>
              <span class="quiet">
                {say.list(
                  [summary.place ?? '', asked ? say.money({ minor: asked.minor, currency: asked.currency }) : ''].filter(
                    (part) => part !== '',
                  ),
                )}
              </span>
            </li>
          );
        })}
      </ul>
    </>
  );
}
