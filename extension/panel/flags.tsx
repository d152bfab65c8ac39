/** What is wrong with it: deal-breakers, then cautions, then notes. Focus or hover marks the words in the page. */
import type { Flag, FlagWeight } from '../../src/listing/evaluation.ts';
import type { Item } from '../../src/listing/reading.ts';
import { useEvidence } from '../components/evidence.ts';
import { useWords } from '../components/speech.ts';
import { keyTail, nameOf } from './item-words.ts';

const ORDER: readonly FlagWeight[] = ['deal-breaker', 'caution', 'note'];

export const inOrder = (flags: readonly Flag[]): Flag[] =>
  ORDER.flatMap((weight) => flags.filter((flag) => flag.weight === weight));

export function Flags({ flags, items }: { readonly flags: readonly Flag[]; readonly items: readonly Item[] }) {
  const { t } = useWords();
  return (
    <section aria-labelledby="flags-heading">
      <h2 id="flags-heading">{t('panel_flags')}</h2>
      {flags.length === 0 ? (
        <p class="quiet">{t('panel_flags_none')}</p>
      ) : (
        <ul class="flags">
          {inOrder(flags).map((flag) => (
            <FlagLine key={`${flag.id} ${flag.item}`} flag={flag} items={items} />
          ))}
        </ul>
      )}
    </section>
  );
}

interface FlagProps {
  readonly flag: Flag;
  readonly items: readonly Item[];
}

function FlagLine({ flag, items }: FlagProps) {
  const { say, t } = useWords();
  const evidence = useEvidence(flag.evidence);
  return (
    <li class={`flag flag-${flag.weight}`} data-flag={flag.id} data-weight={flag.weight} {...evidence}>
      {flag.weight === 'note' ? (
        <NoteInShort flag={flag} items={items} />
      ) : (
        <>
          <FlagHead flag={flag} items={items} />
          {flag.found && <p class="flag-found">{say(flag.found)}</p>}
          <Limit flag={flag} />
          <p>{say(flag.says)}</p>
          <details>
            <summary>{t('panel_limit_source')}</summary>
            <p>{say(flag.source)}</p>
          </details>
        </>
      )}
    </li>
  );
}

/** A note decides nothing: one line, the rest behind it. */
function NoteInShort({ flag, items }: FlagProps) {
  const { say, t } = useWords();
  return (
    <details>
      <summary>
        <FlagHead flag={flag} items={items} /> {say(flag.found ?? flag.says)}
      </summary>
      {flag.found && <p>{say(flag.says)}</p>}
      <Limit flag={flag} />
      <p class="flag-limit">{t('panel_source', { source: { message: flag.source } })}</p>
    </details>
  );
}

function FlagHead({ flag, items }: FlagProps) {
  const words = useWords();
  const name = nameOf(words, items, flag.item);
  return (
    <span class="flag-head">
      <span class="flag-weight">{words.t(`panel_weight_of_flag_${keyTail(flag.weight)}`)}</span>
      {name && <span class="flag-item"> {name}</span>}
    </span>
  );
}

function Limit({ flag }: Pick<FlagProps, 'flag'>) {
  const { t } = useWords();
  return flag.limit && <p class="flag-limit">{t('panel_limit', { limit: { message: flag.limit } })}</p>;
}
