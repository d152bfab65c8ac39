/** What is wrong with it: deal-breakers, then cautions, then notes. Focus or hover marks the words in the page. */
import type { Flag, FlagWeight } from '../../src/listing/evaluation.ts';
import type { Span } from '../../src/listing/page-listing.ts';
import type { Item } from '../../src/listing/reading.ts';
import { useEvidence } from '../components/evidence.ts';
import { useWords, type Words } from '../components/speech.ts';
import { keyTail, nameAll } from './item-words.ts';

const ORDER: readonly FlagWeight[] = ['deal-breaker', 'caution', 'note'];

/** One flag that says the same of several lines: shown once. */
export interface FlagGroup {
  readonly flag: Flag;
  /** The lines that it concerns, named. */
  readonly about: string;
  readonly evidence: readonly Span[];
}

/** Flags by weight, those that read the same taken together. */
export function groupFlags(words: Words, flags: readonly Flag[], items: readonly Item[]): FlagGroup[] {
  const groups = new Map<string, readonly Flag[]>();
  for (const flag of ORDER.flatMap((weight) => flags.filter((one) => one.weight === weight))) {
    const { id, weight, says, found, limit } = flag;
    const key = JSON.stringify([id, weight, words.say(says), found && words.say(found), limit && words.say(limit)]);
    groups.set(key, [...(groups.get(key) ?? []), flag]);
  }
  return [...groups.values()].flatMap((same) => {
    const [flag] = same;
    const lines = items.filter((item) => same.some((one) => one.item === item.id));
    return flag ? [{ flag, about: nameAll(words, lines), evidence: same.flatMap((one) => one.evidence) }] : [];
  });
}

export function Flags({ flags, items }: { readonly flags: readonly Flag[]; readonly items: readonly Item[] }) {
  const words = useWords();
  const { t } = words;
  return (
    <section aria-labelledby="flags-heading">
      <h2 id="flags-heading">{t('panel_flags')}</h2>
      {flags.length === 0 ? (
        <p class="quiet">{t('panel_flags_none')}</p>
      ) : (
        <ul class="flags">
          {groupFlags(words, flags, items).map((group) => (
            <FlagLine key={`${group.flag.id} ${group.about}`} {...group} />
          ))}
        </ul>
      )}
    </section>
  );
}

function FlagLine({ flag, about, evidence }: FlagGroup) {
  const { say, t } = useWords();
  const marking = useEvidence(evidence);
  return (
    <li class={`flag flag-${flag.weight}`} data-flag={flag.id} data-weight={flag.weight} {...marking}>
      {flag.weight === 'note' ? (
        <NoteInShort flag={flag} about={about} />
      ) : (
        <>
          <FlagHead flag={flag} about={about} />
          {flag.found && <p class="flag-found">{say(flag.found)}</p>}
          <Limit flag={flag} />
          <p>{say(flag.says)}</p>
          <details>
            <summary>
              {t('panel_limit_source')}
              <span class="unseen">: {say(flag.found ?? flag.says)}</span>
            </summary>
            <p>{say(flag.source)}</p>
          </details>
        </>
      )}
    </li>
  );
}

type FlagProps = Pick<FlagGroup, 'flag' | 'about'>;

/** A note decides nothing: one line, the rest behind it. */
function NoteInShort({ flag, about }: FlagProps) {
  const { say, t } = useWords();
  return (
    <details>
      <summary>
        <FlagHead flag={flag} about={about} /> {say(flag.found ?? flag.says)}
      </summary>
      {flag.found && <p>{say(flag.says)}</p>}
      <Limit flag={flag} />
      <p class="flag-limit">{t('panel_source', { source: { message: flag.source } })}</p>
    </details>
  );
}

function FlagHead({ flag, about }: FlagProps) {
  const { t } = useWords();
  return (
    <span class="flag-head">
      <span class="flag-weight">{t(`panel_weight_of_flag_${keyTail(flag.weight)}`)}</span>
      {about && <span class="flag-item"> {about}</span>}
    </span>
  );
}

function Limit({ flag }: Pick<FlagProps, 'flag'>) {
  const { t } = useWords();
  return flag.limit && <p class="flag-limit">{t('panel_limit', { limit: { message: flag.limit } })}</p>;
}
