/** The drive line by line, for "How was this worked out?". */
import type { Step } from '../listing/evaluation.ts';
import type { Settings } from '../listing/settings.ts';
import type { Range } from '../units/range.ts';
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

/** Distance, driving, time, tolls and van, each with where it comes from; parts that cost nothing because there are none are left out. */
export function tripSteps(drive: Drive | null, settings: Settings): Step[] {
  if (drive === null) return [];
  const { parts, way } = drive;
  const rate = rateOf(settings.perMile, settings.currency);
  const steps = [
    line('distance', message('step_distance'), drive.miles, 'mi', BASIS_OF_DISTANCE[drive.basis], {
      key: SOURCE_OF_DISTANCE[drive.basis],
    }),
    line(
      'driving',
      way.times > 1 ? message('step_driving_times', { n: way.times }) : message('step_driving'),
      parts.driving,
      'money',
      'assumed',
      rate === null ? message('mileage_own') : mileageSource(rate),
    ),
    line('time', message('step_time'), parts.time, 'money', 'assumed', message('source_hour')),
  ];
  if (parts.tolls.likely > 0)
    steps.push(line('tolls', message('step_tolls'), parts.tolls, 'money', 'stated', message('mileage_own')));
  if (parts.van.likely > 0) steps.push(line('van', message('step_van'), parts.van, 'money', 'stated', way.why));
  steps.push(line('trip', message('step_trip'), drive.total, 'money', 'worked-out', null));
  return steps;
}
