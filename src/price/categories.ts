import type { Item } from '../listing/reading.ts';
import type { RateCategory } from '../listing/settings.ts';

/** Categories priced by weight; the others are priced per piece. */
const BY_WEIGHT: ReadonlySet<RateCategory> = new Set([
  'iron',
  'machined',
  'calibrated',
  'rubber-coated',
  'bumper',
  'micro',
  'one-inch-plate',
  'dumbbell',
  'kettlebell',
]);
export const isByWeight = (category: RateCategory): boolean => BY_WEIGHT.has(category);

const isOneInch = (item: Item): boolean => item.fits?.value === '25mm' || (item.boreMm !== null && item.boreMm.value < 40);

function plateCategory(item: Item): RateCategory {
  if (isOneInch(item)) return 'one-inch-plate';
  const grade = item.grade?.value;
  if (grade === 'calibrated' || grade === 'machined' || grade === 'rubber-coated') return grade;
  const material = item.material?.value;
  return material === 'rubber' || material === 'urethane' ? 'rubber-coated' : 'iron';
}

/** Which row of the rates table prices an item; null when none does. */
export function categoryOf(item: Item): RateCategory | null {
  const kind = item.kind.value;
  if (kind === 'plate') return plateCategory(item);
  if (kind === 'bar') return isOneInch(item) || (item.sleeveMm !== null && item.sleeveMm.value < 40) ? 'one-inch-bar' : 'bar';
  return kind === 'other' ? null : kind;
}
