/**
 * Judges ads from the command line.
 *   npm run -s evaluate -- FILE              text or HTML; standard input without FILE, or with "-"
 *   npm run -s evaluate -- --batch FILE      JSON Lines {"id", "text" | "html"} in, {"id", …} out
 *   … --settings FILE                        the buyer's settings: any part of them, as JSON
 * Prints JSON. What can't be read is told in one line on standard error, with exit code 2.
 */
import { once } from 'node:events';
import { main } from './evaluate/main.ts';

const { stdin, stdout, stderr } = process;
// A reader that has seen enough (`| head`) is no fault.
stdout.on('error', () => process.exit(0));
process.exitCode = await main(process.argv.slice(2), {
  input: stdin,
  print: async (line) => stdout.write(`${line}\n`) || once(stdout, 'drain'),
  complain: (line) => stderr.write(`${line}\n`),
});
