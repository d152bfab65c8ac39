import { playStories } from './stories/play.ts';

playStories('firefox');
