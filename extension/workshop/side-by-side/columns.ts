/** The finds that stand side by side, judged as they are kept. */
import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { Correction } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { exponentOf, type Money } from '../../../src/units/money.ts';
import type { Message } from '../../../src/words/message.ts';
import { adKey } from '../../panel/ad-key.ts';
import { corrections, forAd, startSession } from '../../panel/session.ts';
import { unpackEdits } from '../../panel/stored-edits.ts';
import { type Find, failureMessage } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';

export interface Column {
  readonly find: Find;
  readonly evaluation: Evaluation;
  /** The same ad at another asking price for everything. */
  readonly at: (price: Money) => Evaluation;
}

export interface Columns {
  /** Null while they load. */
  readonly columns: readonly Column[] | null;
  /** In which the buyer thinks. */
  readonly unit: MassUnit;
  /** What could not be opened, said once each. */
  readonly failed: readonly Message[];
}

const askedAt = ({ minor, currency }: Money): readonly Correction[] => [
  { path: 'asking.amount', value: minor / 10 ** exponentOf(currency), unit: currency },
];

export function useColumns(host: WorkshopHost, ids: readonly string[]): Columns {
  const store = useStore();
  const [found, setFound] = useState<Columns>({ columns: null, unit: DEFAULT_SETTINGS.unit, failed: [] });
  useEffect(() => {
    let here = true;
    const load = async (): Promise<Columns> => {
      const [kept, stored, { evaluate }] = await Promise.all([
        Promise.all(ids.map((id) => store.finds.get(id))),
        store.settings.load(host.now()),
        host.core(),
      ]);
      const settings = stored.ok ? stored.value.settings : DEFAULT_SETTINGS;
      const columns = kept.flatMap((one): Column[] => {
        if (!one.ok) return [];
        const { find, listing, edits } = one.value;
        const session = unpackEdits(startSession(adKey(listing), listing), edits, evaluate(listing, settings).reading.doubts);
        const own = forAd(settings, session);
        const said = corrections(session);
        return [
          {
            find,
            evaluation: evaluate(listing, own, said),
            at: (price) => evaluate(listing, own, [...said, ...askedAt(price)]),
          },
        ];
      });
      return { columns, unit: settings.unit, failed: kept.flatMap((one) => (one.ok ? [] : [failureMessage(one.code)])) };
    };
    load().then(
      (loaded) => here && setFound(loaded),
      (error: unknown) => {
        console.error('Ironsift:', error);
        if (here) setFound({ columns: [], unit: DEFAULT_SETTINGS.unit, failed: [failureMessage('unexpected')] });
      },
    );
    return () => {
      here = false;
    };
  }, [store, ids.join(',')]);
  return found;
}
