/** The sweep of the page beside the panel: its ads, judged as they come in, and their labels sent back to the page. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Words } from '../../components/speech.ts';
import { adKey } from '../ad-key.ts';
import type { Capture } from '../host.ts';
import type { Judge } from '../panel.tsx';
import { judgeAll } from './judge-all.ts';
import { type Row, rowOf, tagOf, unjudged } from './rows.ts';
import type { SweepHost, Swept, SweptAd } from './sweep-host.ts';

export interface Sweeping {
  readonly swept: Swept | null;
  /** In the order of the page. */
  readonly rows: readonly Row[];
  /** The ad of the list that the panel shows. */
  readonly shown: SweptAd | null;
}

/** `evaluation` is that of the ad which the panel shows, with what the buyer said about it. */
export function useSweep(
  host: SweepHost,
  judge: Judge | null,
  settings: Settings,
  words: Words,
  capture: Capture | null,
  evaluation: Evaluation | null,
): Sweeping {
  const [swept, setSwept] = useState<Swept | null>(null);
  const [rows, setRows] = useState<ReadonlyMap<string, Row>>(new Map());
  const begun = useRef<{ readonly of: string; readonly ids: Set<string> }>({ of: '', ids: new Set() });
  const pending = useRef(new Set<() => void>());
  useEffect(() => host.watch(setSwept), [host]);

  const put = (to: Swept, made: readonly Row[]): void => {
    setRows((all) => new Map([...all, ...made.map((row) => [row.id, row] as const)]));
    host.tag(
      to,
      made.map((row) => tagOf(words, row)),
    );
  };
  const callOff = (): void => {
    for (const off of pending.current) off();
    pending.current.clear();
  };
  useEffect(() => callOff, []);
  useEffect(() => {
    if (!swept || !judge) return;
    // A new run, or other settings: everything is judged anew.
    // A typed distance belongs to one ad and says nothing about the others.
    const forList = { ...settings, distance: null };
    const of = `${swept.tabId} ${swept.run} ${JSON.stringify(forList)}`;
    if (begun.current.of !== of) {
      const isOther = !begun.current.of.startsWith(`${swept.tabId} ${swept.run} `);
      callOff();
      begun.current = { of, ids: new Set() };
      if (isOther) setRows(new Map());
    }
    const fresh = swept.ads.filter(({ id }) => !begun.current.ids.has(id));
    if (fresh.length === 0) return;
    for (const { id } of fresh) begun.current.ids.add(id);
    const off = judgeAll(
      fresh,
      ({ listing }) => judge(listing, forList, []),
      (judged) =>
        put(
          swept,
          judged.map(([ad, found]) => (found ? rowOf(words, ad, found) : unjudged(words, ad))),
        ),
    );
    pending.current.add(off);
  }, [swept, settings, judge]);

  const listing = capture?.state === 'ready' && capture.listing.origin === 'sweep' ? capture.listing : null;
  const shown = useMemo(() => {
    if (!listing || !swept) return null;
    const key = adKey(listing);
    return swept.ads.find((ad) => ad.listing.address === listing.address && adKey(ad.listing) === key) ?? null;
  }, [listing, swept]);
  useEffect(() => {
    // What the buyer says about an ad holds in the list and in the page too.
    if (swept && shown && evaluation && rows.has(shown.id)) {
      const row = rowOf(words, shown, evaluation);
      if (JSON.stringify(row) !== JSON.stringify(rows.get(shown.id))) put(swept, [row]);
    }
  }, [shown, evaluation, rows]);

  const ordered = useMemo(() => (swept?.ads ?? []).flatMap(({ id }) => rows.get(id) ?? []), [swept, rows]);
  return { swept, rows: ordered, shown };
}
