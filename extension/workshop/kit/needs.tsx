/** What is needed: pieces wanted, owned and still lacking of each; the buyer changes, adds and takes off. */
import { useState } from 'preact/hooks';
import type { NamedNeed } from '../../../src/kit/need-list.ts';
import { plateUnit } from '../../../src/kit/need-list.ts';
import type { KitStatus, NeedLine } from '../../../src/kit/status.ts';
import { useWords } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';
import { useUndo } from '../undo.tsx';
import { putBackNeeds, resetNeeds } from './save.ts';
import { type Described, isTold, PiecesField, ThingFields } from './thing-fields.tsx';
import { countedName, thingName } from './thing-words.ts';
import type { OpenKit } from './use-kit.ts';

export function Needs({ kit, status }: { readonly kit: OpenKit; readonly status: KitStatus }) {
  const words = useWords();
  const { t } = words;
  const undo = useUndo();
  const put = ({ id, kind, weight }: NamedNeed, pieces: number) =>
    kit.write((store, now) => store.kit.needs.put({ id, kind, weight, pieces, note: '', own: true }, now));
  const remove = async (need: NamedNeed) => {
    // Kept with no pieces, so that it does not come back when the figures change.
    if (await put(need, 0)) undo.removed(thingName(words, need), () => void put(need, need.pieces));
  };
  const reset = async () => {
    const was = kit.storedNeeds;
    if (await kit.write(resetNeeds))
      undo.done(t('kit_reset_done'), () => void kit.write((store, now) => putBackNeeds(store, was, now)));
  };
  const { surplus } = status;
  return (
    <section aria-labelledby="kit-needs">
      <h2 id="kit-needs">{t('kit_needs')}</h2>
      {status.lines.length > 0 && (
        <ul class="kit-list">
          {status.lines.map((line) => (
            <Line
              key={line.need.id}
              line={line}
              onPieces={(pieces) => void put(line.need, pieces)}
              onRemove={() => void remove(line.need)}
            />
          ))}
        </ul>
      )}
      {undo.line}
      {surplus.length > 0 && (
        <p data-surplus>{t('kit_surplus', { what: surplus.map((one) => countedName(words, one)).join('; ') })}</p>
      )}
      <AddNeed kit={kit} onMore={put} />
      <p>
        <button type="button" class="bare" data-reset onClick={() => void reset()}>
          {t('kit_reset')}
        </button>
      </p>
    </section>
  );
}

interface LineProps {
  readonly line: NeedLine;
  readonly onPieces: (pieces: number) => void;
  readonly onRemove: () => void;
}

function Line({ line: { need, owned, lacking }, onPieces, onRemove }: LineProps) {
  const words = useWords();
  const { say, t } = words;
  const name = thingName(words, need);
  return (
    <li class="kit-line" data-need={need.id} data-lacking={lacking}>
      <span class="kit-name">
        {name}
        <span class="line-notes">{t(`kit_because_${keyTail(need.because)}`)}</span>
      </span>
      <span class="kit-count">
        <span aria-hidden="true">{t('kit_wanted')}</span>
        <PiecesField path={`${need.id}.pieces`} label={t('kit_wanted_of', { name })} value={need.pieces} onValue={onPieces} />
      </span>
      <span class="kit-count">{t('kit_owned_n', { count: say.number(owned) })}</span>
      <span class="kit-count kit-lacking">
        {lacking === 0 ? t('kit_has_all') : t('kit_lacks_n', { count: say.number(lacking) })}
      </span>
      <button type="button" class="bare" data-remove={need.id} onClick={onRemove}>
        {t('kit_remove')}
        <span class="unseen">: {name}</span>
      </button>
    </li>
  );
}

interface AddNeedProps {
  readonly kit: OpenKit;
  /** More of what is on the list already, which would stand there twice by one name. */
  readonly onMore: (need: NamedNeed, pieces: number) => Promise<boolean>;
}

function AddNeed({ kit, onMore }: AddNeedProps) {
  const words = useWords();
  const { t } = words;
  const unit = kit.figures ? plateUnit(kit.figures) : 'lb';
  const first: Described = { kind: 'plate', weight: null, pieces: 2 };
  const [thing, setThing] = useState<Described>(first);
  const [untold, setUntold] = useState(false);
  const add = () => {
    if (!isTold(thing)) return setUntold(true);
    const known = kit.needs.find((need) => thingName(words, need) === thingName(words, thing));
    if (known) void onMore(known, known.pieces + thing.pieces);
    else void kit.write((store, now) => store.kit.needs.put({ id: crypto.randomUUID(), ...thing, note: '', own: true }, now));
    setThing(first);
  };
  return (
    <details>
      <summary>{t('kit_add_need')}</summary>
      <div class="kit-fields">
        <ThingFields
          path="new-need"
          thing={thing}
          unit={unit}
          onThing={(one) => {
            setThing(one);
            setUntold(false);
          }}
        />
        <button type="button" data-add-need onClick={add}>
          {t('kit_add')}
        </button>
      </div>
      {untold && <p role="alert">{t('kit_untold')}</p>}
    </details>
  );
}
