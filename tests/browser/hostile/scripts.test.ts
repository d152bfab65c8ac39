import { clobbering } from './clobbering.ts';
import { interference } from './interference.ts';
import { overridden } from './overridden.ts';
import { playHostile } from './play.ts';

playHostile({
  'names that hide properties': clobbering,
  'what is built in, spoiled': overridden,
  'pages that interfere': interference,
});
