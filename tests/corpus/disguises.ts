/** The same ad in other characters: what a page, a phone or a shouting seller makes of it. None changes what it says. */

export interface Disguise {
  readonly name: string;
  readonly put: (text: string) => string;
  /** Why many ads are known to be read otherwise: a defect to mend. */
  readonly defect?: string;
  /** Ads that are known to be read otherwise, and why. */
  readonly except?: Readonly<Record<string, string>>;
}

/** To be mended. */
const LAST_LINE = 'a bare number is taken for the price only where a line end follows it';

/** To be mended: where all is in capitals they tell nothing. */
const CAPITALS = 'a capital behind the point of an abbreviation ("10 EA. PLATE") is taken to begin a sentence';

const FULL_WIDTH_ZERO = 0xff10;

/** Puts marks without width between the characters, into words and numbers as well. */
function strew(text: string): string {
  const marks = ['\u200b', '\u200e', '\u2060', '\u00ad', '\ufeff'];
  return [...text]
    .map((character, index) => (index % 3 === 2 ? character + (marks[index % marks.length] ?? '') : character))
    .join('');
}

export const DISGUISES: readonly Disguise[] = [
  { name: 'CR LF at the ends of lines', put: (text) => text.replaceAll('\n', '\r\n') },
  { name: 'CR at the ends of lines', put: (text) => text.replaceAll('\n', '\r') },
  { name: 'spaces that do not break', put: (text) => text.replaceAll(' ', '\u00a0') },
  {
    name: 'full-width digits',
    put: (text) => text.replace(/\d/g, (digit) => String.fromCharCode(FULL_WIDTH_ZERO + Number(digit))),
  },
  { name: 'curly quotes', put: (text) => text.replaceAll("'", '\u2019').replaceAll('"', '\u201d') },
  {
    name: 'capitals',
    put: (text) => text.toUpperCase(),
    except: {
      'hand4/flipper-bundle-terse.txt': CAPITALS,
      'hand4/curl-bar-plus-dumbbell-handles.txt': 'DEFECT: "2 olympic dumbbell handles" are dumbbells in small letters alone',
      'hand4/keller-raeumung-gusseisen.txt': '"ein paar" in capitals may be a pair',
      'long/neighbourhood-newsletter-notice.txt': CAPITALS,
      'long/phone-typed-dad-rambling.txt': CAPITALS,
      'long/hotel-maintenance-man-terse-inventory.txt': CAPITALS,
    },
  },
  { name: 'spaces before the ends of lines', put: (text) => `${text.replaceAll('\n', '   \n')}  ` },
  {
    name: 'empty lines behind',
    put: (text) => `${text}\n\n\n`,
    except: { 'negatives/motorbike-crash-bars-rear-rack.txt': LAST_LINE },
  },
  {
    name: 'an empty line before',
    put: (text) => `\n${text}`,
    defect: 'the title is taken to be the first line, even where that is empty',
  },
  { name: 'marks without width', put: strew, defect: 'the language is chosen from the text with the marks in its words' },
  { name: 'letters and accents apart', put: (text) => text.normalize('NFD') },
];
