import { playFaults } from './faults/play.ts';

playFaults('firefox');
