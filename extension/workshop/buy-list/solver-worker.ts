/**
 * The solver's worker: a program comes in, its solution goes out. The page stops a solve by ending the worker. The solver's code comes
 * inside this script, packed, so that nothing has to be fetched: the build takes `fetch` and the like away from it.
 */

import loadHighs, { type Highs, type InitOptions } from 'highs';
import packedCode from 'highs/runtime';
import type { Answer, Request } from './messages.ts';
import { solveWithHighs } from './solve-with-highs.ts';

async function unpacked(packed: Uint8Array<ArrayBuffer>): Promise<ArrayBuffer> {
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}

/**
 * Loads the solver with its code at hand. Its types name `wasmBinary` for that, which its 1.15.3 does not look at; the hook of the
 * compiler's glue for whoever instantiates the code themselves does work, and the types lack it.
 */
async function load(): Promise<Highs> {
  const code = await WebAssembly.compile(await unpacked(packedCode));
  let failed = (_error: unknown): void => {};
  const broken = new Promise<never>((_resolve, reject) => {
    failed = reject;
  });
  const options = {
    instantiateWasm: (imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void): void => {
      WebAssembly.instantiate(code, imports).then(done).catch(failed);
    },
  };
  return Promise.race([loadHighs(options as InitOptions), broken]);
}

// Not awaited here: a message that comes before the solver is ready would be lost.
const ready = load();

async function answer({ id, program }: Request): Promise<Answer> {
  try {
    return { id, solution: solveWithHighs(await ready, program) };
  } catch (error) {
    return { id, failed: error instanceof Error ? error.message : String(error) };
  }
}

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  void answer(data).then((made) => postMessage(made));
});
