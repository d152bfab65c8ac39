/** What the drive costs the buyer: a mile, an hour, tolls, and what the vehicle takes. Kept for every ad. */
import type { Settings } from '../../src/listing/settings.ts';
import { MILE_IN_KILOMETRES } from '../../src/units/length.ts';
import { convert, pounds } from '../../src/units/mass.ts';
import { NumberField } from '../components/number-field.tsx';
import { parseAmount, parseMillimetres, parseNumber } from '../components/parse-input.ts';
import { PublishedMileage } from '../components/published-mileage.tsx';
import { useWords } from '../components/speech.ts';
import type { TypedDistance } from './session.ts';

interface Props {
  readonly settings: Settings;
  readonly unit: TypedDistance['unit'];
  readonly onSettings: (changed: Partial<Settings>) => void;
}

/** Limits in major units, mm and pounds, wide enough for anybody: a field only has to catch slips. */
const DEAREST = 100_000;
const LENGTH = [300, 20_000] as const;
const PAYLOAD_LB = [20, 50_000] as const;

interface AmountProps {
  readonly path: string;
  readonly label: string;
  readonly value: number | null;
  readonly digits?: number;
  readonly onValue: (value: number) => void;
  readonly onEmpty?: () => void;
}

function Amount({ path, label, value, digits = 2, onValue, onEmpty }: AmountProps) {
  const { say, t } = useWords();
  return (
    <NumberField
      path={path}
      label={label}
      labelShown
      value={value}
      write={(amount) => say.number(amount, digits)}
      parse={parseAmount}
      low={0}
      high={DEAREST}
      complaint={t('drive_bad_amount')}
      onValue={onValue}
      onEmpty={onEmpty}
      width={6}
    />
  );
}

export function DriveCosts({ settings, unit, onSettings }: Props) {
  const { say, t } = useWords();
  const { currency, perMile, hourWorth, tolls, van, longestMm, payloadLb } = settings;
  const perKilometre = unit === 'km';
  const milesIn = perKilometre ? MILE_IN_KILOMETRES : 1;
  /** Pounds in the buyer's unit of weight. */
  const each = convert(pounds(1), settings.unit).value;
  return (
    <details class="drive-costs">
      <summary>{t('drive_costs')}</summary>
      <div class="detail-fields">
        <Amount
          path="settings.perMile"
          label={t(perKilometre ? 'drive_per_km' : 'drive_per_mile', { currency })}
          value={perMile / milesIn}
          digits={4}
          onValue={(value) => onSettings({ perMile: value * milesIn })}
        />
        <PublishedMileage
          path="settings.perMile.published"
          label={t('drive_published')}
          settings={settings}
          onPerMile={(value) => onSettings({ perMile: value })}
        />
        <Amount
          path="settings.hourWorth"
          label={t('drive_per_hour', { currency })}
          value={hourWorth}
          onValue={(value) => onSettings({ hourWorth: value })}
        />
        <Amount
          path="settings.tolls"
          label={t('drive_tolls', { currency })}
          value={tolls}
          onValue={(value) => onSettings({ tolls: value })}
          onEmpty={() => onSettings({ tolls: 0 })}
        />
        <Amount
          path="settings.van"
          label={t('drive_van', { currency })}
          value={van?.cost ?? null}
          onValue={(cost) => onSettings({ van: { cost, per: 'trip' } })}
          onEmpty={() => onSettings({ van: null })}
        />
        <NumberField
          path="settings.longestMm"
          label={t('drive_longest')}
          labelShown
          value={longestMm}
          write={(value) => say.number(value, 0)}
          parse={parseMillimetres}
          low={LENGTH[0]}
          high={LENGTH[1]}
          complaint={t('drive_bad_length')}
          onValue={(value) => onSettings({ longestMm: value })}
          onEmpty={() => onSettings({ longestMm: null })}
          width={6}
        />
        <NumberField
          path="settings.payloadLb"
          label={t('drive_payload', { unit: settings.unit })}
          labelShown
          value={payloadLb === null ? null : payloadLb * each}
          write={(value) => say.number(value, 0)}
          parse={parseNumber}
          low={PAYLOAD_LB[0] * each}
          high={PAYLOAD_LB[1] * each}
          complaint={t('drive_bad_payload')}
          onValue={(value) => onSettings({ payloadLb: value / each })}
          onEmpty={() => onSettings({ payloadLb: null })}
          width={6}
        />
      </div>
      <p class="quiet">{t('drive_costs_note')}</p>
    </details>
  );
}
