/** One thing on offer: count times weight in the line, the rest one click away. */
import { useState } from 'preact/hooks';
import type { Item } from '../../src/listing/reading.ts';
import { inPounds, type MassUnit } from '../../src/units/mass.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { useEvidence } from '../components/evidence.ts';
import { poundsIn } from '../components/figures.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseCount, parseNumber } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import { ItemDetailFields } from './item-detail-fields.tsx';
import { hasWeight, itemDetails, itemParts } from './item-parts.ts';
import { itemName, kindWords } from './item-words.ts';
import { SetByYou, useKnownHow } from './known-how.tsx';
import { ownParts, PlanField } from './plan-field.tsx';

export interface ItemLineProps {
  readonly item: Item;
  readonly unit: MassUnit;
  /** Currency in which it would be sold on. */
  readonly currency: string;
  /** Whether the ad offers other things too, so that there is something to choose. */
  readonly amongOthers: boolean;
}

const MOST_PIECES = 1000;
const MOST_WEIGHT = 1000;

export function ItemLine({ item, unit, currency, amongOthers }: ItemLineProps) {
  const words = useWords();
  const { say, t } = words;
  const { set, putBack, asRead } = useEdits();
  const before = asRead?.items.find((one) => one.id === item.id) ?? null;
  const evidence = useEvidence(item.evidence);
  const parts = [...itemParts(words, item, before), ...ownParts(words, item)];
  const known = useKnownHow(parts);
  const [unitToBe, setUnitToBe] = useState<MassUnit>(unit);
  const weightUnit = item.unitWeight?.value.unit ?? unitToBe;
  const count = `${item.id}.count`;
  const weight = `${item.id}.unitWeight`;
  const details = itemDetails(words, item);
  return (
    <li class="line" data-line={item.id} {...evidence}>
      <fieldset aria-label={itemName(words, item)}>
        <div class="line-main">
          <span class="line-name">{kindWords(words, item)}</span>
          <NumberField
            path={count}
            label={t('panel_count')}
            value={item.count?.value ?? null}
            write={(value) => say.number(value)}
            parse={parseCount}
            low={1}
            high={MOST_PIECES}
            complaint={t('panel_bad_count', { most: MOST_PIECES })}
            onValue={(value) => set({ path: count, value })}
            onEmpty={before?.count ? undefined : () => putBack(count)}
            width={3}
          />
          {hasWeight(item.kind.value) && (
            <>
              <span class="times" aria-hidden="true">
                {t('panel_times')}
              </span>
              <NumberField
                path={weight}
                label={t('panel_unit_weight')}
                value={item.unitWeight?.value.value ?? null}
                write={(value) => say.number(value, 3)}
                parse={parseNumber}
                low={0.1}
                high={MOST_WEIGHT}
                complaint={t('panel_bad_weight', { most: MOST_WEIGHT })}
                onValue={(value) => set({ path: weight, value, unit: weightUnit })}
                onEmpty={before?.unitWeight ? undefined : () => putBack(weight)}
                width={5}
              />
              <ChoiceField
                path={`${weight}.unit`}
                label={t('panel_weight_unit')}
                value={weightUnit}
                options={(['lb', 'kg'] as const).map((value) => ({ value, words: t(`panel_unit_${value}`) }))}
                onChoice={(chosen) => {
                  setUnitToBe(chosen === 'kg' ? 'kg' : 'lb');
                  if (item.unitWeight) set({ path: weight, value: item.unitWeight.value.value, unit: chosen });
                }}
              />
              {item.totalWeight && (
                <span class="line-total">
                  {t('panel_line_total', { weight: poundsIn(words, inPounds(item.totalWeight.value), unit) })}
                </span>
              )}
            </>
          )}
        </div>
        {amongOthers && <PlanField item={item} currency={currency} />}
        <details class="line-details">
          <summary>
            {details === '' ? t('panel_no_details') : details}
            {known && <span class="line-basis"> · {known}</span>}
            <span class="unseen"> {t('panel_more_of', { item: itemName(words, item) })}</span>
          </summary>
          <ItemDetailFields item={item} before={before} unit={unit} />
        </details>
        <SetByYou parts={parts} />
      </fieldset>
    </li>
  );
}
