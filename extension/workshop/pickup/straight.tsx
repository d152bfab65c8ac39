/** How straight a bar is, measured in one of four ways; what follows goes into the find at once. */
import { useState } from 'preact/hooks';
import type { Item } from '../../../src/listing/reading.ts';
import {
  type BarMeasure,
  type Straightness,
  straightnessBefore,
  straightnessCorrections,
  straightnessOf,
  straightnessPaths,
} from '../../../src/pickup/straightness.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseMillimetres } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import type { OpenFind } from '../finds/use-find.ts';
import { WAY_DRAWINGS } from './drawings/index.ts';

type Way = BarMeasure['way'];

/**
 * What is measured in each way. The length of a shaft stands there until it is measured: that of a full bar, and a shorter one has less bow
 * by the same reading. Everything else must be measured, for a guess could make a bent bar straight.
 */
const FIELDS: Readonly<Record<Way, Readonly<Record<string, number | null>>>> = {
  wobble: { readingMm: null },
  string: { offsetMm: null },
  stringAt: { offsetMm: null, atMm: null, lengthMm: 1310 },
  circle: { circleMm: null, spanMm: null, overhangMm: null, bendMm: null, shaftMm: 1310 },
};
const WAYS = ['wobble', 'string', 'stringAt', 'circle'] as const;
const MOST = 3000;

type Figures = Readonly<Record<string, number | null>>;

/** Null until every figure of the way is there. */
const measureOf = (way: Way, figures: Figures): BarMeasure | null =>
  Object.keys(FIELDS[way]).every((field) => typeof figures[field] === 'number') ? ({ way, ...figures } as BarMeasure) : null;

export interface StraightProps {
  readonly item: Item;
  readonly name: string;
  readonly record: OpenFind['record'];
}

export function Straight({ item, name, record }: StraightProps) {
  const { say, t } = useWords();
  const [way, setWay] = useState<Way>('wobble');
  const [figures, setFigures] = useState<Figures>(FIELDS.wobble);
  const [found, setFound] = useState<Straightness | 'impossible' | null>(null);
  const Drawing = WAY_DRAWINGS[way];
  const use = (next: Figures) => {
    setFigures(next);
    const measure = measureOf(way, next);
    const result = measure && straightnessOf(measure);
    setFound(measure && !result ? 'impossible' : result);
    record(straightnessPaths(item.id), result ? straightnessCorrections(item.id, result) : []);
  };
  return (
    <div class="bar-check" data-bar={item.id}>
      <ChoiceField
        path={`${item.id}.way`}
        label={t('pickup_way', { item: name })}
        labelShown
        value={way}
        options={WAYS.map((value) => ({ value, words: t(`pickup_way_${value}`) }))}
        onChoice={(value) => {
          const chosen = WAYS.find((one) => one === value) ?? 'wobble';
          // What was found stays in force until the other way has found something.
          setWay(chosen);
          setFigures(FIELDS[chosen]);
        }}
      />
      <Drawing name={t(`pickup_drawing_${way}`)} />
      <p>{t(`pickup_how_${way}`)}</p>
      {Object.keys(FIELDS[way]).map((field) => (
        <NumberField
          key={`${way} ${field}`}
          path={`${item.id}.${field}`}
          label={t(`pickup_${way}_${field}`)}
          labelShown
          value={figures[field] ?? null}
          write={(value) => say.number(value, 1)}
          parse={parseMillimetres}
          low={0}
          high={MOST}
          complaint={t('panel_bad_length', { low: 0, high: MOST })}
          onValue={(value) => use({ ...figures, [field]: value })}
          onEmpty={() => use({ ...figures, [field]: null })}
          width={6}
          unit={t('pickup_mm_or_any')}
        />
      ))}
      {way === 'circle' && typeof figures.circleMm === 'number' && measureOf(way, figures) === null && (
        <p class="quiet">{t('pickup_bow_all_figures')}</p>
      )}
      <Verdict item={item} found={found} />
    </div>
  );
}

function Verdict({ item, found }: { readonly item: Item; readonly found: Straightness | 'impossible' | null }) {
  const { t } = useWords();
  if (found === 'impossible') return <p role="alert">{t('pickup_bow_impossible')}</p>;
  if (found === null) {
    const before = straightnessBefore(item);
    if (before === null) return null;
    return (
      <p class="verdict-line" data-before={before.verdict}>
        {before.bowMm === null ? t('pickup_bow_before_unmeasured') : t('pickup_bow_before', { bow: { mm: before.bowMm } })}{' '}
        {t(`pickup_bow_${before.verdict}`)}
      </p>
    );
  }
  const { low, likely, high } = found.bowMm;
  const bow =
    low === high
      ? t('pickup_bow', { bow: { mm: likely } })
      : t('pickup_bow_between', { low: { mm: low }, bow: { mm: likely }, high: { mm: high } });
  return (
    <p class="verdict-line" data-verdict={found.verdict}>
      {bow} {t(`pickup_bow_${found.verdict}`)} {found.open && t('pickup_bow_open')}
    </p>
  );
}
