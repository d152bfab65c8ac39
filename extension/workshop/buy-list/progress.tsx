/** How far the working out is, in words, and the way to stop it or start it anew. */
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';
import type { BuyListState } from './use-buy-list.ts';

export function Progress({ stage, stop, again }: Pick<BuyListState, 'stage' | 'stop' | 'again'>) {
  const { t } = useWords();
  const { at } = stage;
  const rests = at === 'done' || at === 'stopped' || at === 'failed';
  return (
    <div class="buy-progress no-print" data-stage={at}>
      <p class="quiet">{'seen' in stage ? t(`buy_stage_${at}`, { seen: stage.seen, all: stage.all }) : t(`buy_stage_${at}`)}</p>
      {/* Not how many are through, which changes all the time. */}
      <Announcer text={'seen' in stage ? '' : t(`buy_stage_${at}`)} />
      {!rests && (
        <button type="button" data-stop onClick={stop}>
          {t('buy_stop')}
        </button>
      )}
      {(at === 'stopped' || at === 'failed') && (
        <button type="button" data-again onClick={again}>
          {t('buy_again')}
        </button>
      )}
    </div>
  );
}
