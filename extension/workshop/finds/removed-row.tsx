/** One find that was removed: bringing it back, and deleting it for good, which is asked about first. */
import { useState } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import type { Removal } from '../../store/index.ts';
import { Sure } from '../sure.tsx';

export interface RemovedRowProps {
  readonly removal: Removal;
  readonly name: string;
  readonly onUndo: () => void;
  readonly onPurge: () => void;
}

export function RemovedRow({ removal, name, onUndo, onPurge }: RemovedRowProps) {
  const { say, t } = useWords();
  const [asked, setAsked] = useState(false);
  return (
    <li data-removal={removal.find.id}>
      <bdi>{name}</bdi>{' '}
      <span class="quiet">
        {t('finds_removed_on', { day: say.day(removal.removedAt) })}
        {removal.goods > 0 && ` ${t('finds_removed_goods', { n: removal.goods })}`}
      </span>{' '}
      <button type="button" class="bare" data-undo onClick={onUndo}>
        {t('finds_undo')}
        <span class="unseen">: {name}</span>
      </button>{' '}
      <button type="button" class="bare" data-purge onClick={() => setAsked(true)}>
        {t('finds_purge')}
        <span class="unseen">: {name}</span>
      </button>
      {asked && (
        <Sure
          words={t('finds_purge_sure', { title: name })}
          yes={t('finds_purge')}
          onYes={() => {
            setAsked(false);
            onPurge();
          }}
          onNo={() => setAsked(false)}
        />
      )}
    </li>
  );
}
