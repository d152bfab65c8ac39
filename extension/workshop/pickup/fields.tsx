/** Fields for what was measured: in any unit, straight into the find, and empty until something was measured. */
import { useId } from 'preact/hooks';
import type { Condition, Fact, Item } from '../../../src/listing/reading.ts';
import { faultOn } from '../../../src/pickup/faults.ts';
import { NumberField } from '../../components/number-field.tsx';
import { parseCount, parseMillimetres } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { useEdits } from '../../panel/edits.ts';
import { keyTail } from '../../panel/item-words.ts';

type LengthField = 'boreMm' | 'shaftMm' | 'heightMm' | 'widthMm';

/** Limits in mm, wide enough for anything sold: they only catch slips. */
const LIMITS: Readonly<Record<LengthField, readonly [number, number]>> = {
  boreMm: [15, 90],
  shaftMm: [15, 60],
  heightMm: [150, 4000],
  widthMm: [100, 1000],
};

const measured = <T,>(fact: Fact<T> | null | undefined): T | null => (fact?.basis === 'measured' ? fact.value : null);

interface LengthProps {
  readonly item: Item;
  readonly field: LengthField;
  readonly name: string;
}

export function MeasuredLength({ item, field, name }: LengthProps) {
  const { say, t } = useWords();
  const hint = useId();
  const { asRead, set, putBack } = useEdits();
  const path = `${item.id}.${field}`;
  const [low, high] = LIMITS[field];
  const stated = asRead?.items.find(({ id }) => id === item.id)?.[field]?.value;
  return (
    <NumberField
      path={path}
      label={t(`pickup_${field}`, { item: name })}
      labelShown
      value={measured(item[field])}
      write={(value) => say.number(value, 1)}
      parse={parseMillimetres}
      low={low}
      high={high}
      complaint={t('panel_bad_length', { low, high })}
      onValue={(value) => set({ path, value: Math.round(value * 100) / 100, unit: 'mm', basis: 'measured' })}
      onEmpty={() => putBack(path)}
      width={6}
      unit={t('pickup_mm_or_any')}
      hint={stated === undefined ? undefined : hint}
    >
      {stated !== undefined && (
        <span id={hint} class="line-notes">
          {t('pickup_ad_says', { value: { mm: stated } })}
        </span>
      )}
    </NumberField>
  );
}

export function MeasuredCount({ item, name }: { readonly item: Item; readonly name: string }) {
  const { say, t } = useWords();
  const hint = useId();
  const { asRead, set, putBack } = useEdits();
  const path = `${item.id}.count`;
  const stated = asRead?.items.find(({ id }) => id === item.id)?.count?.value;
  return (
    <NumberField
      path={path}
      label={name}
      labelShown
      value={measured(item.count)}
      write={(value) => say.number(value, 0)}
      parse={parseCount}
      low={1}
      high={1000}
      complaint={t('panel_bad_count', { most: 1000 })}
      onValue={(value) => set({ path, value, basis: 'measured' })}
      onEmpty={() => putBack(path)}
      hint={hint}
    >
      <span id={hint} class="line-notes">
        {stated === undefined ? t('pickup_ad_silent') : t('pickup_ad_says', { value: stated })}
      </span>
    </NumberField>
  );
}

interface FaultsProps {
  readonly item: Item;
  readonly name: string;
  readonly faults: readonly Condition[];
}

export function Faults({ item, name, faults }: FaultsProps) {
  const { t } = useWords();
  const { asRead, set, putBack } = useEdits();
  const said = (of: Item | undefined, fault: Condition) => of?.conditions.some(({ value }) => value === fault) ?? false;
  const before = asRead?.items.find(({ id }) => id === item.id);
  const words = (fault: Condition) => {
    const on = faultOn(fault, item.kind.value);
    return t(on === null ? `panel_condition_${keyTail(fault)}` : `pickup_fault_${keyTail(fault)}_${on}`);
  };
  return (
    <fieldset class="ticks">
      <legend>{name}</legend>
      {faults.map((fault) => {
        const path = `${item.id}.condition.${fault}`;
        return (
          <label key={fault} class="tick">
            <input
              type="checkbox"
              data-path={path}
              checked={said(item, fault)}
              onChange={(event) => {
                const on = event.currentTarget.checked;
                if (on === said(before, fault)) putBack(path);
                else set({ path, value: on, basis: 'measured' });
              }}
            />
            {words(fault)}
          </label>
        );
      })}
    </fieldset>
  );
}
