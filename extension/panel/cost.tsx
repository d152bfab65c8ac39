/** What the iron costs, drawn to scale beside the going rate and new delivered. */
import type { MoneyRange, Rate, Sound, Worth } from '../../src/listing/evaluation.ts';
import type { Item } from '../../src/listing/reading.ts';
import type { MassUnit } from '../../src/units/mass.ts';
import { figure, likely, likelyAndSpan, perWords, poundsIn, span } from '../components/figures.ts';
import { type ChartRow, RangeChart } from '../components/range-chart.tsx';
import { useWords, type Words } from '../components/speech.ts';
import { keyTail, nameOf } from './item-words.ts';

export interface CostProps {
  readonly worth: Worth;
  readonly items: readonly Item[];
  readonly unit: MassUnit;
}

/** The ad's own rate: for a usable pound where there are plates, for the whole lot otherwise. Null without a price. */
export const ownRate = (worth: Worth): Rate | null =>
  worth.perUsablePound ?? (worth.allIn ? { ...worth.allIn, per: 'lot' } : null);

/** The baselines that stand on the same footing as the ad's own rate. */
export function baselines(worth: Worth): { readonly going: Rate | null; readonly fresh: Rate | null } {
  const forLot = (range: MoneyRange | null): Rate | null => (range ? { ...range, per: 'lot' } : null);
  if (worth.perUsablePound) return { going: worth.goingRate, fresh: worth.newDelivered };
  return {
    going: worth.goingRate?.per === 'lot' ? worth.goingRate : forLot(worth.goingWorth),
    fresh: worth.newDelivered?.per === 'lot' ? worth.newDelivered : forLot(worth.newWorth),
  };
}

export function Cost({ worth, items, unit }: CostProps) {
  const words = useWords();
  const { t } = words;
  const own = ownRate(worth);
  const { going, fresh } = baselines(worth);
  const per = t(`panel_cost_per_${(own ?? going ?? fresh)?.per ?? 'lot'}`);
  const rows = [
    ...(own ? [chartRow(words, 'own', t('panel_row_own'), own)] : []),
    ...(going ? [chartRow(words, 'going', t('panel_row_going'), going)] : []),
    ...(fresh ? [chartRow(words, 'new', t('panel_row_new'), fresh)] : []),
  ];
  const scale = own ?? going ?? fresh;
  return (
    <section
      class="cost"
      aria-labelledby="cost-heading"
      data-per-usable-pound={JSON.stringify(bare(worth.perUsablePound))}
      data-new-delivered={JSON.stringify(bare(worth.newDelivered))}
    >
      <h2 id="cost-heading">{per}</h2>
      {own ? (
        <p class="cost-figure">
          <strong>{likely(words, own)}</strong> {own.low < own.high && <span>{span(words, own)}</span>}
        </p>
      ) : (
        <p>{t('panel_cost_unknown')}</p>
      )}
      {scale && rows.length > 1 && (
        <RangeChart
          caption={per}
          rows={rows}
          writeTick={(minor) => words.say.money({ minor: Math.round(minor), currency: scale.currency })}
        />
      )}
      <LearnedFrom worth={worth} />
      {worth.sound && <SoundOne sound={worth.sound} />}
      <Usable worth={worth} items={items} unit={unit} />
    </section>
  );
}

const bare = (rate: Rate | null) =>
  rate && { low: rate.low, likely: rate.likely, high: rate.high, currency: rate.currency, per: rate.per };

const chartRow = (words: Words, id: string, label: string, rate: Rate): ChartRow => ({
  id,
  label,
  low: rate.low,
  likely: rate.likely,
  high: rate.high,
  words: {
    low: figure(words, rate.low, rate),
    likely: likely(words, rate),
    high: figure(words, rate.high, rate),
    span: span(words, rate),
    per: perWords(words, rate),
  },
  own: id === 'own',
});

/** That a going rate comes from the buyer's own finds, for the same ad may have been judged otherwise before they were kept. */
function LearnedFrom({ worth }: { readonly worth: Worth }) {
  const { say } = useWords();
  return worth.steps
    .filter(({ fromFinds }) => fromFinds)
    .map(({ id, label, source }) => (
      <p key={id} class="quiet" data-learned={id}>
        {say(label)}: {source && say(source)}
      </p>
    ));
}

/** What is on offer is good for nothing: beside its price stands what a sound one costs. */
function SoundOne({ sound }: { readonly sound: Sound }) {
  const words = useWords();
  const used = likelyAndSpan(words, sound.used);
  const fresh = likelyAndSpan(words, sound.fresh);
  return <p data-sound={sound.kind}>{words.t(`working_sound_${sound.per}`, { used, fresh })}</p>;
}

function Usable({ worth, items, unit }: CostProps) {
  const words = useWords();
  const { t } = words;
  if (worth.offered.likely <= 0 && worth.losses.length === 0) return null;
  return (
    <div class="usable">
      <p>
        {t('panel_usable', {
          usable: poundsIn(words, worth.usable.likely, unit),
          offered: poundsIn(words, worth.offered.likely, unit),
        })}
      </p>
      {worth.surplus.length > 0 && (
        <ul class="surplus">
          {worth.surplus.map(({ item, pounds }) => (
            <li key={item}>
              {t('bundle_surplus', { item: nameOf(words, items, item) ?? item, weight: poundsIn(words, pounds, unit) })}
            </li>
          ))}
        </ul>
      )}
      {worth.losses.length > 0 && (
        <ul>
          {worth.losses.map((loss) => (
            <li key={`${loss.item} ${loss.reason}`}>
              {t(loss.pounds > 0 ? 'panel_loss' : 'panel_loss_unweighed', {
                item: nameOf(words, items, loss.item) ?? loss.item,
                weight: poundsIn(words, loss.pounds, unit),
                reason: t(`panel_loss_${keyTail(loss.reason)}`),
              })}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
