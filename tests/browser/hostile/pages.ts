/** All hostile pages: groups by what they do, in three sets that are played at the same time. */
import type { HostileCase } from './case.ts';
import { clobbering } from './clobbering.ts';
import { documents } from './documents.ts';
import { frames } from './frames.ts';
import { huge } from './huge.ts';
import { interference } from './interference.ts';
import { keys } from './keys.ts';
import { markup } from './markup.ts';
import { overridden } from './overridden.ts';
import { policies } from './policies.ts';
import { signs } from './signs.ts';
import { styles } from './styles.ts';

export type Groups = Readonly<Record<string, readonly HostileCase[]>>;

export const PAGES = {
  words: {
    'markup in every field': markup,
    'keys and structured data': keys,
    'odd signs': signs,
    'strict policies': policies,
  },
  scripts: {
    'names that hide properties': clobbering,
    'what is built in, spoiled': overridden,
    'pages that interfere': interference,
  },
  documents: {
    'large and deep': huge,
    'shadow trees and frames': frames,
    'styles against everything': styles,
    'other documents': documents,
  },
} satisfies Readonly<Record<string, Groups>>;
