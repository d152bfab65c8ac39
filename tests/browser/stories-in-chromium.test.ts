import { playStories } from './stories/play.ts';

playStories('chromium');
