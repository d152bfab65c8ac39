/** The asking price and what it covers, to be edited in place. */
import type { Asking, PriceBasis } from '../../src/listing/reading.ts';
import { inMajor, type Money } from '../../src/units/money.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { useEvidence } from '../components/evidence.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseAmount } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import { keyTail } from './item-words.ts';
import { type KnownPart, SetByYou, useKnownHow } from './known-how.tsx';

const BASES: readonly PriceBasis[] = ['lot', 'per-pound', 'per-kilogram', 'each', 'pair'];
const PER_UNIT: readonly PriceBasis[] = ['per-pound', 'per-kilogram', 'each', 'pair'];
const MOST = 1_000_000;

/** The field that holds the price: of one unit, or of everything. */
const pathOf = (basis: PriceBasis): 'asking.unitAmount' | 'asking.amount' =>
  PER_UNIT.includes(basis) ? 'asking.unitAmount' : 'asking.amount';

const factOf = (asking: Asking) => (PER_UNIT.includes(asking.basis) ? asking.unitAmount : asking.amount);

export function PriceLine({ asking, currency }: { readonly asking: Asking; readonly currency: string }) {
  const { say, t } = useWords();
  const { set, putBack, asRead } = useEdits();
  const fact = factOf(asking);
  const before = asRead ? factOf(asRead.asking) : null;
  const path = pathOf(asking.basis);
  // A price set by the buyer still shows what the ad says.
  const said = fact && fact.evidence.length > 0 ? fact : before;
  const evidence = useEvidence([...(said?.evidence ?? []), ...(asking.high?.evidence ?? [])]);
  const parts: KnownPart[] = [
    { path, name: t('panel_name_price'), fact, was: before ? say.money(before.value) : null },
    {
      path: 'asking.basis',
      name: t('panel_name_price_basis'),
      fact: null,
      was: asRead ? t(`panel_price_${keyTail(asRead.asking.basis)}`) : null,
    },
  ];
  const known = useKnownHow(parts);
  const options = BASES.includes(asking.basis) ? BASES : [asking.basis, ...BASES];
  return (
    <li class="line" data-line="price" {...evidence}>
      <div class="line-main">
        <NumberField
          key={path}
          path={path}
          label={t('panel_price')}
          labelShown
          value={fact ? inMajor(fact.value) : null}
          write={(value) => say.number(value)}
          parse={parseAmount}
          low={0}
          high={MOST}
          complaint={t('panel_bad_price', { most: MOST })}
          onValue={(value) => set({ path, value })}
          onEmpty={before === null ? () => putBack(path) : undefined}
          width={6}
          unit={fact?.value.currency ?? currency}
        />
        <ChoiceField
          path="asking.basis"
          label={t('panel_price_covers')}
          value={asking.basis}
          options={options.map((value) => ({ value, words: t(`panel_price_${keyTail(value)}`) }))}
          onChoice={(value) => set({ path: 'asking.basis', value })}
        />
      </div>
      <p class="line-notes">{[known, ...usePriceNotes(asking, fact?.value ?? null)].filter(Boolean).join(' · ')}</p>
      <SetByYou parts={parts} />
    </li>
  );
}

/** What else the ad says about the price. */
function usePriceNotes(asking: Asking, shown: Money | null): string[] {
  const { t } = useWords();
  const whole = asking.amount?.value;
  const notes: string[] = [];
  if (whole && shown && PER_UNIT.includes(asking.basis)) notes.push(t('panel_price_comes_to', { price: { money: whole } }));
  if (asking.high) notes.push(t('panel_price_up_to', { price: { money: asking.high.value } }));
  if (asking.placeholder) notes.push(t('panel_price_placeholder'));
  if (asking.firm?.value) notes.push(t('panel_price_firm'));
  if (asking.openToOffers?.value) notes.push(t('panel_price_offers'));
  for (const former of asking.former) notes.push(t('panel_price_former', { price: { money: former.value } }));
  if (asking.delivery) notes.push(t('panel_price_delivery', { price: { money: asking.delivery.value } }));
  return notes;
}
