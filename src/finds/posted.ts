/**
 * Since when an ad stands, by its own word: "posted 3 weeks ago", "Listed: 2026-10-02", "seit 12 Tagen online". A claim of the page, not a fact:
 * ads are put up anew to look fresh. Only words that speak of the ad count; when a thing was bought or used says nothing of it.
 */
import { POSTED } from './posted-words.ts';

export interface Posted {
  /** The words that it rests on, and where they stand in the text. */
  readonly words: string;
  readonly start: number;
  readonly end: number;
  /** The day, as "2026-10-02". */
  readonly day: string;
  /** Days that it may be off, for "3 weeks" may be 25 days; 0 for a day that is named. */
  readonly rough: number;
}

export interface SeenOn {
  /** The day on which the ad was read, in the buyer's zone: "2026-11-26". "Ago" is counted from there. */
  readonly day: string;
  /** Whether "2/10/2026" is February, as in American ads. */
  readonly monthFirst: boolean;
}

const DAY = 86_400_000;
/** An older ad is none: ten years. An assumption. */
const OLDEST = 3653;

const number = (day: string): number => Math.floor(Date.parse(`${day}T00:00:00Z`) / DAY);
const written = (days: number): string => new Date(days * DAY).toISOString().slice(0, 10);

/** Whole days from one day to another, never below zero. */
export const daysBetween = (from: string, to: string): number => Math.max(0, number(to) - number(from));

/** Days since 1970 of a day that the calendar has; null otherwise. */
function dayOf(year: number, month: number, day: number): number | null {
  const at = new Date(Date.UTC(year, month - 1, day));
  return at.getUTCMonth() === month - 1 && at.getUTCDate() === day ? Math.floor(at.getTime() / DAY) : null;
}

const MONTHS = [
  /^jan/,
  /^feb/,
  /^m(?:ar|är|aer|rz)/,
  /^apr/,
  /^ma[iy]/,
  /^jun/,
  /^jul/,
  /^aug/,
  /^sep/,
  /^o[ck]t/,
  /^nov/,
  /^de[cz]/,
];

const fullYear = (year: string): number => (year.length === 2 ? 2000 + Number(year) : Number(year));

/** The latest day that it can mean and that is not past the day on which it was read. Without a year it is the last such day. */
function namedDay(words: string, { day, monthFirst }: SeenOn): number | null {
  const now = number(day);
  const [first = '', second = '', third] = words.match(/\d+/g) ?? [];
  const named = MONTHS.findIndex((month) => month.test(words.toLowerCase().match(/[a-zä]{3,}/)?.[0] ?? '')) + 1;
  const year = Number(day.slice(0, 4));
  const inTime = (days: readonly (number | null)[]): number | null =>
    days.find((one) => one !== null && one <= now && now - one < OLDEST) ?? null;
  if (named > 0) {
    const years = second === '' ? [year, year - 1] : [fullYear(second)];
    return inTime(years.map((one) => dayOf(one, named, Number(first))));
  }
  if (first.length === 4) return inTime([dayOf(Number(first), Number(second), Number(third))]);
  const [a, b] = [Number(first), Number(second)];
  const years = third === undefined ? [year, year - 1] : [fullYear(third)];
  // Points are for the day first, everywhere; what one order makes no day of, the other does.
  const orders = monthFirst && !words.includes('.') ? [[a, b] as const, [b, a] as const] : [[b, a] as const, [a, b] as const];
  for (const [month, at] of orders) {
    const found = inTime(years.map((one) => dayOf(one, month, at)));
    if (found !== null) return found;
  }
  return null;
}

const NUMBERS: Readonly<Record<string, number>> = {
  ...Object.fromEntries(
    'one two three four five six seven eight nine ten eleven twelve'.split(' ').map((word, index) => [word, index + 1]),
  ),
  ...Object.fromEntries(
    'zwei drei vier fünf sechs sieben acht neun zehn elf zwölf'.split(' ').map((word, index) => [word, index + 2]),
  ),
};

const count = (words: string): number =>
  /\d/.test(words) ? Number.parseInt(words, 10) : (NUMBERS[words] ?? (/coup/.test(words) ? 2 : 1));

/** Days in a unit, by its first letters. */
function unitDays(unit: string): number {
  if (/^(?:s|min|h|std|stu)/.test(unit)) return 0;
  if (/^(?:w)/.test(unit)) return 7;
  if (/^(?:mo)/.test(unit)) return 30.44;
  return /^(?:y|j)/.test(unit) ? 365.25 : 1;
}

/** What the words found mean: a day before the one on which they were read, and how rough that is. */
function meant({ groups = {} }: RegExpMatchArray, seen: SeenOn): { readonly days: number; readonly rough: number } | null {
  const now = number(seen.day);
  if (groups.date !== undefined) {
    const days = namedDay(groups.date, seen);
    return days === null ? null : { days, rough: 0 };
  }
  if (groups.today !== undefined) return { days: /^(?:yester|gester)/i.test(groups.today) ? now - 1 : now, rough: 0 };
  const each = unitDays((groups.unit ?? 'd').toLowerCase());
  const back = Math.round(count((groups.count ?? '').toLowerCase()) * each);
  // "3 weeks" is anything from there to four; so far and no more is known.
  return Number.isFinite(back) && back < OLDEST ? { days: now - back, rough: Math.round(Math.max(0, each - 1)) } : null;
}

/**
 * What the ad says of the day on which it was put up; null where it says nothing, or two things that don't go together. In either language,
 * whatever the ad's own is: the page's words around an ad are its reader's.
 */
export function postedOf(text: string, seen: SeenOn): Posted | null {
  const found = POSTED.flatMap((form) =>
    [...text.slice(0, 100_000).matchAll(form)].flatMap((match): Posted[] => {
      const what = meant(match, seen);
      const { length } = match[0];
      const words = match[0].replace(/\s+/g, ' ');
      return what === null
        ? []
        : [{ words, start: match.index, end: match.index + length, day: written(what.days), rough: what.rough }];
    }),
  );
  // A named day tells more than a round number.
  const [best, ...rest] = found.sort((one, other) => one.rough - other.rough || one.start - other.start);
  if (best === undefined) return null;
  const agrees = rest.every(({ day, rough }) => Math.abs(number(day) - number(best.day)) <= rough + best.rough + 1);
  return agrees ? best : null;
}
