/** What nobody sets: that nothing is sent, and whose work the extension carries. */
import { useWords } from '../../components/speech.ts';

export function About() {
  const { t } = useWords();
  return (
    <div class="setting">
      <p>{t('about_private')}</p>
      <a href="NOTICES.txt" target="_blank" rel="noreferrer">
        {t('about_notices')}
      </a>
    </div>
  );
}
