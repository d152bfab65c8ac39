/** What the plates of one find would add to the loads of the kit, as it is corrected. */
import { useEffect, useState } from 'preact/hooks';
import { type Addition, additionsTo } from '../../../src/kit/additions.ts';
import { offersOf } from '../../../src/kit/fills.ts';
import { loadsOf } from '../../../src/kit/loads.ts';
import { plateUnit } from '../../../src/kit/need-list.ts';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import type { Owned } from '../../store/index.ts';
import { barsOf, loadedBar, platesOf } from '../kit/loads/on-the-bar.ts';
import { gapWords } from '../kit/loads/total-words.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

/** So long the answer must have stood, in ms: nothing is reckoned between two key strokes. */
const STOOD = 150;

/** Shown where a kit was set up and the ad has plates that can be used. */
export function Adds({ evaluation }: { readonly evaluation: Evaluation }) {
  const words = useWords();
  const { t } = words;
  const store = useStore();
  const settings = useLive<Settings>(store.settings.watch, [store]);
  const owned = useLive<readonly Owned[]>(store.kit.owned.watch, [store]);
  const [adds, setAdds] = useState<Addition | 'nothing' | null>(null);
  const figures = settings?.ok ? settings.value.kit : null;
  useEffect(() => {
    const waiting = setTimeout(() => {
      const plates = platesOf(offersOf(evaluation));
      if (!figures || !owned?.ok || plates.length === 0) return setAdds(null);
      const own = platesOf(owned.value);
      const bar = loadedBar(barsOf(owned.value)[0] ?? null, figures, plateUnit(figures));
      setAdds(additionsTo(own, loadsOf(own, bar), bar, figures.best)({ id: '', plates }) ?? 'nothing');
    }, STOOD);
    return () => clearTimeout(waiting);
  }, [evaluation, figures, owned]);
  if (adds === null || !figures) return null;
  if (adds === 'nothing') return <p data-adds="0">{t('kit_find_adds_none')}</p>;
  return (
    <p data-adds={adds.added}>
      {t('kit_find_adds', { added: t('kit_adds', { n: adds.added }) })} {gapWords(words, adds.gap, plateUnit(figures))}
    </p>
  );
}
