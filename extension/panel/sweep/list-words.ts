/** What a sweep's list is. */
import type { Words } from '../../components/speech.ts';
import type { Swept } from './sweep-host.ts';

/** What the list is, in words. */
export const listWords = ({ t }: Words, { state, ads }: Swept): string =>
  state === 'nothing' ? t('sweep_nothing') : t('sweep_heading', { n: ads.length });

/** What is said of it by itself: also why it ends, for that may have been nobody's wish. */
export const listSaid = (words: Words, swept: Swept): string =>
  isRunning(swept) ? listWords(words, swept) : `${listWords(words, swept)}. ${words.t(`sweep_state_${swept.state}`)}`;

export const isRunning = ({ state }: Swept): boolean => state === 'reading' || state === 'watching';
