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

function FlagLine({ flag, items }: { readonly flag: Flag; readonly items: readonly Item[] }) {
  const words = useWords();
  const { say, t } = words;
  const evidence = useEvidence(flag.evidence);
  const name = nameOf(words, items, flag.item);
  return (
    <li class={`flag flag-${flag.weight}`} data-flag={flag.id} data-weight={flag.weight} {...evidence}>
      <p class="flag-head">
        <span class="flag-weight">{t(`panel_weight_of_flag_${keyTail(flag.weight)}`)}</span>
        {name && <span class="flag-item">{name}</span>}
      </p>
      {flag.found && <p class="flag-found">{say(flag.found)}</p>}
      {flag.limit && <p class="flag-limit">{t('panel_limit', { limit: { message: flag.limit } })}</p>}
      <p>{say(flag.says)}</p>
      <details>
        <summary>{t('panel_limit_source')}</summary>
        <p>{say(flag.source)}</p>
      </details>
    </li>
  );
}
