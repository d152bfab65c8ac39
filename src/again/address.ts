/**
 * An address without what changes between two visits to the same page: scheme, "www" and mobile hosts, tracking, session, fragment.
 * What counts as such is common practice, no source; the parts of an address are those of RFC 3986.
 */

const PARTS = /^https?:\/\/(?:[^/?#@]*@)?([^/?#:]+)(?::\d+)?([^?#]*)(?:\?([^#]*))?/i;

/** Hosts that show the same page to telephones. */
const MOBILE = /^(?:(?:www|m|mobile|touch|wap|amp)\.)+(?=[^.]+\.)/;

/** Names of parameters that say where the visitor came from, who he is, or how the page is shown. */
const TRACKING =
  /^(?:utm_.*|.*clid|[gw]braid|_ga.*|_gl|ga_.*|mc_[ce]id|igsh.*|ref|ref_.*|referr?er|src|source|from|origin|campaign.*|cmp|share.*|.*sess(?:ion)?_?(?:id)?|sid|track.*|trk.*|lang|locale|hl|amp|view|tab|pos(?:ition)?|rank)$/i;

/** Words before a number that is no ad's: a page of results, a postal code. */
const LISTS = /^(?:s|search|suche|page|p|seite|c|category|kategorie|zip|plz|near|in|l|browse|list)$/i;

/** Percent-encoded letters, digits, "-", ".", "_" and "~" are the same as themselves (RFC 3986, 6.2.2.2). */
const unescaped = (text: string): string =>
  text.replace(/%([0-9a-f]{2})/gi, (whole, hex: string) => {
    const sign = String.fromCharCode(Number.parseInt(hex, 16));
    return /[\w.~-]/.test(sign) ? sign : whole.toUpperCase();
  });

/** Whether a path has the number or code of one ad: six digits on end, a long code, or a number as its last part. */
function namesAd(segments: readonly string[]): boolean {
  if (segments.some((one) => /\d{6}/.test(one) || /(?:^|-)(?=[a-f-]*\d)[0-9a-f]{8}[0-9a-f-]{4,}$/i.test(one))) return true;
  const [before = '', last = ''] = segments.slice(-2);
  return segments.length > 1 && /^\d{3,}(?:\.html?)?$/.test(last) && !LISTS.test(before);
}

export interface AdAddress {
  /** Equal for two addresses of the same page. */
  readonly key: string;
  /** The address names one ad; otherwise several ads may stand on that page, and it tells nothing of which. */
  readonly namesAd: boolean;
  /** What is left without the host, to be shown. */
  readonly path: string;
}

/** Null for anything but a web address. */
export function adAddress(address: string | null): AdAddress | null {
  const [, host, path = '', query = ''] = PARTS.exec(address?.trim() ?? '') ?? [];
  if (host === undefined) return null;
  const site = host.toLowerCase().replace(/\.$/, '').replace(MOBILE, '');
  const segments = unescaped(path)
    .replace(/;[^/]*/g, '')
    .split('/')
    .filter((one) => one !== '' && one !== 'amp');
  const inPath = namesAd(segments);
  const parameters = unescaped(query)
    .split('&')
    .filter((one) => one !== '' && !TRACKING.test(one.split('=')[0] ?? ''))
    .sort();
  // Behind the number of an ad stands only how its page was reached.
  const rest = inPath || parameters.length === 0 ? '' : `?${parameters.join('&')}`;
  const inQuery = parameters.some((one) =>
    /^(?:.*[_-])?(?:id|ad|item|listing|anzeige|post)(?:[_-]?(?:id|no|nr))?=[\w-]*\d{3}/i.test(one),
  );
  const shown = `/${segments.join('/')}${rest}`;
  return { key: `${site}${shown}`, namesAd: inPath || inQuery, path: shown };
}
