/** How long the main threads of pages were busy at one stretch, by processor time: what other programs do meanwhile does not count. */
import type { Page } from 'puppeteer-core';

interface Event {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, in µs. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/** Tasks of the main thread of each page that took at least `least` ms while `work` was done, in whole ms, longest first. */
export async function processorTasks(page: Page, work: () => Promise<unknown>, least = 50): Promise<readonly number[]> {
  await page.tracing.start({ categories: ['disabled-by-default-devtools.timeline', 'toplevel'] });
  await work();
  const trace = await page.tracing.stop();
  const { traceEvents } = JSON.parse(new TextDecoder().decode(trace)) as { traceEvents: readonly Event[] };
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents.filter(({ name, pid, tid }) => name === 'RunTask' && main.has(`${pid} ${tid}`));
  if (tasks.every(({ tdur }) => tdur === undefined)) throw new Error('Chromium tells no processor time of tasks');
  return tasks
    .map(({ tdur = 0 }) => Math.round(tdur / 1000))
    .filter((ms) => ms >= least)
    .sort((a, b) => b - a);
}
