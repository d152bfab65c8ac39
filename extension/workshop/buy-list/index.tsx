/** Buy list: which ads to buy, and what new, so that the kit is complete for the least money. */
import { useMemo } from 'preact/hooks';
import { linesOf } from '../../../src/kit/buy-list/lines.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { type Find, type FindPage, failureMessage, type ListQuery } from '../../store/index.ts';
import { useKit } from '../kit/use-kit.ts';
import { addressOf } from '../route.ts';
import type { ScreenProps } from '../screens.ts';
import { useLive } from '../use-live.ts';
import { useStore, WithStore } from '../use-store.tsx';
import { Answer } from './answer.tsx';
import { useChoices } from './choices.ts';
import { Complete } from './complete.tsx';
import { Drive } from './drive.tsx';
import { Fresh } from './fresh.tsx';
import { LeftOut } from './left-out.tsx';
import { namesOf } from './names.ts';
import { Others } from './others.tsx';
import { Progress } from './progress.tsx';
import { Trips } from './trips.tsx';
import { type Stage, useBuyList } from './use-buy-list.ts';
import { useKitNeeds } from './use-kit-needs.ts';
import { leastOf } from './work-out.ts';

const ALL: ListQuery = { order: 'kept', descending: false, from: 0, count: 100_000 };
const isPast = ({ status }: Find): boolean => status === 'bought' || status === 'gone';

const RESTING: readonly Stage['at'][] = ['done', 'stopped', 'failed'];
const pendingAt = (at: Stage['at']) => (at === 'rest' ? at : RESTING.includes(at) ? null : 'nearest');

export default function BuyListScreen({ host }: ScreenProps) {
  return (
    <WithStore host={host}>
      <Opened host={host} />
    </WithStore>
  );
}

function Opened({ host }: Pick<ScreenProps, 'host'>) {
  const words = useWords();
  const { say, t } = words;
  const store = useStore();
  const kit = useKit(host);
  const needs = useKitNeeds(kit);
  const page = useLive<FindPage>((seen) => store.finds.watchList(ALL, seen), [store]);
  const finds = useMemo(() => (page?.ok ? page.value.rows : []), [page]);
  const open = useMemo(() => finds.filter((find) => !isPast(find)), [finds]);
  const choices = useChoices(store, host, open);
  const complete = needs !== null && needs.status.open.length === 0;
  const ready = kit !== null && needs !== null && page?.ok === true && !complete;
  const { stage, worked, stop, again, askCut, asking } = useBuyList(
    host,
    ready ? { finds: open, kit: needs, settings: kit.settings, choices } : null,
  );
  if (page && !page.ok) return <p role="alert">{say(failureMessage(page.code))}</p>;
  if (kit === null || needs === null || page === null) return <p class="quiet">{t('workshop_opening')}</p>;
  if (complete) return <Complete kit={needs} currency={kit.settings.currency} />;
  const names = worked && namesOf(words, worked, finds);
  const found = worked === null || worked.list.kind === 'impossible' ? null : worked.list;
  const lines = worked && found && linesOf(worked.made.market, found.kit, worked.considered.places);
  return (
    <div class="buy" aria-busy={stage.at === 'judging' || stage.at === 'solving'}>
      {!needs.own && (
        <p data-usual>
          {t('buy_usual_needs')} <a href={addressOf('kit')}>{t('workshop_kit')}</a>
        </p>
      )}
      {open.length === 0 && (
        <p data-no-finds>
          {t('buy_no_finds')} <a href={addressOf('finds')}>{t('workshop_finds')}</a>
        </p>
      )}
      {choices.failed && <p role="alert">{say(failureMessage(choices.failed))}</p>}
      {worked?.list.kind === 'impossible' && (
        <p role="alert" data-list="impossible">
          {t('buy_impossible')}
        </p>
      )}
      {worked && names && found && lines && <Answer worked={worked} found={found} totals={lines.totals} names={names} />}
      <Progress stage={stage} stop={stop} again={again} />
      {worked && names && (
        <>
          {found && lines && (
            <>
              <Trips worked={worked} trips={lines.trips} names={names} choices={choices} />
              <Fresh fresh={found.kit.fresh} worked={worked} names={names} />
              <Drive places={lines.trips.map(({ place }) => place)} settings={worked.settings} names={names} />
              <Others best={found.kit} others={worked.others} least={leastOf(found)} names={names} />
            </>
          )}
          <LeftOut
            worked={worked}
            past={finds.filter(isPast)}
            chosen={found?.kit.chosen ?? []}
            names={names}
            choices={choices}
            pending={pendingAt(stage.at)}
            askCut={askCut}
            asking={asking}
          />
        </>
      )}
      <div class="buy-foot no-print">
        <ChoiceField
          path="paying"
          label={t('buy_paying')}
          labelShown
          value={choices.paying}
          options={(['asked', 'walk-away'] as const).map((value) => ({
            value,
            words: t(value === 'asked' ? 'buy_paying_asked' : 'buy_paying_walk_away'),
          }))}
          onChoice={(value) => choices.pay(value === 'asked' ? 'asked' : 'walk-away')}
        />
        <button type="button" onClick={() => print()}>
          {t('buy_print')}
        </button>
      </div>
    </div>
  );
}
