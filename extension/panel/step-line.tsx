/** One line of the calculation: result, how it follows, where it comes from; an assumption can be changed on the spot and put back. */
import { useId, useState } from 'preact/hooks';
import type { Step } from '../../src/listing/evaluation.ts';
import { isCell, isOwn, type SettingPath, withDefault, withOwn } from '../../src/listing/setting-path.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Range } from '../../src/units/range.ts';
import { useWords, type Words } from '../components/speech.ts';
import { today } from '../components/today.ts';
import { AssumptionFields } from './assumption-fields.tsx';
import { keyTail } from './item-words.ts';
import { asSetting, resultWords, type Units } from './step-words.ts';

export interface StepLineProps {
  readonly step: Step;
  readonly units: Units;
  readonly settings: Settings;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

export function StepLine({ step, units, settings, onSettings }: StepLineProps) {
  const words = useWords();
  const { say, t } = words;
  const id = useId();
  const [open, setOpen] = useState(false);
  const path = step.edit;
  const own = path !== undefined && isOwn(settings, path);
  const basis = basisWords(words, step, own);
  const label = say(step.label);
  return (
    <li class="step" data-step={step.id} data-own={own ? '' : undefined}>
      <span class="step-label">{label}</span> <span class="step-result">{resultWords(words, step, units)}</span>
      {step.formula && <span class="step-formula">{t('working_formula', { formula: { message: step.formula } })}</span>}
      <span class="step-foot">
        {basis && <span class="step-basis">{basis}</span>}
        {path && (
          <span class="step-buttons">
            <LineButton name="change" path={path} expanded={open} fields={id} label={label} onPress={() => setOpen(!open)}>
              {t(open ? 'working_done' : 'working_change')}
            </LineButton>
            {own && (
              <LineButton
                name="put-back"
                path={path}
                label={label}
                onPress={(button) => {
                  // This button goes away: whoever came by keyboard stays on the line.
                  if (button.previousElementSibling instanceof HTMLElement) button.previousElementSibling.focus();
                  setOpen(false);
                  onSettings(withDefault(settings, path));
                }}
              >
                {t('working_put_back')}
              </LineButton>
            )}
          </span>
        )}
      </span>
      {path && open && <Fields id={id} path={path} step={step} units={units} settings={settings} onSettings={onSettings} />}
    </li>
  );
}

interface LineButtonProps {
  readonly name: 'change' | 'put-back';
  readonly path: SettingPath;
  /** Of the line: the same words stand on many. */
  readonly label: string;
  readonly expanded?: boolean;
  readonly fields?: string;
  readonly children: string;
  readonly onPress: (button: HTMLButtonElement) => void;
}

const LineButton = ({ name, path, label, expanded, fields, children, onPress }: LineButtonProps) => (
  <button
    type="button"
    class="bare"
    {...{ [`data-${name}`]: path }}
    aria-expanded={expanded}
    aria-controls={expanded ? fields : undefined}
    onClick={(event) => onPress(event.currentTarget)}
  >
    {children}
    <span class="unseen">: {label}</span>
  </button>
);

interface FieldsProps extends StepLineProps {
  readonly id: string;
  readonly path: SettingPath;
}

function Fields({ id, path, step, units, settings, onSettings }: FieldsProps) {
  const changed = (typed: Range) => withOwn(settings, path, asSetting(typed, step, units), today());
  return (
    <AssumptionFields
      id={id}
      path={path}
      step={step}
      units={units}
      allows={(typed) => changed(typed) !== null}
      onRange={(typed) => onSettings(changed(typed) ?? {})}
    />
  );
}

/** How a figure is known, and from where. What a formula shows to be worked out need not be told so. */
function basisWords({ say, t }: Words, { basis, source, formula, edit }: Step, own: boolean): string | null {
  const said = source && say(source);
  // A cell of the table has its source with its date, the buyer's own too.
  if (said && edit !== undefined && isCell(edit)) return said;
  if (formula && basis === 'worked-out') return said;
  // Whose word it is, the ad's or the buyer's, is in the source.
  if (said && basis === 'stated') return said;
  const known = t(own ? 'working_your_own' : `panel_step_${keyTail(basis)}`);
  return said ? t('working_basis', { basis: known, source: said }) : known;
}
