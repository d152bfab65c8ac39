import { keys } from './keys.ts';
import { markup } from './markup.ts';
import { playHostile } from './play.ts';
import { policies } from './policies.ts';
import { signs } from './signs.ts';

playHostile({
  'markup in every field': markup,
  'keys and structured data': keys,
  'odd signs': signs,
  'strict policies': policies,
});
