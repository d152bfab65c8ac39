/** What a thing is: its kind and, where that matters, the weight of one. */
import type { Thing } from '../../../src/kit/same-thing.ts';
import type { MassUnit } from '../../../src/units/mass.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseCount, parseNumber } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { isWeighed, KIT_KINDS, kindName } from './thing-words.ts';

export const MOST_PIECES = 200;
const HEAVIEST = 500;

export type Described = Thing & { readonly pieces: number };

export interface ThingFieldsProps<T extends Described> {
  /** Beginning of the fields' paths. */
  readonly path: string;
  readonly thing: T;
  readonly unit: MassUnit;
  readonly onThing: (thing: T) => void;
}

/** A plate without a weight says too little to count. */
export const isTold = ({ kind, weight, pieces }: Described): boolean =>
  pieces > 0 && ((weight !== null && weight.value > 0) || !(kind === 'plate' || kind === 'bumper' || kind === 'micro'));

export function PiecesField({
  path,
  label,
  labelShown = false,
  value,
  onValue,
}: {
  readonly path: string;
  readonly label: string;
  readonly labelShown?: boolean;
  readonly value: number;
  readonly onValue: (pieces: number) => void;
}) {
  const { say, t } = useWords();
  return (
    <NumberField
      path={path}
      label={label}
      labelShown={labelShown}
      value={value}
      write={(one) => say.number(one, 0)}
      parse={parseCount}
      low={1}
      high={MOST_PIECES}
      complaint={t('kit_bad_pieces', { most: MOST_PIECES })}
      onValue={onValue}
      width={3}
    />
  );
}

export function ThingFields<T extends Described>({ path, thing, unit, onThing }: ThingFieldsProps<T>) {
  const words = useWords();
  const { say, t } = words;
  const { kind, weight } = thing;
  const own = weight?.unit ?? unit;
  return (
    <>
      <ChoiceField
        path={`${path}.kind`}
        label={t('kit_kind')}
        labelShown
        value={kind}
        options={KIT_KINDS.map((value) => ({ value, words: kindName(words, value) }))}
        onChoice={(value) => {
          const chosen = KIT_KINDS.find((one) => one === value) ?? 'other';
          onThing({ ...thing, kind: chosen, weight: isWeighed(chosen) ? weight : null });
        }}
      />
      {isWeighed(kind) && (
        <NumberField
          path={`${path}.weight`}
          label={t('kit_weight_each')}
          labelShown
          value={weight?.value || null}
          write={(one) => say.number(one, 2)}
          parse={parseNumber}
          low={0.1}
          high={HEAVIEST}
          complaint={t('kit_bad_number', { low: 0.1, high: HEAVIEST })}
          onValue={(value) => onThing({ ...thing, weight: { value, unit: own } })}
          onEmpty={() => onThing({ ...thing, weight: null })}
        >
          <ChoiceField
            path={`${path}.unit`}
            label={t('kit_weight_unit')}
            value={own}
            options={(['lb', 'kg'] as const).map((value) => ({ value, words: value }))}
            onChoice={(value) => onThing({ ...thing, weight: { value: weight?.value ?? 0, unit: value as MassUnit } })}
          />
        </NumberField>
      )}
      <PiecesField
        path={`${path}.pieces`}
        label={t('kit_pieces')}
        labelShown
        value={thing.pieces}
        onValue={(pieces) => onThing({ ...thing, pieces })}
      />
    </>
  );
}
