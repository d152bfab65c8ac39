/** What a sweep's list is. */
import type { Words } from '../../components/speech.ts';
import type { Swept } from './sweep-host.ts';

/** What the list is, in words. */
export const listWords = ({ t }: Words, { state, ads }: Swept): string =>
  state === 'nothing' ? t('sweep_nothing') : t('sweep_heading', { n: ads.length });

export const isRunning = ({ state }: Swept): boolean => state === 'reading' || state === 'watching';
