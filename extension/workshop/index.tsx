/** The Workshop's entry: the full page beside the panel, one screen at a time. */
import '../platform/page-api.ts';
import { render } from 'preact';
import { directionOf } from '../../src/words/write-figures.ts';
import { showWholeFields } from '../components/whole-fields.ts';
import { browserHost } from './browser-host.ts';
import { Workshop } from './workshop.tsx';

const host = browserHost();
// Opens while the frame is drawn and the screen fetched; whoever asks for it later gets the same.
void host.store();
showWholeFields();
document.documentElement.lang = host.locale;
document.documentElement.dir = directionOf(host.locale);
const root = document.getElementById('workshop');
if (root) render(<Workshop host={host} />, root);
