/** What the buyer takes of an ad whose goods have prices of their own: all of it, or a part. Sheet and "I bought it" go by it. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { onlyPart, partsOf } from '../../src/kit/part.ts';
import type { Item } from '../../src/listing/reading.ts';
import { useWords } from '../components/speech.ts';
import { itemName } from '../panel/item-words.ts';
import type { OpenFind } from './finds/use-find.ts';
import type { WorkshopHost } from './host.ts';
import { useComplaint, useStore } from './use-store.tsx';

export interface TakingProps {
  /** The find as if it offered nothing but what is taken; what is measured goes into the whole one. */
  readonly open: OpenFind;
  /** What can be had by itself, and what of it is taken: none for all of the ad. */
  readonly parts: readonly Item[];
  readonly taken: readonly Item[];
  readonly take: (ids: readonly string[]) => void;
  readonly complaint: string | null;
}

/** `only` comes with the address and holds from then on, as if the buyer had said it here. */
export function useTaking(host: WorkshopHost, whole: OpenFind, only: readonly string[] | null = null): TakingProps {
  const { finds } = useStore();
  const { complaint, checked } = useComplaint();
  const { core, evaluation, find, said, session, settings } = whole;
  const [chosen, setChosen] = useState<readonly string[] | null>(only);
  const ids = chosen ?? find.taking ?? [];
  const parts = partsOf(evaluation.reading, settings.currency);
  const taken = parts.filter(({ id }) => ids.includes(id));
  const open = useMemo(() => {
    const left = onlyPart(evaluation.reading, ids, settings.currency);
    if (left.length === 0) return null;
    const all = [...said, ...left];
    return { said: all, evaluation: core.evaluate(session.listing, settings, all) };
  }, [evaluation, ids.join()]);
  const take = async (next: readonly string[]) => {
    setChosen(next);
    checked(await finds.update(find.id, { taking: [...next] }, host.now()));
  };
  useEffect(() => {
    if (only === null) return;
    // Said once: loaded again, the page goes by what was said since.
    history.replaceState(null, '', location.hash.replace(/\?only=.*$/, ''));
    if (only.join() !== (find.taking ?? []).join()) void take(only);
  }, []);
  return { open: open === null ? whole : { ...whole, ...open }, parts, taken, take: (next) => void take(next), complaint };
}

export function Taking({ open, parts, taken, take, complaint }: TakingProps) {
  const words = useWords();
  const { say, t } = words;
  if (parts.length === 0 || open.find.status === 'bought') return null;
  const ids = taken.map(({ id }) => id);
  return (
    <fieldset class="ticks taking" data-taking={ids.join(' ')}>
      <legend>{t('part_taking')}</legend>
      <label class="tick">
        <input type="checkbox" data-take="all" checked={ids.length === 0} onChange={() => take([])} /> {t('part_all')}
      </label>
      {parts.map((item) => (
        <label key={item.id} class="tick">
          <input
            type="checkbox"
            data-take={item.id}
            checked={ids.includes(item.id)}
            onChange={() => take(ids.includes(item.id) ? ids.filter((id) => id !== item.id) : [...ids, item.id])}
          />{' '}
          {t('part_only', { name: itemName(words, item), price: item.ownPrice ? say.money(item.ownPrice.value) : '' })}
        </label>
      ))}
      {complaint && <p role="alert">{complaint}</p>}
    </fieldset>
  );
}
