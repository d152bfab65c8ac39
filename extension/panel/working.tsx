/** "How was this worked out?": the calculation line by line, with where each number comes from, and how one price was split. */
import type { Evaluation, Step } from '../../src/listing/evaluation.ts';
import { type MassUnit, POUND_IN_KILOGRAMS } from '../../src/units/mass.ts';
import { likelyAndSpan, poundsIn } from '../components/figures.ts';
import { useWords, type Words } from '../components/speech.ts';
import { keyTail } from './item-words.ts';
import { Split } from './split.tsx';

export interface WorkingProps {
  readonly evaluation: Evaluation;
  readonly unit: MassUnit;
}

export function Working({ evaluation, unit }: WorkingProps) {
  const words = useWords();
  const { say, t } = words;
  const { steps, split, currency } = evaluation.worth;
  if (steps.length === 0 && split.length < 2) return null;
  return (
    <details class="working">
      <summary>
        <h2>{t('panel_working')}</h2>
      </summary>
      {steps.length > 0 && (
        <ol class="steps">
          {steps.map((step) => (
            <li key={step.id} class="step" data-step={step.id}>
              <span class="step-label">{say(step.label)}</span>{' '}
              <span class="step-result">{result(words, step, currency, unit)}</span>
              <span class="step-basis">
                {t(`panel_step_${keyTail(step.basis)}`)}
                {step.source && `: ${say(step.source)}`}
              </span>
            </li>
          ))}
        </ol>
      )}
      {split.length > 1 && <Split evaluation={evaluation} />}
    </details>
  );
}

function result(words: Words, { result: range, unit: of }: Step, currency: string, unit: MassUnit): string {
  const { say, t } = words;
  const ends = (write: (value: number) => string): string => {
    const [low, likely, high] = [write(range.low), write(range.likely), write(range.high)];
    return low === high ? likely : t('panel_likely_and_span', { likely, span: t('panel_span', { low, high }) });
  };
  switch (of) {
    case 'money':
      return likelyAndSpan(words, { ...range, currency });
    case 'money-per-lb':
      return t(`panel_step_per_${unit}`, { rate: likelyAndSpan(words, { ...perUnit(range, unit), currency }) });
    case 'lb':
      return ends((value) => poundsIn(words, value, unit));
    case 'mi':
      return ends((value) => t('panel_distance_value', { distance: { distance: { value, unit: 'mi' } } }));
    case 'fraction':
      return ends((value) => t('panel_percent', { share: { percent: value * 100 } }));
    default:
      return ends((value) => say.number(value));
  }
}

const perUnit = (range: Step['result'], unit: MassUnit): Step['result'] => {
  const factor = unit === 'kg' ? 1 / POUND_IN_KILOGRAMS : 1;
  return { low: range.low * factor, likely: range.likely * factor, high: range.high * factor };
};
