import { PAGES } from './pages.ts';
import { playHostile } from './play.ts';

playHostile(PAGES.documents);
