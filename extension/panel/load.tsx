/** What each bar would do under the buyer's load: folded away, for it is an estimate. */
import type { Item } from '../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../src/listing/settings.ts';
import type { BarEstimate } from '../../src/mechanics/estimates.ts';
import { convert, inPounds, pounds } from '../../src/units/mass.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseNumber } from '../components/parse-input.ts';
import { useWords } from '../components/speech.ts';
import { nameOf } from './item-words.ts';

export interface LoadProps {
  readonly estimates: readonly BarEstimate[];
  readonly items: readonly Item[];
  readonly settings: Settings;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

const MOST = 2000;

export function Load({ estimates, items, settings, onSettings }: LoadProps) {
  const words = useWords();
  const { say, t } = words;
  if (estimates.length === 0) return null;
  const { unit, loadLb } = settings;
  return (
    <details class="working load">
      <summary>
        <h2>{t('load_heading')}</h2>
      </summary>
      <NumberField
        path="loadLb"
        label={t('load_of')}
        labelShown
        value={convert(pounds(loadLb), unit).value}
        write={(value) => say.number(value, 1)}
        parse={parseNumber}
        low={1}
        high={MOST}
        complaint={t('load_bad', { most: { weight: { value: MOST, unit } } })}
        onValue={(value) => onSettings({ loadLb: inPounds({ value, unit }) })}
        width={5}
        unit={t(`panel_unit_${unit}`)}
      />
      {loadLb === DEFAULT_SETTINGS.loadLb && (
        <p class="quiet">{t('load_assumed', { load: { weight: convert(pounds(loadLb), unit) } })}</p>
      )}
      {estimates.map(({ item, says, caution }) => (
        <div key={item} data-estimate={item}>
          {estimates.length > 1 && <h3>{nameOf(words, items, item)}</h3>}
          <ul class="plain-list">
            {says.map((one) => (
              <li key={one.key}>{say(one)}</li>
            ))}
          </ul>
          <p class="quiet">{say(caution)}</p>
        </div>
      ))}
    </details>
  );
}
