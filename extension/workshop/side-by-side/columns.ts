/** The finds that stand side by side, judged as they are kept. */
import { useEffect, useState } from 'preact/hooks';
import type { NamedNeed } from '../../../src/kit/need-list.ts';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { Correction } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { exponentOf, type Money } from '../../../src/units/money.ts';
import type { Message } from '../../../src/words/message.ts';
import { judgedAsKept } from '../../panel/judged-as-kept.ts';
import { type Find, failureMessage } from '../../store/index.ts';
import { openNeeds } from '../../store/kit-need.ts';
import type { WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';

export interface Column {
  readonly find: Find;
  readonly evaluation: Evaluation;
  /** The same ad with more corrections behind the buyer's. */
  readonly withMore: (more: readonly Correction[]) => Evaluation;
}

export interface Columns {
  /** Null while they load. */
  readonly columns: readonly Column[] | null;
  /** In which the buyer thinks. */
  readonly unit: MassUnit;
  /** The kit, and what it lacks; null where none was set up. */
  readonly kit: Settings['kit'];
  readonly open: readonly NamedNeed[] | null;
  /** What could not be opened, said once each. */
  readonly failed: readonly Message[];
}

export const askedAt = ({ minor, currency }: Money): readonly Correction[] => [
  { path: 'asking.amount', value: minor / 10 ** exponentOf(currency), unit: currency },
];

const NOTHING_YET = { unit: DEFAULT_SETTINGS.unit, kit: null, open: null, failed: [] } as const;

export function useColumns(host: WorkshopHost, ids: readonly string[]): Columns {
  const store = useStore();
  const [found, setFound] = useState<Columns>({ ...NOTHING_YET, columns: null });
  useEffect(() => {
    let here = true;
    const load = async (): Promise<Columns> => {
      const [kept, stored, open, { evaluate }] = await Promise.all([
        Promise.all(ids.map((id) => store.finds.get(id))),
        store.settings.load(host.now()),
        openNeeds(store, host.now()),
        host.core(),
      ]);
      const settings = stored.ok ? stored.value.settings : DEFAULT_SETTINGS;
      const columns = kept.flatMap((one): Column[] => {
        if (!one.ok) return [];
        const { evaluation, withMore } = judgedAsKept(evaluate, one.value, settings);
        return [{ find: one.value.find, evaluation, withMore }];
      });
      return {
        columns,
        unit: settings.unit,
        kit: settings.kit,
        open: open.ok ? open.value : null,
        failed: kept.flatMap((one) => (one.ok ? [] : [failureMessage(one.code)])),
      };
    };
    load().then(
      (loaded) => here && setFound(loaded),
      (error: unknown) => {
        console.error('Ironsift:', error);
        if (here) setFound({ ...NOTHING_YET, columns: [], failed: [failureMessage('unexpected')] });
      },
    );
    return () => {
      here = false;
    };
  }, [store, ids.join(',')]);
  return found;
}
