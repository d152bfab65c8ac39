/** What the buyer would do with one thing of a bundle: keep it, sell it on for a sum, or count it for nothing. */
import { useId } from 'preact/hooks';
import { type Item, PLANS } from '../../src/listing/reading.ts';
import { inMajor } from '../../src/units/money.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { NumberField } from '../components/number-field.tsx';
import { parseAmount } from '../components/parse-input.ts';
import { useWords, type Words } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import type { KnownPart } from './known-how.tsx';

const MOST = 1_000_000;

/** What the buyer said of it beyond what the ad can say: none of it was read, so putting it back leaves nothing. */
export const ownParts = ({ t }: Words, item: Item): KnownPart[] =>
  (['plan', 'resale', 'weighed'] as const).map((field) => ({
    path: `${item.id}.${field}`,
    name: t(`bundle_name_${field}`),
    fact: item[field],
    was: null,
  }));

interface Props {
  readonly item: Item;
  /** Currency of the buyer's rates. */
  readonly currency: string;
}

export function PlanField({ item, currency }: Props) {
  const { t } = useWords();
  const { set, putBack } = useEdits();
  const path = `${item.id}.plan`;
  const plan = item.plan?.value ?? 'keep';
  return (
    <div class="line-plan">
      <ChoiceField
        path={path}
        label={t('bundle_plan')}
        labelShown
        value={plan}
        options={PLANS.map((value) => ({ value, words: t(`bundle_plan_${value}`) }))}
        onChoice={(value) => (value === 'keep' ? putBack(path) : set({ path, value }))}
      />
      {plan === 'sell' && <Resale item={item} currency={currency} />}
    </div>
  );
}

function Resale({ item, currency }: Props) {
  const { say, t } = useWords();
  const hint = useId();
  const { set, putBack } = useEdits();
  const path = `${item.id}.resale`;
  return (
    <>
      <NumberField
        path={path}
        label={t('bundle_resale')}
        labelShown
        value={item.resale ? inMajor(item.resale.value) : null}
        write={(value) => say.number(value)}
        parse={parseAmount}
        low={0}
        high={MOST}
        complaint={t('bundle_bad_resale', { most: MOST })}
        onValue={(value) => set({ path, value, unit: currency })}
        onEmpty={() => putBack(path)}
        width={5}
        hint={hint}
        unit={item.resale?.value.currency ?? currency}
      />
      <p id={hint} class="line-notes">
        {t('bundle_resale_how')}
      </p>
    </>
  );
}
