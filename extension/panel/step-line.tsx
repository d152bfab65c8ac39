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

export function StepLine(props: StepLineProps) {
  const words = useWords();
  const { say, t } = words;
  const { step, units, settings } = props;
  const own = step.edit !== undefined && isOwn(settings, step.edit);
  const basis = basisWords(words, step, own);
  return (
    <li class="step" data-step={step.id} data-own={own ? '' : undefined}>
      <span class="step-label">{say(step.label)}</span> <span class="step-result">{resultWords(words, step, units)}</span>
      {step.formula && <span class="step-formula">{t('working_formula', { formula: { message: step.formula } })}</span>}
      {basis && <span class="step-basis">{basis}</span>}
      {step.edit && <Assumption {...props} path={step.edit} own={own} />}
    </li>
  );
}

/** How a figure is known, and from where. What a formula shows to be worked out need not be told so. */
function basisWords({ say, t }: Words, { basis, source, formula, edit }: Step, own: boolean): string | null {
  const said = source && say(source);
  // A cell of the table has its source with its date, the buyer's own too.
  if (said && edit !== undefined && isCell(edit)) return said;
  if (formula && basis === 'worked-out') return said;
  const known = t(own ? 'working_your_own' : `panel_step_${keyTail(basis)}`);
  return said ? t('working_basis', { basis: known, source: said }) : known;
}

function Assumption({ step, units, settings, onSettings, path, own }: StepLineProps & { path: SettingPath; own: boolean }) {
  const { say, t } = useWords();
  const id = useId();
  const [open, setOpen] = useState(false);
  const label = say(step.label);
  const changed = (typed: Range) => withOwn(settings, path, asSetting(typed, step, units), today());
  return (
    <>
      <span class="step-buttons">
        <button
          type="button"
          class="bare"
          data-change={path}
          aria-expanded={open}
          aria-controls={open ? id : undefined}
          onClick={() => setOpen(!open)}
        >
          {t(open ? 'working_done' : 'working_change')}
          <span class="unseen">: {label}</span>
        </button>
        {own && (
          <button type="button" class="bare" data-put-back={path} onClick={() => onSettings(withDefault(settings, path))}>
            {t('working_put_back')}
            <span class="unseen">: {label}</span>
          </button>
        )}
      </span>
      {open && (
        <AssumptionFields
          id={id}
          path={path}
          step={step}
          units={units}
          allows={(typed) => changed(typed) !== null}
          onRange={(typed) => onSettings(changed(typed) ?? {})}
        />
      )}
    </>
  );
}
