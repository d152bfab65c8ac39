/** For the Workshop: has the platform use webextension-polyfill. Import it first. */
import polyfill from 'webextension-polyfill';
import { handInApi } from './browser.ts';

handInApi(polyfill);
