/** The reading, line by line: every value in its place, to be checked against the page and corrected. */
import type { Reading as ReadingType } from '../../src/listing/reading.ts';
import { inPounds, type MassUnit } from '../../src/units/mass.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { useEvidence } from '../components/evidence.ts';
import { poundsIn } from '../components/figures.ts';
import { useWords } from '../components/speech.ts';
import { AddLine } from './add-line.tsx';
import { useEdits } from './edits.ts';
import { ItemLine } from './item-line.tsx';
import { itemName } from './item-words.ts';
import { PriceLine } from './price-line.tsx';
import { isTakenOut } from './session.ts';

export interface ReadingProps {
  readonly reading: ReadingType;
  readonly currency: string;
  readonly unit: MassUnit;
}

export function Reading({ reading, currency, unit }: ReadingProps) {
  const { t } = useWords();
  return (
    <section aria-labelledby="reading-heading">
      <h2 id="reading-heading">{t('panel_reading')}</h2>
      <ul class="lines">
        <PriceLine asking={reading.asking} currency={currency} />
        {reading.items.map((item) => (
          <ItemLine key={item.id} item={item} unit={unit} currency={currency} amongOthers={reading.items.length > 1} />
        ))}
        <Total reading={reading} unit={unit} />
        <GoneLines reading={reading} />
      </ul>
      <AddLine />
      <ReadAs language={reading.language} />
    </section>
  );
}

/** The language that the ad was read in; another choice reads it anew. */
function ReadAs({ language }: { readonly language: ReadingType['language'] }) {
  const { t } = useWords();
  const { set } = useEdits();
  const options = (['en', 'de'] as const).map((value) => ({ value, words: t(`panel_language_${value}`) }));
  return (
    <p class="read-as">
      <ChoiceField
        path="language"
        label={t('panel_read_as')}
        labelShown
        value={language}
        options={options}
        onChoice={(value) => set({ path: 'language', value })}
      />
    </p>
  );
}

function Total({ reading, unit }: Pick<ReadingProps, 'reading' | 'unit'>) {
  const words = useWords();
  const { t } = words;
  const evidence = useEvidence(reading.statedTotal?.evidence ?? []);
  const sum = reading.items.reduce((total, item) => total + (item.totalWeight ? inPounds(item.totalWeight.value) : 0), 0);
  if (sum === 0 && !reading.statedTotal) return null;
  return (
    <li class="line line-sum" data-line="total" {...evidence}>
      <p>
        {sum > 0 && t('panel_sum', { weight: poundsIn(words, sum, unit) })}{' '}
        {reading.statedTotal && t('panel_stated_total', { weight: { weight: reading.statedTotal.value } })}
      </p>
    </li>
  );
}

/** Lines that don't count: taken out by the buyer, or gone by the ad's own words. */
function GoneLines({ reading }: Pick<ReadingProps, 'reading'>) {
  const words = useWords();
  const { t } = words;
  const { session, asRead, putBack } = useEdits();
  const removed = (asRead?.items ?? []).filter((item) => isTakenOut(session, item.id));
  return (
    <>
      {reading.sold
        .filter((item) => !removed.some((one) => one.id === item.id))
        .map((item) => (
          <li key={`sold ${item.id}`} class="line line-gone">
            {t('panel_sold', { item: itemName(words, item) })}
          </li>
        ))}
      {removed.map((item) => (
        <li key={`removed ${item.id}`} class="line line-gone">
          {t('panel_removed', { item: itemName(words, item) })}{' '}
          <button type="button" class="bare" data-put-back={item.id} onClick={() => putBack(item.id)}>
            {t('panel_put_back')}
            <span class="unseen"> {itemName(words, item)}</span>
          </button>
        </li>
      ))}
    </>
  );
}
