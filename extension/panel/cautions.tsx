/** The usual cautions where they matter. One that was read can be put away, but never one that a deal-breaker stands behind. */
import type { Caution } from '../../src/flags/cautions.ts';
import type { Settings } from '../../src/listing/settings.ts';
import { useWords } from '../components/speech.ts';

export interface CautionsProps {
  readonly cautions: readonly Caution[];
  readonly settings: Settings;
  readonly onSettings: (changed: Partial<Settings>) => void;
}

export function Cautions({ cautions, settings, onSettings }: CautionsProps) {
  const { say, t } = useWords();
  const { hiddenCautions } = settings;
  const isHidden = ({ kind, bound }: Caution): boolean => !bound && hiddenCautions.includes(kind);
  const shown = cautions.filter((caution) => !isHidden(caution));
  const hidden = cautions.length - shown.length;
  if (cautions.length === 0) return null;
  return (
    <section aria-labelledby="cautions-heading" class="cautions">
      <h2 id="cautions-heading">{t('caution_heading')}</h2>
      {shown.length > 0 && (
        <ul class="plain-list">
          {shown.map(({ kind, says, bound }) => (
            <li key={kind} data-caution={kind}>
              {say(says)}{' '}
              {!bound && (
                <button
                  type="button"
                  class="bare"
                  aria-label={t('caution_hide', { caution: say(says) })}
                  onClick={() => onSettings({ hiddenCautions: [...hiddenCautions, kind] })}
                >
                  {t('caution_hide_short')}
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
      {hidden > 0 && (
        <button
          type="button"
          class="bare"
          data-show-cautions
          onClick={() =>
            onSettings({ hiddenCautions: hiddenCautions.filter((kind) => !cautions.some((one) => one.kind === kind)) })
          }
        >
          {t('caution_show_again', { n: hidden })}
        </button>
      )}
    </section>
  );
}
