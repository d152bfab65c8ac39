/** One thing that is owned, to be added or changed. */
import { useState } from 'preact/hooks';
import { isPlateKind } from '../../../src/kit/same-thing.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { inMajor, money } from '../../../src/units/money.ts';
import { NumberField } from '../../components/number-field.tsx';
import { parseAmount, parseMillimetres } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import type { Owned } from '../../store/index.ts';
import { isTold, ThingFields } from './thing-fields.tsx';

type Entry = Omit<Owned, 'changedAt'>;

export interface OwnedFormProps {
  readonly path: string;
  readonly first: Entry;
  readonly unit: MassUnit;
  readonly currency: string;
  /** What came with an ad was paid with the ad. */
  readonly withPaid: boolean;
  readonly action: string;
  readonly onDone: (entry: Entry) => void;
}

const MOST_PAID = 100_000;
const THICKEST_MM = 150;

export function OwnedForm({ path, first, unit, currency, withPaid, action, onDone }: OwnedFormProps) {
  const { say, t } = useWords();
  const [entry, setEntry] = useState(first);
  const [untold, setUntold] = useState(false);
  const change = (next: Entry) => {
    setEntry(next);
    setUntold(false);
  };
  const paid = entry.paid?.currency ?? currency;
  const done = (event: Event) => {
    event.preventDefault();
    if (isTold(entry)) onDone(entry);
    else setUntold(true);
  };
  return (
    <form class="kit-fields kit-form" data-form={path} onSubmit={done}>
      <ThingFields path={path} thing={entry} unit={unit} onThing={change} />
      {isPlateKind(entry.kind) && (
        <NumberField
          path={`${path}.thickness`}
          label={t('kit_thickness')}
          labelShown
          value={entry.thicknessMm ?? null}
          write={(value) => say.number(value, 1)}
          parse={parseMillimetres}
          low={1}
          high={THICKEST_MM}
          complaint={t('panel_bad_length', { low: 1, high: THICKEST_MM })}
          onValue={(thicknessMm) => change({ ...entry, thicknessMm })}
          onEmpty={() => change({ ...entry, thicknessMm: null })}
          width={6}
          unit={t('pickup_mm_or_any')}
        />
      )}
      {withPaid && (
        <NumberField
          path={`${path}.paid`}
          label={t('kit_paid_for_all')}
          labelShown
          value={entry.paid ? inMajor(entry.paid) : null}
          write={(value) => say.number(value, 2)}
          parse={parseAmount}
          low={0}
          high={MOST_PAID}
          complaint={t('kit_bad_number', { low: 0, high: MOST_PAID })}
          onValue={(value) => change({ ...entry, paid: money(value, paid) })}
          onEmpty={() => change({ ...entry, paid: null })}
          width={6}
          unit={paid}
        />
      )}
      <button type="submit" data-done={path}>
        {action}
      </button>
      {untold && <p role="alert">{t('kit_untold')}</p>}
    </form>
  );
}
