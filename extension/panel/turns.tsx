/** What would turn the answer, in one line: worked out once the answer stands, so that it keeps nobody waiting. */
import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Turn } from '../../src/sensitivity.ts';
import { useWords } from '../components/speech.ts';
import type { Turning } from './panel.tsx';

/** Milliseconds that the answer must have stood: none is worked out between two key strokes. */
const STOOD = 150;

interface Props {
  readonly evaluation: Evaluation;
  readonly settings: Settings;
  readonly turnsOf: Turning;
}

interface Outcome {
  /** The answer that it belongs to: of another one nothing is shown. */
  readonly of: Evaluation;
  readonly turns: readonly Turn[] | null;
}

export function Turns({ evaluation, settings, turnsOf }: Props) {
  const { say, t } = useWords();
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  useEffect(() => {
    const waiting = setTimeout(() => {
      try {
        setOutcome({ of: evaluation, turns: turnsOf(evaluation, settings) });
      } catch (error) {
        console.error('Ironsift:', error);
      }
    }, STOOD);
    return () => clearTimeout(waiting);
  }, [evaluation, settings, turnsOf]);
  if (outcome?.of !== evaluation || outcome.turns === null) return null;
  const [first] = outcome.turns;
  return (
    <p class="turn" data-turns={outcome.turns.length} data-turn={first?.id}>
      {first ? say(first.says) : t('turn_none')}
    </p>
  );
}
