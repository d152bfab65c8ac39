/** The panel's entry: one ad, beside its page. */
import '../platform/page-api.ts';
import { render } from 'preact';
import { evaluate } from '../../src/evaluate.ts';
import { browserHost } from './browser-host.ts';
import { Panel } from './panel.tsx';

const host = browserHost();
document.documentElement.lang = host.locale;
document.title = host.strings.extName ?? '';
const root = document.getElementById('panel');
if (root) render(<Panel host={host} judge={evaluate} />, root);
