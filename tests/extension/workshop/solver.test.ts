import { expect, it } from 'vitest';
import type { Answer, Request } from '../../../extension/workshop/buy-list/messages.ts';
import { makeSolver, SolverStopped, type SolverWorker } from '../../../extension/workshop/buy-list/solver.ts';

const program = { variables: [], objective: [], rows: [] };

/** Workers that are answered by hand. */
function fakeWorkers() {
  const made: { asked: Request[]; ended: boolean; say(answer: Answer): void; break(message: string): void }[] = [];
  const start = (): SolverWorker => {
    const events = new EventTarget();
    const one = {
      asked: [] as Request[],
      ended: false,
      say: (data: Answer) => events.dispatchEvent(Object.assign(new Event('message'), { data })),
      break: (message: string) => events.dispatchEvent(Object.assign(new Event('error'), { message })),
    };
    made.push(one);
    return {
      postMessage: (message: Request) => one.asked.push(message),
      terminate: () => {
        one.ended = true;
      },
      addEventListener: events.addEventListener.bind(events),
    } as SolverWorker;
  };
  return { made, solver: makeSolver(start) };
}

it('starts no worker before there is a program, and one for all', async () => {
  const { made, solver } = fakeWorkers();
  expect(made).toHaveLength(0);
  const both = [solver.solve(program), solver.solve(program)];
  expect(made).toHaveLength(1);
  // Answers go to whom they belong, in whatever order they come.
  made[0]?.say({ id: 2, failed: 'broken' });
  made[0]?.say({ id: 1, solution: { status: 'infeasible' } });
  await expect(both[0]).resolves.toEqual({ status: 'infeasible' });
  await expect(both[1]).rejects.toThrow('broken');
});

it('stops at once, tells those who wait, and starts anew', async () => {
  const { made, solver } = fakeWorkers();
  const stopped = expect(solver.solve(program)).rejects.toThrow(SolverStopped);
  solver.stop();
  await stopped;
  expect(made[0]?.ended).toBe(true);
  const next = solver.solve(program);
  expect(made).toHaveLength(2);
  made[1]?.say({ id: 2, solution: { status: 'infeasible' } });
  await expect(next).resolves.toEqual({ status: 'infeasible' });
});

it('tells when the worker does not start', async () => {
  const { made, solver } = fakeWorkers();
  const failed = expect(solver.solve(program)).rejects.toThrow('no such file');
  made[0]?.break('no such file');
  await failed;
});
