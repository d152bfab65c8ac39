/** Classes of what the library finds and our reader does not, each with its reason. The first that holds counts. */
import { inPounds } from '../../../src/units/mass.ts';
import { type Ad, type Found, overlaps, type Sort } from './found.ts';

export interface Difference {
  readonly name: string;
  readonly sorts: readonly Sort[];
  /** Who is right, judged by what a buyer would take the words for. "neither": both read them in a way that can be had. */
  readonly right: 'reader' | 'library' | 'neither';
  readonly why: string;
  /** Words that show it, with the amounts of money that their label tells. */
  readonly example: string;
  readonly amounts?: readonly number[];
  readonly is: (theirs: Found, seen: Seen) => boolean;
}

/** What surrounds a finding: the words, what stands before them, and our findings of all sorts at that place. */
export interface Seen {
  readonly words: string;
  readonly before: string;
  readonly behind: string;
  readonly ours: readonly Found[];
  /** Amounts of money by the label of the ad. */
  readonly amounts: readonly number[];
}

export function seenAt({ text, amounts }: Ad, theirs: Found, ours: readonly Found[]): Seen {
  return {
    amounts,
    words: text.slice(theirs.start, theirs.end),
    before: text.slice(Math.max(0, theirs.start - 12), theirs.start),
    behind: text.slice(theirs.end, theirs.end + 12),
    ours: ours.filter((one) => overlaps(one, theirs)),
  };
}

export const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

const asWeight = ({ value, unit }: Found): number => inPounds({ value, unit: unit === 'kg' ? 'kg' : 'lb' });
const thousandfold = (of: number, value: number): boolean => [1e3, 1e6, 1e9].some((times) => near(of * times, value));

export const DIFFERENCES: readonly Difference[] = [
  {
    name: 'foot taken for forint',
    sorts: ['money'],
    right: 'reader',
    why: '"7 ft" is a length; the library reads Ft, the sign of the Hungarian forint.',
    example: 'Olympic bar 7ft',
    is: ({ unit }, { words }) => unit === 'Hungarian forint' && /^[\d.]+ ?ft/i.test(words),
  },
  {
    name: 'pounds of weight',
    sorts: ['money'],
    right: 'reader',
    why: '"300 pounds" is money or a weight; the library says both each time, we decide by the words around it (and wrongly where the label has that price).',
    example: '10 Pound (4X)',
    is: ({ value, unit }, { words, ours, amounts }) =>
      unit === 'GBP' &&
      /pound/i.test(words) &&
      !amounts.includes(value) &&
      ours.some((one) => one.sort === 'weight' && one.unit === 'lb' && near(one.value, value)),
  },
  {
    name: 'pounds of money',
    sorts: ['weight'],
    right: 'reader',
    why: 'The other side of it: we read "350 pounds for all" as money where the ad weighs in kilograms.',
    example: 'Plates 2 x 20 kg, 350 pounds for all',
    amounts: [350],
    is: ({ value }, { words, ours, amounts }) =>
      /pound/i.test(words) &&
      (amounts.includes(value) || value === 1) &&
      ours.some((one) => one.sort === 'money' && near(one.value, value)),
  },
  {
    name: 'number behind an amount',
    sorts: ['money'],
    right: 'reader',
    why: '"$60 one pair": the library takes the next number for cents and says 60.01.',
    example: '45s, two of them. $60 one pair',
    is: ({ value }, { words, ours }) =>
      /\d\s+[\p{L}\d.]+$/u.test(words) && ours.some((one) => one.sort === 'money' && near(one.value, Math.trunc(value))),
  },
  {
    name: 'point between thousands',
    sorts: ['money', 'number'],
    right: 'reader',
    why: '"€ 1.200" is twelve hundred, as most of Europe writes it; the library goes by the language of the ad.',
    example: 'Asking € 1.200,- for 2 x 25 kg',
    is: ({ value, sort }, { words, ours }) =>
      /\d\.\d{3}$/.test(words) && ours.some((one) => one.sort === sort && near(one.value, value * 1000)),
  },
  {
    name: 'code before the amount',
    sorts: ['money'],
    right: 'reader',
    why: '"AUD 180" is 1.8 to the library, a fault of it.',
    example: 'Barbell + collars AUD 180',
    is: ({ value, unit }, { words, ours }) =>
      /^[A-Z]{3} \d+$/i.test(words) &&
      ours.some((one) => one.sort === 'money' && one.unit === unit && near(one.value, value * 100)),
  },
  {
    name: 'dash taken for a minus',
    sorts: ['number', 'weight'],
    right: 'reader',
    why: '"- 20 kg bar" and "35 lb - 2": a dash begins a line or joins a count; nobody sells less than nothing.',
    example: '- 20kg',
    is: ({ value }, { words, ours }) =>
      /^[-–—]/.test(words) && ours.some((one) => one.sort === 'number' && near(one.value, -value)),
  },
  {
    name: 'weight in its other unit',
    sorts: ['number', 'weight'],
    right: 'neither',
    why: '"20 kg (44 lb)" is one weight; we keep the first writing, the library has two.',
    example: '2 x 5 kg (11 lb)',
    is: (theirs, { before, words, behind, ours }) =>
      /[([/=]\s*$|\bor\s+$/i.test(before) &&
      ours.some((one) => {
        if (one.sort !== 'weight' || one.start >= theirs.start) return false;
        const unit = theirs.unit ?? (/^\s*kg|kilo/i.test(behind) ? 'kg' : 'lb');
        return unit !== one.unit && /\d/.test(words) && Math.abs(asWeight({ ...theirs, unit }) / asWeight(one) - 1) <= 0.11;
      }),
  },
  {
    name: 'number cut in two',
    sorts: ['number', 'weight'],
    right: 'reader',
    why: '"2x2.5kg", "1-1/4 inch" and "12 and a half pounds": the library begins inside the number, or sees several of them.',
    example: '2-1/2 lb - two',
    is: ({ start, end, sort }, { before, words, behind, ours }) =>
      (/[\d./-]$/.test(before) || /^(?:-\d| and a half\b)/.test(behind)) &&
      /^(?:- )?\d/.test(words) &&
      ours.some((one) => one.sort === sort && (one.start < start ? one.end >= end : one.end > end)),
  },
  {
    name: 'longer number in words',
    sorts: ['number', 'money', 'weight'],
    right: 'reader',
    why: '"Hundred and sixty", "forty-fives": the library reads the last or the first word alone.',
    example: 'One pair of forty-fives',
    is: ({ value }, { words, ours }) =>
      /^[a-z]/i.test(words) && ours.some((one) => one.sort === 'number' && one.how === 'words' && one.value > value),
  },
  {
    name: 'letter taken for a power of ten',
    sorts: ['number'],
    right: 'reader',
    why: '"28MM", "9-5 M-F", "205k": the library reads million, billion and thousand; we take the number and judge k by what it counts.',
    example: 'Barbell, 205K tensile',
    is: ({ value }, { words, ours }) =>
      /\d ?[kmb]+$/i.test(words) && ours.some((one) => one.sort === 'number' && thousandfold(one.value, value)),
  },
  {
    name: 'day of a month taken for a fraction',
    sorts: ['number'],
    right: 'reader',
    why: '"3/14" is a date; fractions that people measure with have 2, 4, 8, 16 or 32 below the line.',
    example: 'edit 6/2 - both still here',
    is: (_, { words }) => /^\d{1,2}\/\d{1,2}$/.test(words),
  },
  {
    name: 'count and weight taken for a fraction',
    sorts: ['weight'],
    right: 'reader',
    why: '"6/45 lbs, 2/5 lbs" is a list of plates, count first; nobody sells two fifths of a pound.',
    example: 'Plates, olympic: 6/45 lbs, 2/35 lbs',
    is: (_, { words, ours }) => {
      const [, below] = /^\d+\/(\d+)\s?\p{L}+$/u.exec(words) ?? [];
      return below !== undefined && ours.some((one) => one.sort === 'weight' && near(one.value, Number(below)));
    },
  },
  {
    name: 'two numbers taken for one',
    sorts: ['number'],
    right: 'reader',
    why: '"6\'3 220" and the digits of a telephone number: the library joins three digits behind a space.',
    example: "Ring, don't text. 0155 550 177.",
    is: (_, { words, ours }) => /^[\d ]+ \d{3}$/.test(words) && ours.filter((one) => one.sort === 'number').length > 1,
  },
  {
    name: 'no number at all',
    sorts: ['number'],
    right: 'reader',
    why: '"eight seconds" is infinite to the library.',
    example: 'Sleeves spin for about eight seconds if you flick them.',
    is: ({ value }) => !Number.isFinite(value),
  },
  {
    name: 'number word of a phrase',
    sorts: ['number'],
    right: 'neither',
    why: '"missing one", "a new one", "all 4": we read the phrase as a whole, as what it means.',
    example: 'One bench, bolts together, one bolt short and so it rocks',
    is: (_, { words, before, ours }) =>
      (/^(?:one|two|three|four|five|six|seven|eight|nine|ten)$/i.test(words) ||
        (/^[2-7]$/.test(words) && /\b(?:all|the) $/i.test(before))) &&
      !ours.some(({ sort }) => sort === 'number'),
  },
  {
    name: 'half of a name',
    sorts: ['number'],
    right: 'reader',
    why: 'A half rack is a kind of rack, and no number.',
    example: 'Half rack - $250',
    is: (_, { words, behind }) => /^half$/i.test(words) && /^ racks?\b/i.test(behind),
  },
  {
    name: 'fraction in the plural',
    sorts: ['number'],
    right: 'reader',
    why: '"2 1/2s" are plates of two and a half; the library takes the whole for the number and leaves the fraction.',
    example: 'Four 5s and four 2 1/2s',
    is: (_, { words, before, behind }) =>
      /^\d$/.test(words) && (/^ \d\/\ds/.test(behind) || (/\d $/.test(before) && /^\/\ds/.test(behind))),
  },
  {
    name: 'fraction in words',
    sorts: ['number', 'money', 'weight'],
    right: 'library',
    why: '"half a millimeter", "a third of the way", "half lb": we read few fractions in words.',
    example: 'Chalk, half a block',
    is: (_, { words, behind }) =>
      /(?:\b(?:half|quarter|third|eighth)|sixteenth)/i.test(words) || /^ (?:quarter|eighth)s?\b/i.test(behind),
  },
  {
    name: 'unit inside a noun',
    sorts: ['weight'],
    right: 'neither',
    why: '"One 35 lb plate": we read "lb plate" as the noun and settle the unit later.',
    example: 'Single 45 lb plate',
    is: ({ value }, { behind, ours }) =>
      /^ plate\b/i.test(behind) && ours.some((one) => one.sort === 'number' && near(one.value, value)),
  },
];
