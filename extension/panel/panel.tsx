/** The panel: what was taken from the page, what the buyer said about it, and the answer to both. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { composeText } from '../../src/listing/compose.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Correction } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Turn } from '../../src/sensitivity.ts';
import { speaker } from '../../src/words/say.ts';
import { Announcer } from '../components/announcer.tsx';
import { inPage, type Marker, Marking } from '../components/evidence.ts';
import { Speech, wordsOf } from '../components/speech.ts';
import { applyTheme } from '../components/theme.ts';
import { useKeptFocus } from '../components/use-kept-focus.ts';
import { usePainted } from '../components/use-painted.ts';
import { useOpenForPrint } from '../components/use-print.ts';
import { Another } from './another.tsx';
import { Answer } from './answer.tsx';
import { Editing } from './edits.ts';
import type { Capture, Host } from './host.ts';
import { NotKept } from './not-kept.tsx';
import { Notice, Unread } from './notice.tsx';
import { Reading } from './reading.tsx';
import { Back } from './sweep/back.tsx';
import { LaterSweepList } from './sweep/later-list.ts';
import { listSaid } from './sweep/list-words.ts';
import { toKeep } from './sweep/to-keep.ts';
import { useList } from './sweep/use-list.ts';
import { useSweep } from './sweep/use-sweep.ts';
import { useEditing } from './use-editing.ts';
import { useSettings } from './use-settings.ts';

/** The core's one door. */
export type Judge = (listing: PageListing, settings: Settings, corrections: readonly Correction[]) => Evaluation;

/** The core's other door: what would turn an answer that was made with these settings. */
export type Turning = (evaluation: Evaluation, settings: Settings) => readonly Turn[] | null;

export interface PanelProps {
  readonly host: Host;
  /** Null until the core has been loaded. */
  readonly judge: Judge | null;
  readonly turnsOf?: Turning | null;
}

export type PanelState = 'list' | 'empty' | 'opening' | 'picking' | 'refused' | 'failed' | 'nothing' | 'answer';

export function Panel({ host, judge, turnsOf = null }: PanelProps) {
  const say = useMemo(() => speaker(host.strings, host.locale), [host]);
  const words = wordsOf(say);
  const { t } = words;
  const [capture, setCapture] = useState<Capture | null>(null);
  useEffect(() => host.watchCapture(setCapture), [host]);
  useOpenForPrint();
  useKeptFocus();
  const { settings, keep, failed } = useSettings(host);
  useEffect(() => applyTheme(settings.theme), [settings.theme]);
  const { edits, evaluation, settings: judgedBy, distance, setDistance, notKept } = useEditing(capture, settings, host, judge);
  const { swept, rows, shown } = useSweep(host.sweep, judge, settings, words, capture, evaluation);
  const list = useList(host.sweep, swept, capture);
  const shift = useMemo(() => (capture?.state === 'ready' ? composeText(capture.listing).shift : 0), [capture]);
  const mark: Marker = useMemo(
    () => (spans) => {
      const here = spans ? inPage(spans, shift) : [];
      // An ad of the list was never the page's own capture: its words are marked by the sweep, or not at all.
      if (capture?.state === 'ready' && capture.listing.origin === 'sweep') {
        if (swept && shown) host.sweep.mark(swept, shown.id, here);
      } else if (here.length > 0) host.highlight(here);
      else host.clearHighlight();
    },
    [host, shift, swept?.run, shown, capture],
  );
  const state = swept && list.isShown ? 'list' : stateOf(capture, evaluation, judge !== null);
  const whole = usePainted(state === 'answer' ? edits.session.key : null);
  const isAd = state !== 'list' && capture?.state === 'ready';
  const unit = settings.distance?.unit ?? (settings.unit === 'kg' ? 'km' : 'mi');
  const keepMany = useMemo(() => {
    const kept = host.sweep.keepMany;
    return kept && judge && (async (ads: readonly PageListing[]) => kept(await toKeep(ads, host.loadEdits, judge, settings)));
  }, [host, judge, settings]);
  const announcement = (): string => {
    if (state === 'list') return swept ? listSaid(words, swept) : '';
    return state === 'answer' && evaluation ? say(evaluation.call.says) : t(`panel_${state}`);
  };
  return (
    <Speech.Provider value={say}>
      <Marking.Provider value={mark}>
        <Editing.Provider value={edits}>
          <main class="panel" data-state={whole ? state : 'answering'}>
            <NotKept settings={failed} edits={notKept} />
            {state === 'list' && swept && (
              <LaterSweepList key={swept.run} host={host.sweep} swept={swept} rows={rows} onKeep={keepMany} {...list} />
            )}
            {state !== 'list' && swept && (
              <Back key={capture?.at} ads={swept.ads.length} takesFocus={list.left.opened !== null} onBack={list.onBack} />
            )}
            {isAd && <AdTitle capture={capture} words={t('panel_pasted')} />}
            {isAd && capture.cut && <p class="complaint">{t('panel_cut')}</p>}
            {state === 'empty' && <Notice title={t('panel_empty')} text={t('panel_empty_how')} />}
            {state === 'opening' && <Notice title={t('panel_opening')} />}
            {state === 'picking' && <Notice title={t('panel_picking')} text={t('panel_picking_how')} />}
            {(state === 'refused' || state === 'failed') &&
              capture &&
              capture.state !== 'ready' &&
              capture.state !== 'picking' && <Unread {...capture} />}
            {state === 'failed' && capture?.state === 'ready' && <Unread state="failed" reason="unexpected" />}
            {state === 'nothing' && <Notice title={t('panel_nothing')} text={t('panel_nothing_how')} />}
            {state === 'nothing' && evaluation && (
              <Reading reading={evaluation.reading} currency={evaluation.worth.currency} unit={settings.unit} />
            )}
            {state === 'answer' && evaluation && capture?.state === 'ready' && (
              <Answer
                key={edits.session.key}
                evaluation={evaluation}
                listing={capture.listing}
                settings={judgedBy}
                turnsOf={turnsOf}
                whole={whole}
                keeping={host.keeping}
                typed={distance}
                unit={unit}
                onDistance={(typed) => {
                  setDistance(typed);
                  if (typed) keep({ ...settings, distance: typed });
                }}
                onUnit={(chosen) => keep({ ...settings, distance: { value: settings.distance?.value ?? 0, unit: chosen } })}
                onSettings={(changed) => keep({ ...settings, ...changed })}
              />
            )}
            <Another
              heading={t(state === 'answer' ? 'panel_another' : 'panel_take')}
              canPick={state !== 'refused'}
              onPick={host.startPick}
              onSweep={host.sweep.start}
              onPaste={host.paste}
            />
          </main>
          <Announcer text={announcement()} />
        </Editing.Provider>
      </Marking.Provider>
    </Speech.Provider>
  );
}

function stateOf(capture: Capture | null, evaluation: Evaluation | null, canJudge: boolean): PanelState {
  if (!capture) return 'empty';
  if (capture.state !== 'ready') return capture.state;
  if (!canJudge) return 'opening';
  if (!evaluation) return 'failed';
  const { reading } = evaluation;
  return reading.aboutThisTrade || reading.items.length > 0 ? 'answer' : 'nothing';
}

function AdTitle({ capture, words }: { readonly capture: Capture & { readonly state: 'ready' }; readonly words: string }) {
  const { origin, title, text } = capture.listing;
  const name = title || text.trim().split('\n', 1)[0] || '';
  return (
    <p class="ad-title" title={name}>
      {origin === 'paste' && <span>{words} </span>}
      <bdi>{name}</bdi>
    </p>
  );
}
