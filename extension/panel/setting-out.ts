/** What setting out is worth, in plain sentences. */
import type { Prospect, Trip } from '../../src/listing/evaluation.ts';
import type { Words } from '../components/speech.ts';

/** The saving on average, the chance of a drive for nothing, and how far and up to which price it pays. None when nothing can be said. */
export function settingOut(words: Words, trip: Trip | null, prospect: Prospect | null): string[] {
  const { t } = words;
  if (prospect === null) {
    if (trip === null) return [];
    return [trip.breakEven ? t('drive_pays_distance', { distance: { distance: trip.breakEven } }) : t('drive_no_saving')];
  }
  return [average(words, prospect), forNothing(words, prospect), limits(words, prospect)].filter((one) => one !== '');
}

function average({ t }: Words, { saving, afterDrive }: Prospect): string {
  if (saving.minor <= 0) return t('drive_no_saving');
  if (afterDrive === null) return t('drive_saves_before', { saving: { money: whole(saving) } });
  if (afterDrive.minor < 0) return t('drive_loses', { loss: { money: whole({ ...afterDrive, minor: -afterDrive.minor }) } });
  return t('drive_saves', { saving: { money: whole(afterDrive) } });
}

/** From this chance on it is as good as sure; below the other one it is as good as never. */
const SURE = 0.95;
const NEVER = 0.02;
/** Up to here "1 time in" is near enough: of the steps one half, a third, a quarter the first are too far apart. */
const ONE_IN = 0.3;

/** A chance as people say it: one time in so many, or so many times in ten. */
function forNothing({ t }: Words, { refusal, saving }: Prospect): string {
  if (saving.minor <= 0 || refusal < NEVER) return '';
  if (refusal >= SURE) return t('drive_refuse_sure');
  if (refusal <= ONE_IN) return t('drive_refuse_one_in', { n: Math.round(1 / refusal) });
  return t('drive_refuse_of_ten', { n: Math.round(10 * refusal) });
}

function limits({ t }: Words, { saving, breakEvenDistance, breakEvenPrice }: Prospect): string {
  const distance = breakEvenDistance === null ? null : { distance: breakEvenDistance };
  const price = breakEvenPrice === null || breakEvenPrice.minor <= 0 ? null : { money: breakEvenPrice };
  // With nothing to save, only a lower price brings a saving back.
  if (saving.minor <= 0 || distance === null) return price === null ? '' : t('drive_pays_price', { price });
  return price === null ? t('drive_pays_distance', { distance }) : t('drive_pays_both', { distance, price });
}

/** Averages are not known to the cent. */
const whole = (money: Prospect['saving']): Prospect['saving'] =>
  Math.abs(money.minor) < 1000 ? money : { ...money, minor: Math.round(money.minor / 100) * 100 };
