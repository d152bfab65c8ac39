/** The weighings as text, what can't be read of them, and the pairing that follows. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { chalked, worstAsGiven } from '../../../src/kit/chalk.ts';
import { pairUp, type WeighedPlate } from '../../../src/kit/pairing.ts';
import { swapsTo } from '../../../src/kit/swaps.ts';
import { MOST_WEIGHINGS, readWeighings, type Weighing } from '../../../src/kit/weighings.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { inPounds, type MassUnit } from '../../../src/units/mass.ts';
import { Announcer } from '../../components/announcer.tsx';
import { ChoiceField } from '../../components/choice-field.tsx';
import { NumberField } from '../../components/number-field.tsx';
import { parseNumber } from '../../components/parse-input.ts';
import { useWords } from '../../components/speech.ts';
import { useOneAtATime } from '../../components/use-one-at-a-time.ts';
import type { WorkshopHost } from '../host.ts';
import { useComplaint, useStore } from '../use-store.tsx';
import { loadDraft, saveDraft } from './draft.ts';
import { keepWeighings, ownedAsText } from './owned-weighings.ts';
import { PairList } from './pair-list.tsx';

export interface BenchProps {
  readonly host: WorkshopHost;
  readonly settings: Settings;
  /** What stands there at first, where nothing was typed before. */
  readonly first: string;
  /** Under which name what is typed is remembered. */
  readonly draft: string;
  /** The pairs were asked for: opened, it is they that take the focus. */
  readonly atPairs?: boolean;
}

/** Heaviest plate and bar with its collars, by unit. */
const USUAL: Readonly<Record<MassUnit, { readonly face: number; readonly bar: number }>> = {
  lb: { face: 45, bar: 45 },
  kg: { face: 20, bar: 20 },
};
const HEAVIEST = 1000;

/** Numbered as they were written down, so that a plate is found again on the floor. */
const platesOf = (read: readonly Weighing[]): WeighedPlate[] =>
  read.flatMap(({ weight, face }, index) =>
    face === null ? [] : [{ id: `${index + 1}`, face: Math.round(inPounds(face) * 100) / 100, pounds: inPounds(weight) }],
  );

export function Bench({ host, settings, first, draft, atPairs = false }: BenchProps) {
  const { say, t } = useWords();
  const store = useStore();
  const { complaint, checked } = useComplaint();
  const { once } = useOneAtATime();
  const [text, setText] = useState(() => loadDraft(draft) || first);
  const [unit, setUnit] = useState<MassUnit>(settings.unit);
  const [face, setFace] = useState(USUAL[settings.unit].face);
  const [bar, setBar] = useState(USUAL[settings.unit].bar);
  const [done, setDone] = useState<string | null>(null);
  const { read, misread } = useMemo(() => readWeighings(text, { value: face, unit }, unit, say.decimal), [text, face, unit, say]);
  const plates = useMemo(() => platesOf(read), [read]);
  const pairing = useMemo(() => pairUp(plates, inPounds({ value: bar, unit })), [plates, bar, unit]);
  const pairs = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (atPairs) pairs.current?.focus();
  }, []);
  const write = (next: string) => {
    setText(next);
    saveDraft(draft, next);
    setDone(null);
  };
  const fromKit = async () => {
    const owned = checked(await store.kit.owned.all());
    if (owned === null) return;
    const kit = ownedAsText(owned, say);
    if (kit === '') return setDone(t('weigh_kit_unweighed'));
    // Below what stands there: nothing that was typed is lost.
    write([text.trimEnd(), kit].filter((one) => one !== '').join('\n'));
  };
  const toKit = async () => {
    const kept = checked(await keepWeighings(store, read, host.now()));
    if (kept !== null) setDone(t('weigh_kept', { n: read.length }));
  };
  const weight = (path: string, label: string, value: number, onValue: (value: number) => void) => (
    <NumberField
      path={path}
      label={label}
      labelShown
      value={value}
      write={(one) => say.number(one)}
      parse={parseNumber}
      low={0.1}
      high={HEAVIEST}
      complaint={t('panel_bad_weight', { most: HEAVIEST })}
      onValue={onValue}
      unit={unit}
    />
  );
  const complaints = misread
    .slice(0, 5)
    .map(({ line, text: part, why }) => t(`weigh_misread_${why.replace('-', '_')}`, { line, part, most: MOST_WEIGHINGS }));
  return (
    <>
      <section class="no-print" aria-label={t('weigh_weighings')}>
        <div class="weigh-fields">
          {weight('face', t('weigh_face'), face, setFace)}
          {weight('bar', t('weigh_bar'), bar, setBar)}
          <ChoiceField
            path="unit"
            label={t('weigh_unit')}
            labelShown
            value={unit}
            options={(['lb', 'kg'] as const).map((value) => ({ value, words: value }))}
            onChoice={(value) => {
              const chosen = value === 'kg' ? 'kg' : 'lb';
              setUnit(chosen);
              // Figures that were never touched follow the unit; others stay as typed.
              if (face === USUAL[unit].face) setFace(USUAL[chosen].face);
              if (bar === USUAL[unit].bar) setBar(USUAL[chosen].bar);
            }}
          />
        </div>
        <label class="weigh-text">
          <span class="field-label">{t('weigh_weighings')}</span>
          <textarea
            rows={6}
            data-path="weighings"
            value={text}
            aria-describedby="weigh-how weigh-misread"
            onInput={(event) => write(event.currentTarget.value)}
          />
        </label>
        <p id="weigh-how" class="line-notes">
          {t('weigh_how', { most: MOST_WEIGHINGS })}
        </p>
        <Announcer onlyChanges text={[t('weigh_read', { n: read.length }), ...complaints].join(' ')} />
        <div id="weigh-misread">
          <p>{t('weigh_read', { n: read.length })}</p>
          {complaints.length > 0 && (
            <ul class="plain-list complaint">
              {complaints.map((complaint, index) => (
                <li key={index}>{complaint}</li>
              ))}
              {misread.length > 5 && <li>{t('weigh_misread_more', { n: misread.length - 5 })}</li>}
            </ul>
          )}
        </div>
        <p class="weigh-buttons">
          <button type="button" data-from-kit onClick={() => once(fromKit)}>
            {t('weigh_from_kit')}
          </button>
          <button type="button" data-to-kit disabled={read.length === 0} onClick={() => once(toKit)}>
            {t('weigh_to_kit')}
          </button>
        </p>
        {done && <p role="status">{done}</p>}
        {complaint && <p role="alert">{complaint}</p>}
      </section>
      {pairing.pairs.length > 0 && (
        <PairList
          heading={pairs}
          pairing={pairing}
          pairs={chalked(pairing)}
          asGiven={worstAsGiven(plates)}
          swaps={swapsTo(pairing.pairs, plates)}
          unit={unit}
        />
      )}
    </>
  );
}
