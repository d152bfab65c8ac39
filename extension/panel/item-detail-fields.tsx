/** The rest of a line's values: kind, sleeve, hole, shaft, length; and taking the line out. */
import { type Item, isPlate, KINDS } from '../../src/listing/reading.ts';
import type { MassUnit } from '../../src/units/mass.ts';
import { ChoiceField } from '../components/choice-field.tsx';
import { NumberField } from '../components/number-field.tsx';
import { parseMillimetres } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';
import { hasBore, hasFit, isBar } from './item-parts.ts';
import { itemName, keyTail } from './item-words.ts';
import { isAdded } from './session.ts';
import { WeighedField } from './weighed-field.tsx';

interface Props {
  readonly item: Item;
  readonly before: Item | null;
}

type LengthField = 'boreMm' | 'shaftMm' | 'lengthMm';

/** Limits in mm, wide enough for anything sold: a field only has to catch slips. */
const LIMITS: Readonly<Record<LengthField, readonly [number, number]>> = {
  boreMm: [15, 90],
  shaftMm: [15, 60],
  lengthMm: [500, 3000],
};

export function ItemDetailFields({ item, before, unit }: Props & { readonly unit: MassUnit }) {
  const words = useWords();
  const { t } = words;
  const { set, putBack, putBackItem } = useEdits();
  const kind = item.kind.value;
  const fits = `${item.id}.fits`;
  return (
    <div class="detail-fields">
      <ChoiceField
        path={`${item.id}.kind`}
        label={t('panel_kind')}
        labelShown
        value={kind}
        options={KINDS.map((value) => ({ value, words: t(`panel_kind_${keyTail(value)}`) }))}
        onChoice={(value) => set({ path: `${item.id}.kind`, value })}
      />
      {hasFit(kind) && (
        <ChoiceField
          path={fits}
          label={t('panel_fits')}
          labelShown
          value={item.fits?.value ?? ''}
          options={['50mm', '25mm', ''].map((value) => ({
            value,
            words: t(value ? `panel_sleeve_${value}` : 'panel_not_known'),
          }))}
          onChoice={(value) => (value === '' && !before?.fits ? putBack(fits) : set({ path: fits, value: value || null }))}
        />
      )}
      {hasBore(kind) && <Millimetres item={item} before={before} field="boreMm" />}
      {isPlate(kind) && <WeighedField item={item} unit={unit} />}
      {isBar(kind) && <Millimetres item={item} before={before} field="shaftMm" />}
      {isBar(kind) && <Millimetres item={item} before={before} field="lengthMm" />}
      <button
        type="button"
        data-remove={item.id}
        onClick={() => (isAdded(item.id) ? putBackItem(item.id) : set({ path: item.id, value: null }))}
        aria-label={t('panel_remove_item', { item: itemName(words, item) })}
      >
        {t('panel_remove')}
      </button>
    </div>
  );
}

function Millimetres({ item, before, field }: Props & { readonly field: LengthField }) {
  const { say, t } = useWords();
  const { set, putBack } = useEdits();
  const path = `${item.id}.${field}`;
  const [low, high] = LIMITS[field];
  return (
    <NumberField
      path={path}
      label={t(`panel_${field}`)}
      labelShown
      value={item[field]?.value ?? null}
      write={(value) => say.number(value, 1)}
      parse={parseMillimetres}
      low={low}
      high={high}
      complaint={t('panel_bad_length', { low, high })}
      onValue={(value) => set({ path, value: Math.round(value * 100) / 100 })}
      onEmpty={before?.[field] ? undefined : () => putBack(path)}
      width={6}
      unit={t('panel_unit_mm')}
    />
  );
}
