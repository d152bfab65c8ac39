/** What is owned: from ads that were bought, and what the buyer had before. */
import { useState } from 'preact/hooks';
import { plateUnit } from '../../../src/kit/need-list.ts';
import { useWords } from '../../components/speech.ts';
import type { Owned } from '../../store/index.ts';
import { foundIn } from '../bought.ts';
import { addressOf } from '../route.ts';
import { useUndo } from '../undo.tsx';
import { OwnedForm } from './owned-form.tsx';
import { freshOwned } from './save.ts';
import { countedName } from './thing-words.ts';
import type { OpenKit } from './use-kit.ts';

type Entry = Omit<Owned, 'changedAt'>;

export function OwnedList({ kit }: { readonly kit: OpenKit }) {
  const words = useWords();
  const { t } = words;
  const { owned, write, settings, figures } = kit;
  const [edited, setEdited] = useState<string | null>(null);
  const [fresh, setFresh] = useState(freshOwned);
  const undo = useUndo();
  const put = (entry: Entry) => write((store, now) => store.kit.owned.put(entry, now));
  const remove = async ({ changedAt: _, ...entry }: Owned) => {
    if (await write((store, now) => store.kit.owned.remove(entry.id, now)))
      undo.removed(countedName(words, entry), () => void put(entry));
  };
  const unit = figures ? plateUnit(figures) : settings.unit;
  return (
    <section aria-labelledby="kit-owned">
      <h2 id="kit-owned">{t('kit_owned')}</h2>
      {owned.length === 0 && <p>{t('kit_owns_nothing')}</p>}
      <ul class="kit-list">
        {owned.map((one) => (
          <li key={one.id} class="kit-line" data-owned={one.id}>
            <span class="kit-name">
              {countedName(words, one)}
              <Origin kit={kit} one={one} />
            </span>
            <button
              type="button"
              class="bare"
              data-edit={one.id}
              aria-expanded={edited === one.id}
              onClick={() => setEdited(edited === one.id ? null : one.id)}
            >
              {t('kit_edit')}
              <span class="unseen">: {countedName(words, one)}</span>
            </button>
            <button type="button" class="bare" data-remove={one.id} onClick={() => void remove(one)}>
              {t('kit_remove')}
              <span class="unseen">: {countedName(words, one)}</span>
            </button>
            {edited === one.id && (
              <OwnedForm
                path="edit"
                first={one}
                unit={unit}
                currency={settings.currency}
                withPaid={foundIn(kit.bought, one) === null}
                action={t('kit_save')}
                onDone={async (entry) => {
                  if (await put(entry)) setEdited(null);
                }}
              />
            )}
          </li>
        ))}
      </ul>
      {undo.line}
      <details open={owned.length === 0}>
        <summary>{t('kit_add_owned')}</summary>
        <OwnedForm
          key={fresh.id}
          path="new"
          first={fresh}
          unit={unit}
          currency={settings.currency}
          withPaid
          action={t('kit_add')}
          onDone={async (entry) => {
            if (await put(entry)) setFresh({ ...freshOwned(), kind: entry.kind });
          }}
        />
      </details>
    </section>
  );
}

/** What was paid for it, or the ad that it came with. */
function Origin({ kit, one }: { readonly kit: OpenKit; readonly one: Owned }) {
  const { say, t } = useWords();
  const find = foundIn(kit.bought, one);
  if (find) {
    const title = find.title || t('finds_untitled');
    return (
      <span class="line-notes">
        <a href={addressOf('finds', find.id)}>{title}</a>
        {find.paid && `: ${t('kit_paid_in_all', { paid: say.money(find.paid) })}`}
      </span>
    );
  }
  const notes = [one.paid ? t('kit_paid', { paid: say.money(one.paid) }) : null, one.note].filter((part) => part);
  return notes.length > 0 ? <span class="line-notes">{notes.join('. ')}</span> : null;
}
