/** Ordinals of an inventory, "1) Half rack … 2) Bar, 20 kg … 3) Flat bench" and "1. … 2. …", are no counts; "2) 45 lb plates" and "(4) 45 lb" alone are. */
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';

const ORDINAL = /(?<=^|[l•]|l[-•])(n)[).](?![uhsx/])|(?<=[.;,:])(n)\)(?![uhsx/])/dg;
/** Behind a count of plates their weight follows at once. */
const WEIGHED = /^[mC]{0,2}(?:n[-.]?[uhqs]|v|nk)/;

/** They rise by one from 1, all that are written so, and are three at least, or two before words. */
export function claimOrdinals(scan: Scan): void {
  const marked: number[] = [];
  findAll(scan, ORDINAL, ({ from }) => {
    marked.push(from);
    return false;
  });
  const weighed = marked.filter((at) => WEIGHED.test(scan.plain.slice(at + 2, at + 8))).length;
  const rising = marked.every((at, index) => valueAt(scan, at) === index + 1);
  if (!rising || marked.length < 2 || weighed * 2 > marked.length || (marked.length === 2 && weighed > 0)) return;
  for (const at of marked) blank(scan, at);
}
