/** "How was this worked out?": the calculation part by part, with where each figure comes from; every assumption can be changed in it. */
import { type Evaluation, STEP_GROUPS, type Step, type StepGroup } from '../../src/listing/evaluation.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { DistanceUnit } from '../../src/units/length.ts';
import { fetchedLater } from '../components/fetched-later.tsx';
import { useWords } from '../components/speech.ts';
import { StepLine } from './step-line.tsx';
import type { Units } from './step-words.ts';

export interface WorkingProps {
  readonly evaluation: Evaluation;
  readonly settings: Settings;
  readonly distanceUnit: DistanceUnit;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

/** Drawn where the working is unfolded, and so after the answer. */
const SavingChart = fetchedLater(async () => (await import('./saving-chart.tsx')).SavingChart);
const AllInChart = fetchedLater(async () => (await import('./all-in-chart.tsx')).AllInChart);
const Split = fetchedLater(async () => (await import('./split.tsx')).Split);

export function Working({ evaluation, settings, distanceUnit, onSettings }: WorkingProps) {
  const { t } = useWords();
  const { steps, split, currency } = evaluation.worth;
  if (steps.length === 0 && split.length < 2) return null;
  const units: Units = { mass: settings.unit, distance: distanceUnit, currency };
  return (
    <details class="working">
      <summary>
        <h2>{t('panel_working')}</h2>
      </summary>
      {grouped(steps).map(([group, lines]) => (
        <section key={group} class="step-group" data-group={group}>
          <h3>{t(`working_group_${group}`)}</h3>
          <ol class="steps">
            {lines.map((step) => (
              <StepLine key={step.id} step={step} units={units} settings={settings} onSettings={onSettings} />
            ))}
          </ol>
          {group === 'drive' && <SavingChart prospect={evaluation.prospect} trip={evaluation.trip} />}
          {group === 'cost' && <AllInChart evaluation={evaluation} />}
        </section>
      ))}
      {split.length > 1 && <Split evaluation={evaluation} />}
    </details>
  );
}

/** Lines by the part that they belong to: their own, or that of the line before. */
function grouped(steps: readonly Step[]): [StepGroup, Step[]][] {
  const parts = new Map<StepGroup, Step[]>(STEP_GROUPS.map((group) => [group, []]));
  let at: StepGroup = STEP_GROUPS[0];
  for (const step of steps) {
    at = step.group ?? at;
    parts.get(at)?.push(step);
  }
  return [...parts].filter(([, lines]) => lines.length > 0);
}
