/** "EZ curl bar ... the bar is 47 in long": a bare "bar" beside one other bar by name and no straight one speaks of that. */
import type { Kind } from '../../listing/reading.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const NAMED: readonly Kind[] = ['curl-bar', 'hex-bar'];

export function settleBareBars(scan: Scan, drafts: readonly Draft[]): void {
  const bare = drafts.filter((item) => item.kind === 'bar' && scan.tokens[item.kindAt]?.text === 'bar');
  const straight = drafts.some((item) => item.kind === 'bar' && !bare.includes(item));
  const named = drafts.filter((item) => NAMED.includes(item.kind) && scan.tokens[item.kindAt]?.text !== 'bar');
  const kinds = new Set(named.map(({ kind }) => kind));
  const [only] = kinds;
  if (straight || bare.length === 0 || kinds.size !== 1 || !only) return;
  const said = bare.filter(
    (item) =>
      /(?:^|[.;!?]|[^l•][-:])a?$/.test(scan.plain.slice(Math.max(0, item.kindAt - 3), item.kindAt)) &&
      item.ownPrice === null &&
      !named.some(({ kindAt }) => kindAt > item.kindAt && scan.clause[kindAt] === scan.clause[item.kindAt]),
  );
  if (said.length === bare.length) for (const item of bare) item.kind = only;
}
