/** `npm run bench`: how long reading and judging takes, and how it grows. Prints; never fails on a slow machine. */
import { evaluate } from '../../src/evaluate.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { read } from '../../src/read/index.ts';
import { turnsOf } from '../../src/sensitivity.ts';
import { grownAd, ORDINARY_AD } from './ads.ts';
import { benchAgainstLibrary } from './against-library.ts';
import { benchBuyList } from './buy-list.ts';
import { medianTime, reference } from './timing.ts';

const settings = { ...DEFAULT_SETTINGS, distance: { value: 20, unit: 'mi' as const } };
const ms = (value: number): string => `${value < 10 ? value.toFixed(3) : value.toFixed(0)} ms`;

function report(name: string, text: string, rounds: number): number {
  const listing = listingFromText(text);
  const whole = medianTime(() => evaluate(listing, settings), rounds);
  const reading = medianTime(() => read(listing), rounds);
  const scan = medianTime(reference(text), rounds);
  const items = read(listing).items.length;
  const perByte = (whole * 1e6) / text.length;
  console.log(
    `${name.padEnd(8)} ${String(text.length).padStart(8)} bytes ${String(items).padStart(4)} items  whole ${ms(whole).padStart(9)}  reading ${ms(reading).padStart(9)}  plain scan ${ms(scan).padStart(9)}  ratio ${(whole / scan).toFixed(1).padStart(5)}  ${perByte.toFixed(0)} ns/byte`,
  );
  return perByte;
}

/** What turns the call: asked for once the answer stands, beside it and not in it. */
function benchTurns(): void {
  const evaluation = evaluate(listingFromText(ORDINARY_AD), settings);
  console.log(`what would turn it (not part of the whole) ${ms(medianTime(() => turnsOf(evaluation, settings), 50))}`);
}

console.log('Median times of reading and judging one ad (aim: under 1 ms for 2 kB; time per byte within 1.5 times up to 1 MB)');
report('ordinary', ORDINARY_AD, 500);
benchTurns();
const sizes = [10_000, 100_000, 1_000_000];
const costs = sizes.map((size) => report(`${size / 1000} kB`, grownAd(size), Math.max(5, 2_000_000 / size)));
console.log(
  `growth of time per byte from 10 kB to 1 MB: ${((costs.at(-1) ?? Number.NaN) / (costs[0] ?? Number.NaN)).toFixed(2)} times`,
);
benchAgainstLibrary(process.env.IRONSIFT_ROOT ?? process.cwd());
await benchBuyList();
