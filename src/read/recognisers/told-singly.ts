/** One count for a list of sizes, each a piece or a pair: "Two left: 35 lb and 53 lb", "3 kettlebells: 16, 20 and 24 kg", "two pairs: 45s and 25s". */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';

const HEADED = /([nd])(p?)[mkC]{0,3}&?k?[mC]?[:-]/dg;
const LIST = /^[,.;c&zam()-]*$/;

/** Gives each weight of the list its count, where there are as many as the count says. */
export function readToldSingly(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  let told = [...quantities];
  findAll(scan, HEADED, ({ from, to, group }) => {
    const count = valueAt(scan, from);
    const listed = told.filter(({ from: at }) => at > to && scan.clause[at] === scan.clause[from]);
    const open = listed.filter(({ count: pieces, weight }) => pieces === null && weight !== null);
    if (count === null || count < 2 || open.length !== count || open.length !== listed.length) return false;
    const last = open.at(-1);
    const between = scan.letters.slice(to + 1, last?.from).filter((letter) => letter !== '_');
    if (!LIST.test(between.join(''))) return false;
    const pieces = group(2) ? 2 : 1;
    told = told.map((one) => (open.includes(one) ? { ...one, count: pieces, rule: `${one.rule}-told-singly` } : one));
    return true;
  });
  // "Four kettlebells: 12 kg, 16 kg, 20 kg and 24 kg": the count stands in the first of them.
  for (const head of quantities) {
    const { count, noun } = head;
    const colon = scan.plain.slice(head.from, head.to + 1).indexOf(':');
    if (count === null || count < 2 || noun === null || colon === -1) continue;
    const start = told.findIndex(({ from, to }) => from === head.from && to === head.to);
    const rest = told.slice(start + 1).filter(({ from }) => scan.clause[from] === scan.clause[head.from]);
    const open = rest.length === count - 1 && rest.every((one) => one.count === null && one.weight !== null);
    const last = rest.at(-1);
    if (
      !open ||
      !LIST.test(
        scan.letters
          .slice(head.to + 1, last?.from)
          .filter((letter) => letter !== '_')
          .join(''),
      )
    )
      continue;
    told = told.map((one, index) =>
      index === start || rest.includes(one) ? { ...one, count: 1, rule: `${one.rule}-told-singly` } : one,
    );
  }
  return told;
}
