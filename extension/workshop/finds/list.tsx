/** The list of finds: what is looked for, the rows, and what can be done with those that are chosen. */
import { useEffect, useState } from 'preact/hooks';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { Announcer } from '../../components/announcer.tsx';
import { useWords } from '../../components/speech.ts';
import { type FindPage, failureMessage } from '../../store/index.ts';
import { Example } from '../example/index.tsx';
import type { WorkshopHost } from '../host.ts';
import { useCompleteOffers } from '../kit/complete-offers.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';
import { Bulk } from './bulk.tsx';
import { FillsKit, useLacking } from './fills-kit.tsx';
import { isFiltered, queryOf, type Wanted } from './query.ts';
import { RemovedLink } from './removed.tsx';
import { Rows } from './rows.tsx';
import { Toolbar, type ToolbarProps } from './toolbar.tsx';
import type { Stretch } from './window.ts';

export interface FindListProps extends ToolbarProps {
  readonly host: WorkshopHost;
}

interface Drawn {
  readonly page: FindPage;
  readonly from: number;
}

/** Enough for any window until its height is known. */
const FIRST: Stretch = { from: 0, count: 30 };
const NONE: ReadonlySet<string> = new Set();

export function FindList({ host, wanted, onWanted }: FindListProps) {
  const { say, t } = useWords();
  const store = useStore();
  const [stretch, setStretch] = useState<Stretch>(FIRST);
  const [chosen, setChosen] = useState(NONE);
  const { from, count: drawn } = stretch;
  const lacking = useLacking();
  const judging = useCompleteOffers(host, wanted.fillsKit);
  const query = queryOf(wanted, lacking ?? [], from, drawn);
  const outcome = useLive<Drawn>(
    // The page says where it begins: until the next one is there, the rows of the last are drawn where they belong.
    (seen) => store.finds.watchList(query, (page) => seen(page.ok ? { ok: true, value: { page: page.value, from } } : page)),
    [store, JSON.stringify(query)],
  );
  const settings = useLive<Settings>((seen) => store.settings.watch(seen), [store]);
  const choose = (id: string, on: boolean) => {
    const next = new Set(chosen);
    if (on) next.add(id);
    else next.delete(id);
    setChosen(next);
  };
  const chooseAll = async () => {
    const all = await store.finds.matching(query);
    if (all.ok) setChosen(new Set(all.value));
  };
  useEffect(() => {
    if (chosen.size === 0) return;
    let here = true;
    // What is no longer listed is no longer chosen: nobody changes what they do not see.
    store.finds.matching(query).then((all) => {
      if (!here || !all.ok) return;
      const listed = new Set(all.value);
      setChosen((now) => ([...now].every((id) => listed.has(id)) ? now : new Set([...now].filter((id) => listed.has(id)))));
    });
    return () => {
      here = false;
    };
  }, [outcome]);
  const change = (next: Wanted) => {
    setStretch(FIRST);
    onWanted(next);
  };
  const total = outcome?.ok ? outcome.value.page.total : 0;
  const count = [outcome?.ok && t('finds_count', { n: total }), judging && t('kit_judging')].filter(Boolean).join(' ');
  return (
    <>
      <Toolbar wanted={wanted} onWanted={change} />
      {wanted.fillsKit && <FillsKit lacking={lacking} />}
      <p class="quiet">{count}</p>
      <Announcer text={count} />
      {outcome && !outcome.ok && <p role="alert">{say(failureMessage(outcome.code))}</p>}
      {outcome?.ok && total === 0 && <p>{t(isFiltered(wanted) ? 'finds_none_such' : 'finds_none')}</p>}
      {outcome?.ok && total === 0 && !isFiltered(wanted) && <Example host={host} />}
      <Bulk host={host} chosen={chosen} total={total} onChooseAll={() => void chooseAll()} onDone={() => setChosen(NONE)} />
      {outcome?.ok && total > 0 && (
        <Rows
          key={JSON.stringify(wanted)}
          page={outcome.value.page}
          from={outcome.value.from}
          unit={settings?.ok ? settings.value.unit : DEFAULT_SETTINGS.unit}
          chosen={chosen}
          onChoose={choose}
          onStretch={(next) => (next.from === from && next.count === drawn) || setStretch(next)}
        />
      )}
      <RemovedLink />
    </>
  );
}
