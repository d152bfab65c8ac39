/** Fields for one assumption: a single figure, or low, likely and high. What is typed stays until it can count. */
import { useState } from 'preact/hooks';
import type { Step } from '../../src/listing/evaluation.ts';
import { isCell, type SettingPath } from '../../src/listing/setting-path.ts';
import { exactly, type Range } from '../../src/units/range.ts';
import { NumberField } from '../components/number-field.tsx';
import { type Decimal, parseAmount } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import { digitsOf, inFields, type Units } from './step-words.ts';

interface Props {
  readonly id: string;
  readonly path: SettingPath;
  readonly step: Step;
  readonly units: Units;
  /** Whether the settings would take the figures, which are in the buyer's units. */
  readonly allows: (typed: Range) => boolean;
  readonly onRange: (typed: Range) => void;
}

const ENDS = ['low', 'likely', 'high'] as const;
/** Wide enough for anybody: the settings have limits of their own, this catches slips of the finger. */
const HIGHEST = 100_000;

export function AssumptionFields(props: Props) {
  const { say, t } = useWords();
  const { id, path, step, units } = props;
  return (
    <fieldset id={id} class="step-fields" data-fields={path}>
      <legend class="unseen">{say(step.label)}</legend>
      {isCell(path) ? <Ends {...props} /> : <Figure {...props} />}
      <span id={`${id}-unit`} class="quiet">
        {t(unitKey(step, units), { currency: step.currency ?? units.currency })}
      </span>
    </fieldset>
  );
}

/** "USD a pound", "percent": what the figures in the fields are. */
function unitKey({ unit }: Step, units: Units): string {
  if (unit === 'money-per-lb') return `working_unit_per_${units.mass}`;
  if (unit === 'money-per-mi') return `working_unit_per_${units.distance}`;
  if (unit === 'mph') return `working_unit_speed_${units.distance}`;
  return `working_unit_${unit}`;
}

function Figure({ id, path, step, units, allows, onRange }: Props) {
  const { say, t } = useWords();
  // What the settings refuse stays in the field, with the reason, as every number does that can't be read.
  const parse = (text: string, decimal: Decimal): number | null => {
    const value = parseFigure(text, decimal);
    return value !== null && allows(exactly(value)) ? value : null;
  };
  return (
    <NumberField
      path={`working.${path}`}
      label={say(step.label)}
      value={inFields(step, units).likely}
      write={(value) => say.number(value, digitsOf(step.unit))}
      parse={parse}
      low={0}
      high={HIGHEST}
      complaint={t(`working_bad_${step.unit === 'mm' || step.unit === 'fraction' ? step.unit : 'figure'}`)}
      onValue={(value) => onRange(exactly(value))}
      width={6}
      hint={`${id}-unit`}
    />
  );
}

/** The three are taken together: while they are out of order none counts, and none is lost. */
function Ends({ id, path, step, units, allows, onRange }: Props) {
  const { say, t } = useWords();
  const [draft, setDraft] = useState<Range | null>(null);
  const [left, setLeft] = useState(false);
  const now = draft ?? inFields(step, units);
  const take = (end: (typeof ENDS)[number], value: number) => {
    const typed = { ...now, [end]: value };
    const counts = allows(typed);
    setDraft(counts ? null : typed);
    if (!counts) return;
    setLeft(false);
    onRange(typed);
  };
  return (
    <>
      <span class="step-ends" onFocusOut={() => setLeft(true)}>
        {ENDS.map((end) => (
          <NumberField
            key={end}
            path={`working.${path}.${end}`}
            label={t(`working_end_${end}`)}
            labelShown
            value={now[end]}
            write={(value) => say.number(value, digitsOf(step.unit))}
            parse={parseFigure}
            low={0}
            high={HIGHEST}
            complaint={t('working_bad_number')}
            onValue={(value) => take(end, value)}
            width={5}
            hint={`${id}-unit`}
          />
        ))}
      </span>
      {draft && left && (
        <span class="complaint" role="alert">
          {t('working_bad_order')}
        </span>
      )}
    </>
  );
}

const parseFigure = (text: string, decimal: Decimal): number | null => parseAmount(text.replace(/\s*%$/, ''), decimal);
