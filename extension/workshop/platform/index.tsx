/** A platform to build: layers that come out flush with the rack's floor, the sheets and how they are cut, screws, price, cautions. */
import { useState } from 'preact/hooks';
import { nearestLayers, type PlatformPlan, platformPlan } from '../../../src/kit/platform.ts';
import { FLUSH_MM, USUAL_PLATFORM } from '../../../src/kit/status.ts';
import type { KitFigures } from '../../../src/listing/settings.ts';
import { inOwn } from '../../../src/price/exchange.ts';
import { millimetresToInches } from '../../../src/units/length.ts';
import { money } from '../../../src/units/money.ts';
import { scale } from '../../../src/units/range.ts';
import { likelyAndSpan } from '../../components/figures.ts';
import { NumberField } from '../../components/number-field.tsx';
import { parseMillimetres } from '../../components/parse-input.ts';
import { useWords, type Words } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';
import type { OpenKit } from '../kit/use-kit.ts';
import { CutSheets } from './cut-sheets.tsx';

type Room = NonNullable<KitFigures['platform']>;

const LIMITS: Readonly<Record<keyof Room, readonly [number, number]>> = {
  rackFloorMm: [10, 150],
  widthMm: [600, 6000],
  depthMm: [600, 6000],
};

const sheetName = ({ t }: Words, id: string): string => t(`kit_sheet_${keyTail(id)}`);
const inMm = (words: Words, mm: number, digits = 0): string =>
  words.t('kit_mm_in', { mm: words.say.number(mm, digits), inches: words.say.number(millimetresToInches(mm), 2) });

export function Platform({ kit }: { readonly kit: OpenKit }) {
  const words = useWords();
  const { say, t } = words;
  const stored = kit.figures?.platform ?? null;
  const [typed, setTyped] = useState<Room>(stored ?? USUAL_PLATFORM);
  const layers = nearestLayers(typed.rackFloorMm);
  const plan = platformPlan({ ...typed, toleranceMm: FLUSH_MM, layers });
  const put = (change: Partial<Room>) => {
    const next = { ...typed, ...change };
    setTyped(next);
    // Without a kit nothing is kept: trying a size is no setting up.
    if (kit.figures) kit.save({ platform: next });
  };
  return (
    <>
      <p class="kit-headline" data-flush={plan.flush}>
        {flushWords(words, plan)}
      </p>
      <div class="kit-fields no-print">
        {(['rackFloorMm', 'widthMm', 'depthMm'] as const).map((name) => (
          <NumberField
            key={name}
            path={name}
            label={t(`kit_platform_${name}`)}
            labelShown
            value={typed[name]}
            write={(value) => say.number(value, 0)}
            parse={parseMillimetres}
            low={LIMITS[name][0]}
            high={LIMITS[name][1]}
            complaint={t('panel_bad_length', { low: LIMITS[name][0], high: LIMITS[name][1] })}
            onValue={(value) => put({ [name]: value })}
            width={7}
            unit={t('pickup_mm_or_any')}
          />
        ))}
      </div>
      {stored === null && <p class="quiet no-print">{t('kit_platform_unmeasured')}</p>}
      <section aria-labelledby="platform-layers">
        <h2 id="platform-layers">{t('kit_layers')}</h2>
        <ol class="kit-layers" data-layers>
          {[...plan.layers].reverse().map((layer, index) => (
            <li key={index}>{sheetName(words, layer)}</li>
          ))}
        </ol>
        <p>
          {t('kit_stack', {
            height: inMm(words, plan.heightMm.likely, 1),
            low: say.number(plan.heightMm.low, 1),
            high: say.number(plan.heightMm.high, 1),
            wide: inMm(words, plan.widthMm),
            deep: inMm(words, plan.depthMm),
          })}
        </p>
        {plan.layers.length > 1 && <p>{t('kit_crossed')}</p>}
        {plan.loose && <p data-loose>{t('kit_loose')}</p>}
        {plan.isPart && (
          <p data-room>{t('kit_platform_part', { wide: inMm(words, typed.widthMm), deep: inMm(words, typed.depthMm) })}</p>
        )}
        {!plan.surely && <p>{t('kit_not_surely')}</p>}
      </section>
      <Shopping kit={kit} plan={plan} />
      <CutSheets plan={plan} />
      <section aria-labelledby="platform-care">
        <h2 id="platform-care">{t('kit_care')}</h2>
        <ul class="plain-list">
          {plan.turnWithTwo && <li data-two>{t('kit_care_two')}</li>}
          <li>{t('kit_care_flush', { most: FLUSH_MM })}</li>
          {plan.sheets.some(({ sheet }) => sheet === 'mdf-3/4') && <li>{t('kit_care_dust')}</li>}
          <li>{t('kit_care_floor')}</li>
        </ul>
      </section>
      <p class="no-print">
        <button type="button" data-print onClick={() => print()}>
          {t('kit_print_platform')}
        </button>
      </p>
    </>
  );
}

function flushWords(words: Words, { flush, tooLow, shimMm, heightMm }: PlatformPlan): string {
  if (flush) return words.t('kit_flush', { most: FLUSH_MM });
  if (tooLow) return words.t('kit_too_low', { by: inMm(words, shimMm), most: inMm(words, heightMm.likely) });
  return words.t(shimMm > 0 ? 'kit_shim' : 'kit_shim_rack', { by: inMm(words, Math.abs(shimMm), 1) });
}

/** Sheets and screws to buy, what they cost and weigh. */
function Shopping({ kit, plan }: { readonly kit: OpenKit; readonly plan: PlatformPlan }) {
  const words = useWords();
  const { t } = words;
  const dollar = inOwn(money(1, 'USD'), kit.settings);
  return (
    <section aria-labelledby="platform-shopping">
      <h2 id="platform-shopping">{t('kit_shopping')}</h2>
      <ul class="plain-list" data-shopping>
        {plan.bought.map(({ sheet, count }) => (
          <li key={sheet}>{t('kit_counted', { count, name: sheetName(words, sheet) })}</li>
        ))}
        {plan.screws && <li>{t('kit_screws', { count: plan.screws.count, longest: inMm(words, plan.screws.longestMm) })}</li>}
      </ul>
      <p>
        {t('kit_platform_price', {
          price: likelyAndSpan(words, { ...scale(plan.price, dollar.minor), currency: dollar.currency }),
        })}{' '}
        {plan.pounds !== null && t('kit_platform_weight', { weight: { weight: { value: Math.round(plan.pounds), unit: 'lb' } } })}
      </p>
    </section>
  );
}
