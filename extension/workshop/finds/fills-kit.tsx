/** What the kit lacks, for the list that shows only what fills it. */
import { useMemo } from 'preact/hooks';
import { fillers } from '../../../src/kit/both-sets.ts';
import type { Thing } from '../../../src/kit/same-thing.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import type { Need, Owned } from '../../store/index.ts';
import { openOf } from '../../store/kit-need.ts';
import { addressOf } from '../route.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

/** What an open need takes; null where no kit was set up, or until that is known. */
export function useLacking(): readonly Thing[] | null {
  const store = useStore();
  const settings = useLive<Settings>(store.settings.watch, [store]);
  const needs = useLive<readonly Need[]>(store.kit.needs.watch, [store]);
  const owned = useLive<readonly Owned[]>(store.kit.owned.watch, [store]);
  return useMemo(() => {
    const kit = settings?.ok ? settings.value.kit : null;
    return kit && needs?.ok && owned?.ok ? fillers(openOf(kit, needs.value, owned.value), kit) : null;
  }, [settings, needs, owned]);
}

/** Why the list may be empty: no kit, or nothing lacking. */
export function FillsKit({ lacking }: { readonly lacking: readonly Thing[] | null }) {
  const { t } = useWords();
  if (lacking !== null && lacking.length > 0) return null;
  return (
    <p data-no-needs>
      {t(lacking === null ? 'kit_none_yet' : 'kit_complete')} <a href={addressOf('kit')}>{t('workshop_kit')}</a>
    </p>
  );
}
