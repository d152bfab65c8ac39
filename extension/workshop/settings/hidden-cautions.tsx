/** Cautions that were read and put away, to be shown again. */
import { CAUTIONS } from '../../../src/flags/cautions.ts';
import { useWords } from '../../components/speech.ts';
import type { Shown } from './use-settings.ts';

export function HiddenCautions({ shown }: { readonly shown: Shown }) {
  const { t } = useWords();
  const hidden = CAUTIONS.filter((kind) => shown.settings.hiddenCautions.includes(kind));
  const words = (kind: string): string => t(`caution_${kind.replaceAll('-', '_')}`);
  return (
    <div class="setting" data-setting="hiddenCautions">
      <h3>{t('settings_hidden')}</h3>
      <span class="setting-why">{t('settings_hidden_why')}</span>
      {hidden.length === 0 && <p>{t('settings_hidden_none')}</p>}
      <ul class="plain-list">
        {hidden.map((kind) => (
          <li key={kind}>
            {words(kind)}{' '}
            <button
              type="button"
              class="bare"
              data-show={kind}
              onClick={() => shown.change((now) => ({ hiddenCautions: now.hiddenCautions.filter((one) => one !== kind) }))}
            >
              {t('settings_hidden_show')}
              <span class="unseen">: {words(kind)}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
