/** One drive over all places of the list, where it is known where they are. */
import type { TripPlace } from '../../../src/kit/buy-list/consider.ts';
import { MOST_STOPS, oneDrive } from '../../../src/kit/buy-list/one-drive.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import { addressOf } from '../route.ts';
import type { Names } from './names.ts';

export interface DriveProps {
  readonly places: readonly TripPlace[];
  readonly settings: Settings;
  readonly names: Names;
}

export function Drive({ places, settings, names }: DriveProps) {
  const { t } = useWords();
  if (places.length < 2) return null;
  const drive = oneDrive(places, settings);
  const nameOf = (id: string): string => {
    const place = places.find((one) => one.id === id);
    return place?.name ?? place?.at?.name ?? t('buy_somewhere');
  };
  return (
    <section aria-labelledby="buy-drive" data-drive>
      <h2 id="buy-drive">{t('buy_drive')}</h2>
      {drive === null ? (
        <p class="quiet">
          {t(settings.home === null ? 'buy_drive_no_home' : places.length > MOST_STOPS ? 'buy_drive_many' : 'buy_drive_unknown', {
            most: MOST_STOPS,
          })}{' '}
          {settings.home === null && <a href={addressOf('settings')}>{t('workshop_settings')}</a>}
        </p>
      ) : (
        <>
          <ol class="buy-drive">
            {drive.round.order.map((id) => (
              <li key={id} data-stop={id}>
                {nameOf(id)}
              </li>
            ))}
          </ol>
          <p data-round>
            {t('buy_round', {
              miles: names.distance(drive.round.miles),
              cost: names.money(Math.round(drive.round.cost.likely)),
            })}{' '}
            {drive.round.saved.minor > 0 && t('buy_round_saves', { saved: names.money(drive.round.saved.minor) })}
          </p>
          {drive.without.length > 0 && (
            <p class="quiet">{t('buy_round_without', { names: drive.without.map(({ id }) => nameOf(id)).join('; ') })}</p>
          )}
        </>
      )}
    </section>
  );
}
