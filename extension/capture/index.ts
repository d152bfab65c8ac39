/**
 * The script that is put into a page when the buyer asks: takes the selection or lets a block be picked, and marks words.
 * Injected again, it replaces itself; left over after an update of the extension, it makes way for its successor.
 */
import { answerMessages } from '../platform/messages.ts';
import { markLatest, replaceEarlier } from './generation.ts';
import { clearMarks, showMarks } from './marks.ts';
import { startPicking } from './pick/index.ts';
import { report, type Taken } from './report.ts';
import { takeSelection } from './take-selection.ts';

let taken: Taken | null = null;
let leavePicking: (() => void) | null = null;

const keep = (captured: Taken): void => {
  taken = captured;
  clearMarks();
  void report(captured);
};

const stopAnswering = answerMessages({
  take: ({ mode }) => {
    leavePicking?.();
    const selected = mode === 'pick' ? null : takeSelection(document);
    if (selected) {
      keep(selected);
      return 'selection';
    }
    if (mode === 'selection') return 'nothing';
    leavePicking = startPicking({
      take: (captured) => {
        leavePicking = null;
        keep(captured);
      },
      leave: () => {
        leavePicking = null;
      },
    });
    return 'pick';
  },
  highlight: ({ spans }) => showMarks(taken, spans),
  'clear-highlight': () => {
    clearMarks();
    return null;
  },
});

replaceEarlier('capture');
markLatest('capture', () => {
  stopAnswering();
  leavePicking?.();
  clearMarks();
});
