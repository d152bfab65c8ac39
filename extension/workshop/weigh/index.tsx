/** Weigh and pair: weighed plates, from a find, from the kit or written down; and washers where the smallest plates are missing. */
import { useEffect, useState } from 'preact/hooks';
import { isKept } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import { useFind } from '../finds/use-find.ts';
import type { WorkshopHost } from '../host.ts';
import type { ScreenProps } from '../screens.ts';
import { useStore, WithStore } from '../use-store.tsx';
import { Bench } from './bench.tsx';
import { ownedAsText } from './owned-weighings.ts';
import { Washers } from './washers.tsx';

export default function Weigh({ host, rest, only = null }: ScreenProps) {
  return (
    <WithStore host={host}>
      <Opened host={host} find={rest} only={only} />
    </WithStore>
  );
}

interface OpenedProps {
  readonly host: WorkshopHost;
  readonly find: string;
  /** The goods of the find that are meant; null for all of it. */
  readonly only: readonly string[] | null;
}

function Opened({ host, find, only }: OpenedProps) {
  const { t } = useWords();
  const store = useStore();
  const [settings, setSettings] = useState<Settings | null>(null);
  useEffect(() => {
    let here = true;
    store.settings.load(host.now()).then((stored) => {
      if (here) setSettings(stored.ok ? stored.value.settings : DEFAULT_SETTINGS);
    });
    return () => {
      here = false;
    };
  }, [store]);
  if (settings === null) return <p class="quiet">{t('workshop_opening')}</p>;
  return (
    <div class="weigh">
      {find === '' ? (
        <Bench host={host} settings={settings} first="" draft="" />
      ) : (
        <OfFind key={`${find} ${only}`} host={host} settings={settings} find={find} only={only} />
      )}
      <Washers settings={settings} />
    </div>
  );
}

/** The plates of a find as they were weighed at the pickup. */
function OfFind({ host, settings, find, only }: OpenedProps & { readonly settings: Settings }) {
  const { say, t } = useWords();
  const { open, failed } = useFind(host, find);
  if (failed) return <p role="alert">{say(failed)}</p>;
  if (!open) return <p class="quiet">{t('workshop_opening')}</p>;
  const meant = open.evaluation.reading.items.filter((item) => isKept(item) && (only?.includes(item.id) ?? true));
  const text = ownedAsText(
    meant.map(({ kind, unitWeight, weighed }) => ({
      kind: kind.value,
      weight: unitWeight?.value ?? null,
      weighed: weighed?.value ?? [],
    })),
    say,
  );
  return (
    <>
      <p>{t(text === '' ? 'weigh_find_unweighed' : 'weigh_of_find', { title: open.find.title || t('finds_untitled') })}</p>
      <Bench host={host} settings={settings} first={text} draft={`${find} ${text}`} atPairs />
    </>
  );
}
