import { playFaults } from './faults/play.ts';

playFaults('chromium');
