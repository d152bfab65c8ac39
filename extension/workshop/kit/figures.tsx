/** The lifter's figures: what the list of needs follows from. Every good value counts at once. */
import type { MassUnit } from '../../../src/units/mass.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseNumber } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { firstFigures } from './save.ts';
import type { OpenKit } from './use-kit.ts';

const PLATES = ['lb', 'kg', 'mixed'] as const;
/** Best lift and jump, in either unit. */
const LIMITS = { best: [20, 2000], jump: [0.1, 100] } as const;

export function Figures({ kit }: { readonly kit: OpenKit }) {
  const { say, t } = useWords();
  const figures = kit.figures ?? firstFigures(kit.settings);
  const { save } = kit;
  const unit = (name: 'best' | 'jump') => (
    <ChoiceField
      path={`${name}-unit`}
      label={t(`kit_${name}_unit`)}
      value={figures[name].unit}
      options={(['lb', 'kg'] as const).map((value) => ({ value, words: value }))}
      onChoice={(value) => save({ [name]: { ...figures[name], unit: value as MassUnit } })}
    />
  );
  return (
    <div class="kit-fields">
      {(['best', 'jump'] as const).map((name) => (
        <span class="field" key={name}>
          <NumberField
            path={name}
            label={t(`kit_${name}`)}
            labelShown
            value={figures[name].value}
            write={(value) => say.number(value)}
            parse={parseNumber}
            low={LIMITS[name][0]}
            high={LIMITS[name][1]}
            complaint={t('kit_bad_number', { low: LIMITS[name][0], high: LIMITS[name][1] })}
            onValue={(value) => save({ [name]: { ...figures[name], value } })}
          >
            {unit(name)}
          </NumberField>
        </span>
      ))}
      <ChoiceField
        path="plates"
        label={t('kit_plates')}
        labelShown
        value={figures.plates}
        options={PLATES.map((value) => ({ value, words: t(`kit_plates_${value}`) }))}
        onChoice={(value) => save({ plates: PLATES.find((one) => one === value) ?? 'lb' })}
      />
      <label class="tick">
        <input
          type="checkbox"
          data-path="olympicLifts"
          checked={figures.olympicLifts}
          onChange={(event) => save({ olympicLifts: event.currentTarget.checked })}
        />
        {t('kit_olympic')}
      </label>
    </div>
  );
}
