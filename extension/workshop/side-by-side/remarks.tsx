/** Flags and questions of the lots. On paper, where five narrow columns of sentences take pages, each is told once, with the letters of its lots. */
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import { useWords, type Words } from '../../components/speech.ts';
import { groupFlags } from '../../panel/flags.tsx';
import { keyTail } from '../../panel/item-words.ts';
import type { Column } from './columns.ts';

export const flagLines = (words: Words, { flags, reading }: Evaluation): string[] =>
  groupFlags(words, flags, reading.items).map(
    ({ flag }) => `${words.t(`panel_weight_of_flag_${keyTail(flag.weight)}`)}: ${words.say(flag.found ?? flag.says)}`,
  );

export const questionLines = ({ say }: Words, { questions }: Evaluation): string[] => questions.map(({ says }) => say(says));

/** "A" for the first lot. */
export const letterOf = (index: number): string => String.fromCharCode(65 + index);

/** Each line once, in the order in which they come, with the lots that it is said of. */
function once(lists: readonly (readonly string[])[]): Map<string, readonly number[]> {
  const lots = new Map<string, readonly number[]>();
  for (const [index, lines] of lists.entries())
    for (const line of new Set(lines)) lots.set(line, [...(lots.get(line) ?? []), index]);
  return lots;
}

const PARTS = [
  { id: 'flags', key: 'compare_flags', linesOf: flagLines },
  { id: 'questions', key: 'compare_questions', linesOf: questionLines },
] as const;

/** Shown on paper alone. */
export function RemarksOnPaper({ columns }: { readonly columns: readonly Column[] }) {
  const words = useWords();
  return (
    <div class="on-paper remarks">
      {PARTS.map(({ id, key, linesOf }) => {
        const lines = [...once(columns.map(({ evaluation }) => linesOf(words, evaluation)))];
        return (
          lines.length > 0 && (
            <section key={id} data-remarks={id}>
              <h2>{words.t(key)}</h2>
              <ul class="plain-list">
                {lines.map(([line, lots]) => (
                  <li key={line}>
                    <strong>{words.say.list(lots.map(letterOf))}</strong> {line}
                  </li>
                ))}
              </ul>
            </section>
          )
        );
      })}
    </div>
  );
}
