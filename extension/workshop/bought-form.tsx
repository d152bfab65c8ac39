/** "I bought it": asks what was paid, says what goes to the kit, and takes it all back on request. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Sorted, sortGoods } from '../../src/kit/fills.ts';
import { inMajor, type Money, money } from '../../src/units/money.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseAmount } from '../components/parse-input.ts';
import { useWords, type Words } from '../components/speech.ts';
import { useOneAtATime } from '../components/use-one-at-a-time.ts';
import { itemName, nameAll } from '../panel/item-words.ts';
import type { Before } from '../store/index.ts';
import { ownedFrom } from './bought.ts';
import type { OpenFind } from './finds/use-find.ts';
import type { WorkshopHost } from './host.ts';
import { useComplaint, useStore } from './use-store.tsx';

export interface BoughtProps {
  readonly host: WorkshopHost;
  readonly open: OpenFind;
  /** The buyer asked for it elsewhere, by choosing the status: the form is open at once. */
  readonly asked?: boolean;
  readonly onDone?: () => void;
}

export function Bought({ host, open, asked = false, onDone }: BoughtProps) {
  const { say, t } = useWords();
  const store = useStore();
  const { complaint, checked } = useComplaint();
  const { once } = useOneAtATime();
  const { find, evaluation } = open;
  const [asks, setAsks] = useState(asked);
  const [before, setBefore] = useState<Before | null>(null);
  const place = useRef<HTMLDivElement>(null);
  const settled = find.status === 'bought' && find.paid !== null;
  const stage = settled ? 'settled' : asks ? 'asks' : 'open';
  useEffect(() => setAsks(asked), [asked]);
  useFocusOn(place, stage);
  const done = () => {
    setAsks(false);
    onDone?.();
  };
  const paidFor = async (paid: Money) => {
    const was = checked(await store.finds.buy(find.id, paid, ownedFrom(find, evaluation), host.now()));
    if (was === null) return;
    setBefore(was);
    done();
  };
  const undo = async () => {
    const { finds } = store;
    const known = before !== null && before.status !== 'bought';
    const back = known ? await finds.putBack([before], host.now()) : await finds.setStatusOf([find.id], 'going', host.now());
    if (back.ok) setBefore(null);
    checked<unknown>(back);
  };
  return (
    <div class="bought" ref={place} data-stage={stage}>
      {stage === 'open' && (
        <button type="button" class="strong" data-bought onClick={() => setAsks(true)}>
          {t('bought_ask')}
        </button>
      )}
      {stage === 'asks' && (
        <Paid
          key={open.evaluation.reading.asking.amount?.value.minor}
          open={open}
          onPaid={(paid) => once(() => paidFor(paid))}
          onLeave={done}
        />
      )}
      {stage === 'settled' && find.paid && (
        <>
          <p role="status">
            {t('bought_for', { price: say.money(find.paid) })} {t('bought_in_kit')}
          </p>
          <button type="button" data-take-back onClick={() => once(undo)}>
            {t('bought_take_back')}
          </button>
        </>
      )}
      {complaint && <p role="alert">{complaint}</p>}
    </div>
  );
}

/** When the stage changes under the buyer's hands, the focus goes to what took its place. */
function useFocusOn(place: { readonly current: HTMLElement | null }, stage: string): void {
  const last = useRef(stage);
  useEffect(() => {
    if (last.current === stage) return;
    last.current = stage;
    place.current?.querySelector<HTMLElement>('input, button')?.focus();
  }, [stage]);
}

const MOST = 1_000_000;

/** "Straight bar", or "1 of 4: Plates, 45 lb" where the others are sound. */
function unfitName(words: Words, { item, sound, unfit }: Sorted): string {
  const name = itemName(words, item);
  return sound === 0 ? name : words.t('bought_some_unfit', { unfit, all: sound + unfit, name });
}

interface PaidProps {
  readonly open: OpenFind;
  readonly onPaid: (paid: Money) => void;
  readonly onLeave: () => void;
}

function Paid({ open, onPaid, onLeave }: PaidProps) {
  const words = useWords();
  const { say, t } = words;
  const { evaluation } = open;
  const { reading, worth } = evaluation;
  const { amount, currency, placeholder } = reading.asking;
  const unit = currency?.value ?? worth.currency;
  const [paid, setPaid] = useState<number | null>(amount && !placeholder ? inMajor(amount.value) : null);
  const sorted = sortGoods(evaluation);
  const kept = sorted.flatMap(({ item, sound }) => (sound > 0 ? [item] : []));
  const unfit = sorted.filter((one) => one.unfit > 0).map((one) => unfitName(words, one));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (paid !== null) onPaid(money(paid, unit));
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onLeave();
      }}
    >
      <NumberField
        path="paid"
        label={t('bought_paid', { currency: unit })}
        labelShown
        value={paid}
        write={(value) => say.number(value)}
        parse={parseAmount}
        low={0}
        high={MOST}
        complaint={t('bought_bad_paid', { most: { money: money(MOST, unit) } })}
        onValue={setPaid}
        onEmpty={() => setPaid(null)}
        width={8}
        hint="bought-paid-hint"
      />
      <p id="bought-paid-hint" class="line-notes">
        {t('bought_paid_hint')}
      </p>
      <p data-for-kit>
        {kept.length > 0 ? t('bought_goes_to_kit', { goods: nameAll(words, kept) }) : t('bought_nothing_for_kit')}
      </p>
      {unfit.length > 0 && <p data-not-counted>{t('bought_not_counted', { goods: unfit.join('; ') })}</p>}
      <p class="bought-buttons">
        <button type="submit" class="strong" disabled={paid === null} data-buy>
          {t('bought_buy')}
        </button>
        <button type="button" data-not-bought onClick={onLeave}>
          {t('bought_leave')}
        </button>
      </p>
    </form>
  );
}
