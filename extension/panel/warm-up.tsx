/**
 * What a browser does but once keeps the first ad waiting: it compiles the rules, makes formatters, and learns what is often run. While nobody asks,
 * that is done on invented ads, step by step, each when the page has nothing else to do.
 */
import { render } from 'preact';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { speaker } from '../../src/words/say.ts';
import { Speech } from '../components/speech.ts';
import { Answer } from './answer.tsx';
import type { Host } from './host.ts';
import type { Judge } from './panel.tsx';

const ENGLISH = [
  'Olympic plates and a 7 ft bar\n4 x 45 lb, light rust\n(2) 25s\npair of 10 lb plates\nPower rack and a flat bench, torn pad. $350 obo for everything, was $400.',
  'Four 2.5 kg plates at $1 a pound, or 30 for both pairs. Not bent, one is cracked. The rack is sold. Firm, cash only.',
];
const GERMAN = [
  'Hantelscheiben und eine Langhantel, 2,20 m\n4 x 20 kg, leichter Rost\n2x 10 kg\nPaar 5 kg Scheiben\nRack und Flachbank, Polster gerissen. 350 € VB für alles, Neupreis 600 €.',
  'Vier 2,5 kg Scheiben, 2 € pro kg oder beide Paare für 30. Nicht verbogen, eine hat einen Riss. Das Rack ist verkauft. Festpreis, bar.',
];

const nothing = () => undefined;

/**
 * What is in sight first of one answer, drawn where nobody sees it, and then a second ad: much of what has run once is compiled only when it runs
 * again. The rest of an answer keeps nobody waiting, and is long enough to be in the way of an ad that comes just then.
 */
function* steps({ strings, locale }: Host, judge: Judge): Generator<void> {
  const [first = '', second = ''] = /^de\b/.test(locale) ? GERMAN : ENGLISH;
  const listing = listingFromText(first);
  const evaluation = judge(listing, DEFAULT_SETTINGS, []);
  yield;
  const unseen = document.createElement('div');
  render(
    <Speech.Provider value={speaker(strings, locale)}>
      <Answer
        evaluation={evaluation}
        listing={listing}
        settings={DEFAULT_SETTINGS}
        turnsOf={null}
        keeping={null}
        whole={false}
        typed={null}
        unit="mi"
        onDistance={nothing}
        onUnit={nothing}
        onSettings={nothing}
      />
    </Speech.Provider>,
    unseen,
  );
  render(null, unseen);
  yield;
  judge(listingFromText(second), DEFAULT_SETTINGS, []);
}

/** Ends as soon as `isAsked`: from then on the buyer's own ads do the same. */
export function warmUp(host: Host, judge: Judge, isAsked: () => boolean): void {
  const left = steps(host, judge);
  const go = () => {
    if (!isAsked() && !left.next().done) requestIdleCallback(go);
  };
  requestIdleCallback(go);
}
