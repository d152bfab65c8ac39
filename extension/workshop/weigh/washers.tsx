/** Stacks of flat washers in place of micro plates. */
import { useState } from 'preact/hooks';
import { type WasherWish, washerFit, washerOffer } from '../../../src/kit/washer-offer.ts';
import { WASHERS, type Washer } from '../../../src/kit/washers.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { pricesOf } from '../../../src/price/rates.ts';
import { inchesToMillimetres, millimetresToInches } from '../../../src/units/length.ts';
import { convert, inPounds, pounds } from '../../../src/units/mass.ts';
import { exponentOf } from '../../../src/units/money.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseAmount, parseMillimetres, parseNumber } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';
import { WasherAnswer } from './washer-answer.tsx';

/** A measured one starts from the commonest. Inches. */
const MEASURED = { holeIn: 2.125, outsideIn: 3.75, thicknessIn: 0.18 };
const SIZES = ['holeIn', 'outsideIn', 'thicknessIn'] as const;
/** Buyers' sleeves: competition bars have 50 mm, some others up to 52. */
const SLEEVES = [50, 52] as const;

export function Washers({ settings }: { readonly settings: Settings }) {
  const { say, t } = useWords();
  const { unit, currency } = settings;
  const [id, setId] = useState(WASHERS[0]?.id ?? 'measured');
  const [sizes, setSizes] = useState(MEASURED);
  const [weighed, setWeighed] = useState<number | null>(null);
  const [wanted, setWanted] = useState(unit === 'lb' ? 1.25 : 0.5);
  const [tolerance, setTolerance] = useState(unit === 'lb' ? 0.1 : 0.05);
  const [each, setEach] = useState<number | null>(null);
  const measured: Washer = {
    id: 'measured',
    ...sizes,
    thinnestIn: sizes.thicknessIn,
    thickestIn: sizes.thicknessIn,
    source: 'measured',
  };
  const washer = WASHERS.find((one) => one.id === id) ?? measured;
  const possible = washer.outsideIn > washer.holeIn;
  const inLb = (value: number): number => inPounds({ value, unit });
  const wish: WasherWish = {
    pounds: inLb(wanted),
    tolerance: inLb(tolerance),
    each: each === null ? null : Math.round(each * 10 ** exponentOf(currency)),
    microPerPound: pricesOf('micro', settings)?.delivered ?? null,
  };
  const number = (path: string, value: number | null, onValue: (value: number) => void, onEmpty?: () => void) => (
    <NumberField
      path={path}
      label={t(`weigh_${path.replaceAll('-', '_')}`)}
      labelShown
      value={value}
      write={(one) => say.number(one, 3)}
      parse={path === 'washer-each' ? parseAmount : parseNumber}
      low={0.001}
      high={100}
      complaint={t('weigh_bad_number', { most: 100 })}
      onValue={onValue}
      onEmpty={onEmpty}
      unit={path === 'washer-each' ? currency : unit}
    />
  );
  return (
    <section aria-labelledby="washers-heading" class="washers no-print">
      <h2 id="washers-heading">{t('weigh_washers')}</h2>
      <p>{t('weigh_washers_why')}</p>
      <div class="weigh-fields">
        {number('washer-wanted', wanted, setWanted)}
        {number('washer-tolerance', tolerance, setTolerance)}
        <ChoiceField
          path="washer"
          label={t('weigh_washer')}
          labelShown
          value={id}
          options={[
            ...WASHERS.map((one) => ({
              value: one.id,
              words: t('weigh_washer_named', {
                name: t(`weigh_washer_${keyTail(one.id).replaceAll('-', '_')}`),
                hole: say.number(one.holeIn, 3),
                outside: say.number(one.outsideIn, 3),
                thickness: say.number(one.thicknessIn, 3),
              }),
            })),
            { value: 'measured', words: t('weigh_washer_measured') },
          ]}
          onChoice={setId}
        />
        {id === 'measured' &&
          SIZES.map((size) => (
            <NumberField
              key={size}
              path={size}
              label={t(`weigh_${size}`)}
              labelShown
              value={inchesToMillimetres(sizes[size])}
              write={(one) => say.number(one, 2)}
              parse={parseMillimetres}
              low={0.5}
              high={300}
              complaint={t('panel_bad_length', { low: 0.5, high: 300 })}
              onValue={(value) => setSizes({ ...sizes, [size]: millimetresToInches(value) })}
              width={6}
              unit={t('pickup_mm_or_any')}
            />
          ))}
        {number('washer-weighed', weighed, setWeighed, () => setWeighed(null))}
        {number('washer-each', each, setEach, () => setEach(null))}
      </div>
      {possible ? (
        <WasherAnswer
          offer={washerOffer(washer, wish, weighed === null ? null : inLb(weighed))}
          wanted={convert(pounds(wish.pounds), unit)}
          isWeighed={weighed !== null}
          currency={currency}
          fits={SLEEVES.map((sleeve) => ({ sleeve, fit: washerFit(washer, sleeve) }))}
        />
      ) : (
        <p role="alert">{t('weigh_washer_impossible')}</p>
      )}
      <p class="line-notes">{t(`weigh_washer_source_${washer.source}`)}</p>
    </section>
  );
}
