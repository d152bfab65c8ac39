/** Which bar, the weight of its collars, and the room on its sleeves. */
import type { LoadedBar } from '../../../../src/kit/plates.ts';
import type { KitFigures } from '../../../../src/listing/settings.ts';
import type { MassUnit } from '../../../../src/units/mass.ts';
import { ChoiceField } from '../../../components/choice-field.tsx';
import { NumberField } from '../../../components/number-field.tsx';
import { parseMillimetres, parseNumber } from '../../../components/parse-input.ts';
import { useWords } from '../../../components/speech.ts';
import type { Owned } from '../../../store/index.ts';
import { thingName } from '../thing-words.ts';
import type { OpenKit } from '../use-kit.ts';

export interface BarFieldsProps {
  readonly kit: OpenKit;
  readonly figures: KitFigures;
  readonly bars: readonly Owned[];
  readonly own: Owned | null;
  readonly bar: LoadedBar;
  readonly unit: MassUnit;
  readonly onBar: (id: string) => void;
}

const SLEEVE = { low: 50, high: 600 } as const;
const HEAVIEST_COLLARS = 30;

export function BarFields({ kit, figures, bars, own, bar, unit, onBar }: BarFieldsProps) {
  const words = useWords();
  const { say, t } = words;
  const { save } = kit;
  const weight = t('panel_one_weight', { weight: { weight: bar.weight } });
  return (
    <section aria-labelledby="kit-bar" class="no-print">
      <h2 id="kit-bar">{t('kit_bar')}</h2>
      {own === null && <p>{t('kit_bar_none', { weight })}</p>}
      {own !== null && own.weight === null && <p>{t('kit_bar_unweighed', { weight })}</p>}
      <div class="kit-fields">
        {bars.length > 1 && (
          <ChoiceField
            path="bar"
            label={t('kit_which_bar')}
            labelShown
            value={own?.id ?? ''}
            options={bars.map((one) => ({ value: one.id, words: thingName(words, one) }))}
            onChoice={onBar}
          />
        )}
        <NumberField
          path="collars"
          label={t('kit_collars')}
          labelShown
          value={figures.collars?.value ?? null}
          write={(value) => say.number(value, 2)}
          parse={parseNumber}
          low={0.01}
          high={HEAVIEST_COLLARS}
          complaint={t('kit_bad_number', { low: 0.01, high: HEAVIEST_COLLARS })}
          onValue={(value) => save({ collars: { value, unit: figures.collars?.unit ?? unit } })}
          onEmpty={() => save({ collars: null })}
          unit={figures.collars?.unit ?? unit}
        />
        <NumberField
          path="sleeveLength"
          label={t('kit_sleeve')}
          labelShown
          value={figures.sleeveLengthMm}
          write={(value) => say.number(value, 0)}
          parse={parseMillimetres}
          low={SLEEVE.low}
          high={SLEEVE.high}
          complaint={t('panel_bad_length', { low: SLEEVE.low, high: SLEEVE.high })}
          onValue={(sleeveLengthMm) => save({ sleeveLengthMm })}
          onEmpty={() => save({ sleeveLengthMm: null })}
          width={6}
          hint="kit-sleeve-hint"
          unit={t('pickup_mm_or_any')}
        />
      </div>
      <p class="line-notes" id="kit-sleeve-hint">
        {t('kit_sleeve_hint')}
      </p>
    </section>
  );
}
