/** The kept finds that would help the loads, the most useful first; reckoned when it is opened. */
import { useState } from 'preact/hooks';
import type { Load } from '../../../../src/kit/loads.ts';
import type { LoadedBar, OwnedPlates } from '../../../../src/kit/plates.ts';
import type { MassUnit, Weight } from '../../../../src/units/mass.ts';
import { Announcer } from '../../../components/announcer.tsx';
import { useWords } from '../../../components/speech.ts';
import type { WorkshopHost } from '../../host.ts';
import { addressOf } from '../../route.ts';
import { useCompleteOffers } from '../complete-offers.ts';
import { gapWords } from './total-words.ts';
import { useAdditions } from './use-additions.ts';

export interface AdditionsProps {
  readonly host: WorkshopHost;
  readonly plates: readonly OwnedPlates[];
  readonly loads: readonly Load[];
  readonly bar: LoadedBar;
  readonly best: Weight;
  readonly unit: MassUnit;
}

/** Shown at first, and how many more each time. */
const FEW = 5;
const MORE = 50;

export function Additions({ host, plates, loads, bar, best, unit }: AdditionsProps) {
  const words = useWords();
  const { t } = words;
  const [open, setOpen] = useState(false);
  const judging = useCompleteOffers(host, open);
  const [most, setMost] = useState(FEW);
  const found = useAdditions(open && !judging, plates, loads, bar, best);
  const names = found.best?.slice(0, FEW).map(({ find }) => find.title || t('finds_untitled')) ?? [];
  const working = found.seen < found.all && !found.stopped;
  const left = (found.best?.length ?? 0) - most;
  const said = judging || working ? '' : names.length > 0 ? words.say.list(names) : t('kit_additions_none');
  return (
    <section aria-labelledby="kit-additions" class="no-print">
      <h2 id="kit-additions">{t('kit_additions')}</h2>
      {open ? (
        <div>
          <Announcer text={said} />
          {(judging || found.best === null) && <p class="quiet">{t('kit_judging')}</p>}
          {!judging && found.seen < found.all && (
            <p class="quiet" data-so-far>
              {t('kit_additions_so_far', { seen: found.seen, n: found.all })}{' '}
              {working && (
                <button type="button" data-stop onClick={found.stop}>
                  {t('buy_stop')}
                </button>
              )}
            </p>
          )}
          {found.best?.length === 0 && found.seen === found.all && <p>{t('kit_additions_none')}</p>}
          <ul class="kit-list">
            {found.best?.slice(0, most).map(({ find, added, gap }) => (
              <li key={find.id} class="kit-line" data-addition={find.id}>
                <a class="kit-name" href={addressOf('finds', find.id)}>
                  <bdi>{find.title || t('finds_untitled')}</bdi>
                </a>
                <span>{t('kit_adds', { n: added })}</span>
                <span>{gapWords(words, gap, unit) ?? t('kit_no_gap')}</span>
              </li>
            ))}
          </ul>
          {left > 0 && (
            <button type="button" data-more onClick={() => setMost(most + MORE)}>
              {t('kit_additions_more', { n: Math.min(left, MORE), left })}
            </button>
          )}
        </div>
      ) : (
        <button type="button" data-additions onClick={() => setOpen(true)}>
          {t('kit_additions_look')}
        </button>
      )}
    </section>
  );
}
