/** The speaker for the strings of the locale, for every part. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { message, type Param } from '../../src/words/message.ts';
import { type Speaker, speaker } from '../../src/words/say.ts';

export const Speech = createContext<Speaker>(speaker({}, 'en'));

export interface Words {
  readonly say: Speaker;
  /** A string of `_locales` by its key. */
  readonly t: (key: string, params?: Readonly<Record<string, Param>>) => string;
}

export const wordsOf = (say: Speaker): Words => ({ say, t: (key, params) => say(message(key, params)) });
export const useWords = (): Words => wordsOf(useContext(Speech));
