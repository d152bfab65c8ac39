/** One step on the driveway: what to do, its picture, and the fields for what was found. */
import { useId } from 'preact/hooks';
import type { Item } from '../../../src/listing/reading.ts';
import { faultsOf } from '../../../src/pickup/faults.ts';
import type { PickupStep, PickupStepId } from '../../../src/pickup/steps.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { useWords } from '../../components/speech.ts';
import { itemName } from '../../panel/item-words.ts';
import type { OpenFind } from '../finds/use-find.ts';
import { addressOf } from '../route.ts';
import { STEP_DRAWINGS } from './drawings/index.ts';
import { Faults, MeasuredCount, MeasuredLength } from './fields.tsx';
import { Spin } from './spin.tsx';
import { Straight } from './straight.tsx';
import { Weighed } from './weighed.tsx';

export interface StepProps {
  readonly step: PickupStep;
  readonly find: string;
  readonly unit: MassUnit;
  readonly record: OpenFind['record'];
}

export function Step({ step: { id, items }, find, unit, record }: StepProps) {
  const words = useWords();
  const { t } = words;
  const heading = useId();
  const Drawing = STEP_DRAWINGS[id];
  const meant = items.map((item) => item.id);
  return (
    <li class="pickup-step" data-step={id} aria-labelledby={heading}>
      <h3 id={heading}>{t(`pickup_step_${id}`)}</h3>
      {Drawing && <Drawing name={t(`pickup_drawing_${id}`)} />}
      <p>{t(`pickup_how_${id}`)}</p>
      {items.map((item) => (
        <Found key={item.id} id={id} item={item} name={itemName(words, item)} unit={unit} record={record} />
      ))}
      {id === 'weigh' && (
        <p class="no-print">
          <a href={addressOf('weigh', find, meant)}>{t('pickup_pair_these')}</a>
        </p>
      )}
    </li>
  );
}

interface FoundProps {
  readonly id: PickupStepId;
  readonly item: Item;
  readonly name: string;
  readonly unit: MassUnit;
  readonly record: OpenFind['record'];
}

function Found({ id, item, name, unit, record }: FoundProps) {
  const faults = faultsOf(id, item.kind.value);
  const ticks = faults.length > 0 && <Faults item={item} name={name} faults={faults} />;
  switch (id) {
    case 'count':
      return <MeasuredCount item={item} name={name} />;
    case 'straight':
      return <Straight item={item} name={name} record={record} />;
    case 'shaft':
      return <MeasuredLength item={item} field="shaftMm" name={name} />;
    case 'bore':
      return <MeasuredLength item={item} field="boreMm" name={name} />;
    case 'weigh':
      return <Weighed item={item} name={name} unit={unit} />;
    case 'spin':
      return (
        <>
          <Spin item={item} name={name} record={record} />
          {ticks}
        </>
      );
    case 'frame':
      return (
        <>
          {item.kind.value === 'rack' && <MeasuredLength item={item} field="heightMm" name={name} />}
          {ticks}
        </>
      );
    case 'bench':
      return (
        <>
          <MeasuredLength item={item} field="heightMm" name={name} />
          <MeasuredLength item={item} field="widthMm" name={name} />
          {ticks}
        </>
      );
    default:
      return ticks || null;
  }
}
