/** The panel's entry: one ad, beside its page. It shows itself first; the core, which is large, comes behind it. */
import { render } from 'preact';
import { directionOf } from '../../src/words/write-figures.ts';
import { showWholeFields } from '../components/whole-fields.ts';
import { learnKeys } from '../platform/index.ts';
import { browserHost } from './browser-host.ts';
import { type Judge, Panel } from './panel.tsx';
import { warmUp } from './warm-up.tsx';

const host = browserHost();
showWholeFields();
document.documentElement.lang = host.locale;
document.documentElement.dir = directionOf(host.locale);
document.title = host.strings.extName ?? '';
const root = document.getElementById('panel');
if (root) {
  render(<Panel host={host} judge={null} />, root);
  Promise.all([import('../../src/evaluate.ts'), import('../../src/sensitivity.ts'), learnKeys()]).then(
    ([{ evaluate }, { turnsOf }]) => {
      let asked = false;
      const judge: Judge = (...given) => {
        asked = true;
        return evaluate(...given);
      };
      render(<Panel host={host} judge={judge} turnsOf={turnsOf} />, root);
      warmUp(host, evaluate, () => asked);
    },
    (error: unknown) => console.error('Ironsift:', error),
  );
}
