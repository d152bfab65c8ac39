/** Bare numbers that can only be the price: alone on a line, before "for the rack". */
import type { Price } from '../mention.ts';
import { claim, findAll, type Scan, valueAt } from '../text/scan.ts';

/** "350 for rack. 75 for the bar." */
const FOR_GOODS = /(?<=^|[l.,;]|l[-•])([ni])(?=wa?[mC]{0,2}k)/dg;
const OUTCOME = /(?<=[l(.]|^)([ni])(?=[)]?(?:[l.]|$)|cz|ca|,c)|(?<=L[:=]?)(n)(?![uhqsxnfJk])|(?<=X)(n)(?![uhqsxnfJkm])/dg;

/** "Barbell 50" is all that the title says, and no bar weighs so much. */
const TITLE = /^[mC]{0,3}(k)[-:,]?(n)(?=l|$)/dg;
const BAR_WEIGHTS = [15, 20, 25, 30, 33, 35, 44, 45, 55, 60];

/** "4x45 olympic plates, a hundred and twenty". */
const IN_WORDS = /(?<=[l(.,]|^)a?i(?=[.]?(?:l|$))/dg;

/** A number that stands alone on its line may be the price; read last, and only used when there is no other. */
export function readLonePrices(scan: Scan): Price[] {
  const found: Price[] = [];
  const padded = { ...scan, letters: scan.letters };
  findAll(padded, FOR_GOODS, ({ from, to }) => {
    const amount = valueAt(scan, from) ?? 0;
    if (amount < 15) return false;
    found.push({ rule: 'price-for-goods', from, to, amount, currency: null, role: 'asking', sure: true });
    claim(scan, from, to, 'M');
    return 'claimed';
  });
  findAll(padded, TITLE, ({ to, group }) => {
    const amount = valueAt(scan, to) ?? 0;
    const { kind, plural } = scan.tokens[group(1)?.[0] ?? to]?.term ?? {};
    const bar = kind === 'bar' || kind === 'curl-bar' || kind === 'hex-bar';
    if (!bar || plural || amount < 20 || BAR_WEIGHTS.includes(amount)) return false;
    found.push({ rule: 'lone-number', from: to, to, amount, currency: null, role: 'asking', sure: false });
    claim(scan, to, to, 'M');
    return 'claimed';
  });
  findAll(padded, OUTCOME, ({ from, to }) => {
    const amount = valueAt(scan, from) ?? 0;
    const need = scan.plain[from - 1] === 'X';
    if (amount < 10 || (need && !/^needs?$/.test(scan.tokens[from - 1]?.text ?? ''))) return false;
    found.push({ rule: 'lone-number', from, to, amount, currency: null, role: 'asking', sure: false });
    return true;
  });
  findAll(padded, IN_WORDS, ({ to }) => {
    const amount = valueAt(scan, to) ?? 0;
    if (amount < 50) return false;
    found.push({ rule: 'lone-number', from: to, to, amount, currency: null, role: 'asking', sure: false });
    return true;
  });
  return found;
}
