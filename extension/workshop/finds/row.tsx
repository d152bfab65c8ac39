/** One find in the list, in two lines. */
import { useEffect, useRef } from 'preact/hooks';
import type { MassUnit } from '../../../src/units/mass.ts';
import { figure, perWords, poundsIn } from '../../components/figures.ts';
import { useWords, type Words } from '../../components/speech.ts';
import type { Find } from '../../store/index.ts';
import { addressOf } from '../route.ts';

export interface RowProps {
  readonly find: Find;
  readonly index: number;
  readonly chosen: boolean;
  readonly total: number;
  readonly unit: MassUnit;
  /** The one row that Tab leads to; `focused` when it is to take the focus now. */
  readonly active: boolean;
  readonly focused: boolean;
  readonly onChoose: (id: string, chosen: boolean) => void;
  readonly onFocus: (index: number) => void;
  readonly onKey: (event: KeyboardEvent, find: Find) => void;
}

/** Cost per usable pound, price, usable weight, saving. What is not known is left out, never made up. */
function figures(words: Words, { summary, prices }: Find, unit: MassUnit): string[] {
  const { t, say } = words;
  const { perUsable, usable, saving } = summary;
  const asked = prices.at(-1);
  const parts: string[] = [];
  if (perUsable) parts.push(`${figure(words, perUsable.likely, perUsable)} ${perWords(words, perUsable)}`);
  parts.push(
    asked ? t('finds_asked', { price: { money: { minor: asked.minor, currency: asked.currency } } }) : t('finds_no_price'),
  );
  if (usable.likely > 0) parts.push(t('finds_usable', { weight: poundsIn(words, usable.likely, unit) }));
  if (saving && saving.minor > 0) parts.push(t('finds_saves', { saving: say.money(saving, 'whole') }));
  return parts;
}

export function Row({ find, index, total, unit, chosen, active, focused, onChoose, onFocus, onKey }: RowProps) {
  const words = useWords();
  const { t } = words;
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (focused && document.activeElement !== link.current) link.current?.focus({ preventScroll: true });
  }, [focused]);
  const { summary, status } = find;
  const title = find.title || t('finds_untitled');
  const away = summary.distance && t('panel_distance_value', { distance: { distance: summary.distance } });
  const where = [summary.place ?? '', away ?? ''].filter((part) => part !== '');
  return (
    <li
      class={chosen ? 'find-row find-chosen' : 'find-row'}
      aria-posinset={index + 1}
      aria-setsize={total}
      data-find={find.id}
      style={{ '--find-at': index }}
    >
      <input
        type="checkbox"
        tabIndex={active ? 0 : -1}
        checked={chosen}
        aria-label={t('finds_choose', { title })}
        onChange={(event) => onChoose(find.id, event.currentTarget.checked)}
      />
      <span class="find-title">
        <a
          ref={link}
          href={addressOf('finds', find.id)}
          tabIndex={active ? 0 : -1}
          onFocus={() => onFocus(index)}
          onKeyDown={(event) => onKey(event, find)}
        >
          <bdi>{title}</bdi>
        </a>
        <span class="find-where">{words.say.list(where)}</span>
      </span>
      <span class="find-figures">
        <strong>{t(`finds_call_${summary.call}`)}</strong> <span>{figures(words, find, unit).join(' · ')}</span>
      </span>
      <span class="find-status">{t(`finds_status_${status}`)}</span>
    </li>
  );
}
