/** Loads: which totals the plates that are owned make on the bar, the widest gap, how to load a wanted one, and what an ad would add. */
import { useMemo, useState } from 'preact/hooks';
import { exactWeight } from '../../../../src/kit/exact-weight.ts';
import { loadsOf, widestGap } from '../../../../src/kit/loads.ts';
import { plateUnit } from '../../../../src/kit/need-list.ts';
import { oddPlates } from '../../../../src/kit/odd-plates.ts';
import { useWords } from '../../../components/speech.ts';
import { useOpenForPrint } from '../../../components/use-print.ts';
import type { WorkshopHost } from '../../host.ts';
import { addressOf } from '../../route.ts';
import { firstFigures } from '../save.ts';
import type { OpenKit } from '../use-kit.ts';
import { Additions } from './additions.tsx';
import { AllLoads } from './all-loads.tsx';
import { BarFields } from './bar-fields.tsx';
import { barsOf, loadedBar, platesOf } from './on-the-bar.ts';
import { Target } from './target.tsx';
import { gapWords } from './total-words.ts';

export interface LoadsProps {
  readonly host: WorkshopHost;
  readonly kit: OpenKit;
}

export function Loads({ host, kit }: LoadsProps) {
  const words = useWords();
  const { t } = words;
  const { owned, settings } = kit;
  const figures = kit.figures ?? firstFigures(settings);
  const unit = plateUnit(figures);
  useOpenForPrint();
  const [chosen, setChosen] = useState<string | null>(null);
  const bars = barsOf(owned);
  const own = bars.find(({ id }) => id === chosen) ?? bars[0] ?? null;
  const bar = useMemo(() => loadedBar(own, figures, unit), [own, figures, unit]);
  const plates = useMemo(() => platesOf(owned), [owned]);
  const loads = useMemo(() => loadsOf(plates, bar), [plates, bar]);
  const gap = widestGap(loads, figures.best);
  const odd = oddPlates(plates);
  const top = exactWeight(figures.best);
  const within = loads.filter(({ total }) => total <= top).length;
  const gapSaid = gapWords(words, gap, unit);
  const best = t('panel_one_weight', { weight: { weight: figures.best } });
  return (
    <>
      <p class="kit-headline" data-headline>
        {plates.length === 0 ? t('kit_no_plates') : t('kit_loads_n', { n: within, best })}
      </p>
      {plates.length === 0 ? (
        <p>
          {t('kit_no_plates_how')} <a href={addressOf('kit')}>{t('kit_part_overview')}</a>
        </p>
      ) : (
        gapSaid && <p data-gap>{gapSaid}</p>
      )}
      {odd.length > 0 && (
        <p data-odd>
          {t('kit_odd', { n: odd.length, what: odd.map((weight) => t('panel_one_weight', { weight: { weight } })).join(', ') })}
        </p>
      )}
      <Target loads={loads} unit={unit} best={figures.best} />
      <BarFields kit={kit} figures={figures} bars={bars} own={own} unit={unit} bar={bar} onBar={setChosen} />
      {plates.length > 0 && <AllLoads loads={loads} best={figures.best} unit={unit} />}
      <Additions host={host} plates={plates} loads={loads} bar={bar} best={figures.best} unit={unit} />
    </>
  );
}
