/** How each value of a line is known, in words; a value set by the buyer can be put back. */
import type { Basis, Fact } from '../../src/listing/reading.ts';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import { correctionAt } from './session.ts';

export interface KnownPart {
  readonly path: string;
  /** "count", "weight" */
  readonly name: string;
  readonly fact: Pick<Fact<unknown>, 'basis'> | null;
  /** What the ad says, when the buyer has changed it; null when it says nothing. */
  readonly was: string | null;
}

const BASES: readonly Basis[] = ['stated', 'measured', 'implied', 'assumed'];

/** "stated: count, weight · assumed: sleeve", or "all stated". Values set by the buyer are left to `SetByYou`. */
export function useKnownHow(parts: readonly KnownPart[]): string {
  const { say, t } = useWords();
  const { session } = useEdits();
  const untouched = parts.filter((part) => part.fact && correctionAt(session, part.path) === undefined);
  const [first, ...others] = new Set(untouched.map((part) => part.fact?.basis));
  if (first && others.length === 0 && untouched.length > 1) return t(`panel_basis_all_${first}`);
  return BASES.flatMap((basis) => {
    const names = untouched.filter((part) => part.fact?.basis === basis).map((part) => part.name);
    return names.length > 0 ? [t(`panel_basis_${basis}`, { what: say.list(names) })] : [];
  }).join(' · ');
}

export function SetByYou({ parts }: { readonly parts: readonly KnownPart[] }) {
  const { t } = useWords();
  const { session, putBack } = useEdits();
  const changed = parts.flatMap((part) => {
    const correction = correctionAt(session, part.path);
    return correction ? [{ part, measured: correction.basis === 'measured' }] : [];
  });
  if (changed.length === 0) return null;
  return (
    <ul class="set-by-you">
      {changed.map(({ part, measured }) => (
        <li key={part.path}>
          {t(measured ? 'panel_measured_by_you' : 'panel_set_by_you', { what: part.name })}{' '}
          {t(part.was === null ? 'panel_was_nothing' : 'panel_was', { was: part.was ?? '' })}{' '}
          <button type="button" class="bare" data-put-back={part.path} onClick={() => putBack(part.path)}>
            {t('panel_put_back')}
            <span class="unseen"> {part.name}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
