/**
 * The script that reads every ad of a results page. Put into a page only when the buyer asks for it, beside the capture script, which
 * stays small. It is put in anew for every sweep: at the end of one it listens to nothing any more.
 */
import { answerMessages, Failure } from '../../platform/messages.ts';
import { markLatest, replaceEarlier } from '../generation.ts';
import { type Sweep, startSweep } from './session.ts';

let sweep: Sweep | null = null;

/** The sweep that a message is about; a message about an earlier one has nothing to act on. */
const current = (run: string): Sweep => {
  if (sweep?.run !== run) throw new Failure('gone');
  return sweep;
};

const stopAnswering = answerMessages({
  sweep: () => {
    sweep ??= startSweep(() => leave());
    return null;
  },
  'sweep-stop': () => {
    sweep?.stop();
    return null;
  },
  'sweep-tags': ({ run, tags }) => {
    current(run).tag(tags);
    return null;
  },
  'sweep-show': ({ run, id }) => {
    current(run).show(id);
    return null;
  },
  'sweep-mark': ({ run, id, spans }) => current(run).mark(id, spans),
});

replaceEarlier('sweep');
const leave = markLatest('sweep', () => {
  stopAnswering();
  sweep?.stop();
  sweep = null;
});
