import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** A screen that browsers and key presses can be sent to. */
export interface Display {
  /** Its name, e.g. ":99". */
  readonly name: string;
  /** Environment for a program that is to appear on it. */
  readonly env: NodeJS.ProcessEnv;
  /** Saves a picture of the whole screen as PNG. */
  screenshot(path: string): Promise<void>;
  close(): Promise<void>;
}

/** The screen named `name` which is there already. `close` leaves it alone. */
export function onDisplay(name: string): Display {
  // Wayland would win over DISPLAY in both browsers, and xdotool speaks X only.
  const { WAYLAND_DISPLAY: _wayland, ...rest } = process.env;
  const env = { ...rest, DISPLAY: name };
  return {
    name,
    env,
    screenshot: async (path) => {
      await mkdir(dirname(path), { recursive: true });
      await run('import', ['-window', 'root', path], { env });
    },
    close: async () => {},
  };
}

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
  });

/** The number that Xvfb picked for itself, read from its file descriptor 3. */
const displayNumber = (server: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error('Xvfb did not start within 15 s')), 15_000);
    const fail = (why: string) => {
      clearTimeout(late);
      reject(new Error(why));
    };
    server.once('error', (error) => fail(`Xvfb could not be started: ${error.message}`));
    server.once('exit', (code) => fail(`Xvfb ended with code ${code}`));
    server.stdio[3]?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (!said.includes('\n')) return;
      clearTimeout(late);
      resolve(said.trim());
    });
  });

/** Starts a virtual screen (Xvfb) with a window manager (openbox): xdotool needs one to move focus between windows. */
export async function startDisplay({ width = 1300, height = 900 } = {}): Promise<Display> {
  const server = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', `${width}x${height}x24`, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const display = onDisplay(`:${await displayNumber(server)}`);
  const manager = spawn('openbox', [], { env: display.env, stdio: 'ignore' });
  const started = new Promise<void>((resolve, reject) => {
    manager.once('spawn', resolve);
    manager.once('error', (error) => reject(new Error(`openbox could not be started: ${error.message}`)));
  });
  const kill = () => {
    manager.kill();
    server.kill();
  };
  process.once('exit', kill);
  await started.catch(async (error: unknown) => {
    await ended(server);
    throw error;
  });
  return {
    ...display,
    close: async () => {
      process.off('exit', kill);
      await ended(manager);
      await ended(server);
    },
  };
}
