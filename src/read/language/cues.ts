/**
 * Words that recognisers and refiners ask for by name, whatever else the dictionary says of them: each language tells them under the same names
 * (en/cues.ts, de/cues.ts), as phrases parted by "|". A "*" at the end of a phrase stands for any ending.
 */
import { foldPhrase } from '../text/fold.ts';

export type CueName =
  /** "Bar has rust, the plates don't": says of other goods that they are not so, or are so too. */
  | 'not-so'
  | 'is-fine'
  | 'is-so'
  | 'so-too'
  /** The same before the goods: "as does the bar", "but not the bar". */
  | 'so-too-of'
  | 'not-so-of'
  /** "All rusty except the bar". */
  | 'except'
  | 'both-goods'
  /** Racks and trees that dumbbells stand on. */
  | 'of-dumbbells'
  /** Bars that are pulled on a cable, and what the others beside them are called. */
  | 'pulled-bar'
  | 'shape-of-bar'
  /** "Weights off a boat". */
  | 'belongs-to'
  /** The ring of metal in a rubber plate. */
  | 'insert'
  /** "for 300": before a price. */
  | 'for'
  /** "From 275 to 240". */
  | 'from'
  | 'to'
  /** "Bar $80, with plates $200". */
  | 'with'
  | 'or'
  /** "Flexible on the stands": what terms are of. */
  | 'concerning'
  | 'under'
  /** "$1.25/lb so $225 for all". */
  | 'so'
  /** "The plates are $90". */
  | 'is-now'
  /** What are for all goods, for both, for any one. */
  | 'all'
  | 'all-sold'
  | 'both'
  | 'any'
  /** Words among which one speaks of the whole lot. */
  | 'whole-lot'
  /** Words that leave nothing of the ad out: "$500 for everything". */
  | 'of-everything'
  /** "300 for everything". */
  | 'priced-for-all'
  | 'before-price-of-all'
  /** "Need 180 for it". */
  | 'them'
  /** "Bar's another hundred". */
  | 'one-more'
  /** One that stands for what a piece of money is worth: "a buck a pound". */
  | 'unit-of-money'
  | 'price'
  /** "640 is fine". */
  | 'is-enough'
  /** "Bench $100, together $325". */
  | 'together'
  /** What others offer and the seller will not have: "stop asking if I'd take $100". */
  | 'others-offer'
  /** What the like goes for with others: "I've seen these go for $300". */
  | 'seen-elsewhere'
  | 'asks'
  | 'new-price'
  | 'lowered'
  | 'prices-are'
  | 'now'
  /** "Current bid $40". */
  | 'bid'
  | 'costs'
  /** What is said of a sum that only fills the field of the price. */
  | 'stand-in'
  /** A price that may be what it cost new. */
  | 'perhaps-former'
  | 'shipped'
  /** Room to haggle: "would take 40". */
  | 'take'
  | 'lets-go'
  | 'would'
  | 'would-take'
  | 'would-perhaps'
  /** What nobody is to do: "do not contact me with offers". */
  | 'contact'
  /** "Spend over $400". */
  | 'spends'
  /** What becomes of offers that nobody is to make: "lowball offers will be ignored". */
  | 'ignored'
  /** "Those add up to 245". */
  | 'adds-up'
  /** "The deep dish ones", "one's a good bar". */
  | 'ones'
  | 'one-is'
  | 'another'
  /** "Straight, I think, but can't promise". */
  | 'no-promise'
  /** What is gone, left or not whole. */
  | 'missing'
  | 'incomplete'
  | 'once'
  | 'gone'
  | 'only'
  | 'left'
  | 'still-selling'
  /** What the seller sells or keeps of those he has, and what he would not part from the rest. */
  | 'sells'
  | 'keeps'
  | 'part-with'
  /** Parts of goods and what they do: "the paint is flaking off". */
  | 'coat'
  | 'comes-off'
  | 'cover'
  | 'comes-apart'
  | 'other-one'
  | 'small-part'
  | 'removed'
  | 'removable'
  | 'a-little'
  | 'hub'
  | 'comes-loose'
  | 'turning'
  | 'turns'
  | 'sticks'
  | 'hardly'
  | 'plural'
  | 'others'
  /** What is done with goods that are only spoken of: "when you change the weights". */
  | 'handles'
  | 'owns'
  | 'goes-over'
  /** Goods that are only spoken of: what they are beside, what is usual of them, the room for them, how they go on, what is done with them. */
  | 'beside-goods'
  | 'ordinary'
  | 'wrong'
  | 'zone'
  | 'slides'
  | 'uses'
  | 'throws'
  /** Words by which goods are offered: "there's a bench". */
  | 'offers'
  /** "You don't get the rack". */
  | 'gets'
  /** "Want: bumper plates" as a label. */
  | 'wants-label'
  /** "I want 2 x 45 bumpers", in an ad that trades. */
  | 'wishes'
  /** "If you offer half, I'll not answer". */
  | 'if-you'
  /** What has two sides that are told without a unit: "platform 8x8". */
  | 'has-sides'
  /** "They say 45 on them"; "my bathroom scale says 19". */
  | 'is-marked'
  | 'scale'
  /** "Weight bench with the rack attached". */
  | 'attached'
  /** "The bar is another 45". */
  | 'weighs'
  /** "A 45 has a chip": the verb within a condition. */
  | 'has'
  /** "Weights" alone, which may be anything. */
  | 'weights'
  | 'the'
  | 'style'
  | 'sets'
  /** What a bare number stands behind or before where it is a price, and where it is none. */
  | 'before-price'
  | 'behind-price'
  | 'numbered'
  /** One piece of those told before. */
  | 'one-of-them'
  | 'numbers';

export interface Cue {
  /** Whether a token's text is one of the phrases. */
  readonly is: (text: string) => boolean;
  /** Those without a "*". */
  readonly words: ReadonlySet<string>;
  /** Whether words hold one of the phrases. */
  readonly within: RegExp;
}

export type Cues = Readonly<Record<CueName, Cue>>;

/** Builds them; an empty list holds of nothing. */
export function cues(phrases: Readonly<Record<CueName, string>>): Cues {
  const built = Object.entries(phrases).map(([name, list]): [string, Cue] => {
    // "Won't" and "wont", but no "ones" for "one's".
    const all =
      list === '' ? [] : list.split('|').flatMap((phrase) => [foldPhrase(phrase), foldPhrase(phrase.replace(/'(?!s)/g, ''))]);
    const [plain, open] = [new Set(all.filter((phrase) => !phrase.includes('*'))), all.filter((phrase) => phrase.includes('*'))];
    const starred = open.length > 0 ? new RegExp(`^(?:${open.join('|').replaceAll('*', '.{0,40}')})$`) : null;
    return [
      name,
      {
        words: plain,
        is: (text) => plain.has(text) || starred?.test(text) === true,
        within: new RegExp(all.length > 0 ? `\\b(?:${all.join('|').replaceAll('*', '\\S{0,40}')})(?!\\w)` : '(?!)'),
      },
    ];
  });
  return Object.fromEntries(built) as unknown as Cues;
}
