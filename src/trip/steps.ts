/** The drive line by line, for "How was this worked out?". */
import type { Step } from '../listing/evaluation.ts';
import type { Settings } from '../listing/settings.ts';
import { exponentOf } from '../units/money.ts';
import { exactly, type Range } from '../units/range.ts';
import { type Message, message } from '../words/message.ts';
import type { Drive } from './drive.ts';
import { mileageSource, rateOf } from './mileage-rates.ts';

type Basis = Step['basis'];

const line = (id: string, label: Message, result: Range, unit: Step['unit'], basis: Basis, source: Message | null): Step => ({
  id,
  label,
  result,
  unit,
  basis,
  source,
});

const BASIS_OF_DISTANCE: Readonly<Record<Drive['basis'], Basis>> = {
  typed: 'stated',
  stated: 'stated',
  'between-places': 'worked-out',
};

const SOURCE_OF_DISTANCE: Readonly<Record<Drive['basis'], string>> = {
  typed: 'distance_typed',
  stated: 'distance_stated',
  'between-places': 'distance_between_places',
};

/** What a mile and an hour cost and how fast one gets on: the buyer's, so they stand there before any distance is known. */
function assumptions(settings: Settings): Step[] {
  const { perMile, hourWorth, speedMph, currency } = settings;
  const minor = 10 ** exponentOf(currency);
  const rate = rateOf(perMile, currency);
  const mileage = rate === null ? message('mileage_own') : mileageSource(rate);
  const hour = exactly(hourWorth * minor);
  const ofDrive = { group: 'drive', currency } as const;
  return [
    {
      ...line('per-mile', message('step_per_mile'), exactly(perMile * minor), 'money-per-mi', 'assumed', mileage),
      ...ofDrive,
      edit: 'perMile',
    },
    { ...line('hour', message('step_hour'), hour, 'money', 'assumed', message('source_hour')), ...ofDrive, edit: 'hourWorth' },
    { ...line('speed', message('step_speed'), exactly(speedMph), 'mph', 'assumed', null), ...ofDrive, edit: 'speedMph' },
  ];
}

/**
 * Distance, driving, time, tolls and van, each with where it comes from; parts that cost nothing because there are none are left out.
 * Before a distance is known, what the drive would be worked out from.
 */
export function tripSteps(drive: Drive | null, settings: Settings): Step[] {
  const assumed = assumptions(settings);
  if (drive === null) return assumed;
  const { parts, way } = drive;
  const { currency } = settings;
  const rate = rateOf(settings.perMile, currency);
  const cost = (id: string, label: Message, part: Range, basis: Basis, source: Message | null, formula?: Message): Step => ({
    ...line(id, label, part, 'money', basis, source),
    currency,
    ...(formula && { formula }),
  });
  const steps = [
    ...assumed,
    line('distance', message('step_distance'), drive.miles, 'mi', BASIS_OF_DISTANCE[drive.basis], {
      key: SOURCE_OF_DISTANCE[drive.basis],
    }),
    cost(
      'driving',
      way.times > 1 ? message('step_driving_times', { n: way.times }) : message('step_driving'),
      parts.driving,
      'worked-out',
      rate === null ? message('mileage_own') : mileageSource(rate),
      message('formula_driving'),
    ),
    cost('time', message('step_time'), parts.time, 'worked-out', message('source_hour'), message('formula_time')),
  ];
  if (parts.tolls.likely > 0) steps.push(cost('tolls', message('step_tolls'), parts.tolls, 'stated', message('mileage_own')));
  if (parts.van.likely > 0) steps.push(cost('van', message('step_van'), parts.van, 'stated', way.why));
  steps.push(cost('trip', message('step_trip'), drive.total, 'worked-out', null, message('formula_trip')));
  return steps;
}
