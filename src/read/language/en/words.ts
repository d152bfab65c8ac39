/** English words around the nouns: counts, units, makes, prices, terms. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';

const numberWords: Entry[] = 'one two three four five six seven eight nine ten eleven twelve'
  .split(' ')
  .map((word, index): Entry => [word, { code: 'd', value: index + 1 }]);

const weightWords: Entry[] = (
  [
    ['fives', 5],
    ['tens', 10],
    ['fifteens', 15],
    ['twenties', 20],
    ['twenty fives|twentyfives', 25],
    ['thirties', 30],
    ['thirty fives|thirtyfives', 35],
    ['forty fives|fourty fives|fortyfives', 45],
    ['fifties', 50],
    ['hundreds', 100],
    ['two and a halfs|two and halfs|two and a half s', 2.5],
  ] as const
).map(([words, value]): Entry => {
  // "Forty-five's" as well.
  const marked = words.split('|').map((word) => word.replace(/(?:ies|s)$/, (end) => (end === 'ies' ? "y's" : "'s")));
  return [`${words}|${marked.join('|')}`, { code: 'v', value }];
});

const TEENS = 'thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const ONES = 'one two three four five six seven eight nine'.split(' ');

/** Numbers in words above twelve: all to 99, then those by fives to 999 that weights and prices take ("two hundred and fifty"). */
function* spelledNumbers(): Generator<readonly [string, number]> {
  const belowHundred: [string, number][] = TEENS.map((word, index) => [word, 13 + index]);
  TENS.forEach((ten, index) => {
    belowHundred.push([ten, 20 + 10 * index]);
    ONES.forEach((one, unit) => {
      belowHundred.push([`${ten} ${one}`, 21 + 10 * index + unit]);
    });
  });
  yield* belowHundred;
  const rest: readonly (readonly [string, number])[] = [
    ['', 0],
    ['five', 5],
    ['ten', 10],
    ...belowHundred.filter(([, value]) => value % 5 === 0),
  ];
  for (const [index, one] of ['a', ...ONES].entries()) {
    const hundreds = Math.max(1, index) * 100;
    for (const [word, value] of rest) {
      if (word === '') yield [`${one} hundred`, hundreds];
      else
        yield* [
          [`${one} hundred ${word}`, hundreds + value],
          [`${one} hundred and ${word}`, hundreds + value],
        ] as const;
    }
  }
  yield* [
    ['hundred', 100],
    ...belowHundred
      .filter(([, value]) => value % 5 === 0)
      .flatMap(
        ([word, value]) =>
          [
            [`hundred ${word}`, 100 + value],
            [`hundred and ${word}`, 100 + value],
          ] as const,
      ),
    ['fourty five', 45],
    ['fourty', 40],
    ['two and a half', 2.5],
    ['a thousand', 1000],
    ['one thousand', 1000],
    ['a grand', 1000],
    ['half a grand', 500],
  ] as const;
}

const bigNumbers: Entry[] = [...spelledNumbers()].map(([word, value]): Entry => [word, { code: 'i', value }]);

/** Parts of a pound in words, with their unit. */
const partsOfPound: Entry[] = (
  [
    ['quarter', 0.25],
    ['half', 0.5],
    ['three quarter', 0.75],
  ] as const
).map(
  ([part, value]): Entry => [
    ['lb', 'pound', 'pounder', 'pounders'].map((unit) => `${part} ${unit}`).join('|'),
    { code: 'v', value, unit: 'lb' },
  ],
);

/** Stones of 14 lb, for old English weights. */
const stones: Entry[] = (
  [
    ['quarter stone', 3.5],
    ['half stone|half a stone|0.5 stone', 7],
    ['1 stone|one stone', 14],
    ['2 stone|two stone', 28],
  ] as const
).map(([words, value]): Entry => [words, { code: 'v', value, unit: 'lb' }]);

export const COUNTS: readonly Entry[] = [
  ...partsOfPound,
  ...stones,
  ...numberWords,
  ...weightWords,
  ...bigNumbers,
  ['fiver', { code: 'i', value: 5, sense: 'spoken', currency: 'GBP' }],
  ['tenner', { code: 'i', value: 10, sense: 'spoken', currency: 'GBP' }],
  ['hundo|hunnid|hundy|c note', { code: 'i', value: 100, sense: 'spoken' }],
  ['half dozen|half a dozen|a half dozen', { code: 'd', value: 6 }],
  ['dozen|a dozen', { code: 'd', value: 12 }],
  [
    'couple|a couple|a couple of|couple of|a couple of the little|couple of the little|a couple of little|couple of little|couple little|a couple of the small|couple of small',
    { code: 'd', value: 2 },
  ],
  ['both', { code: 'd', value: 2, sense: 'definite' }],
  ['single|just one|only one|1 single|one single', { code: 'd', value: 1, sense: 'single' }],
  ['pair|pr|matching pair|matched pair|pari', { code: 'p' }],
  ['pairs|prs|matching pairs|matched pairs', { code: 'p', plural: true }],
  ['set|sets', { code: 't' }],
  ['each|ea|apiece|a piece|each one|per piece|per plate|per each|per weight|a pop', { code: 'e' }],
  ['of each|each of|of every|ea of|of each size|of the following|each of the following', { code: 'E' }],
  ['of|of the|of my', { code: 'o' }],
  ["counted|i count|i counted|have|i have|got|i've got|have got|there are|there is|i got|has|having|have about", { code: '%' }],
  ['marked|stamped|labeled|labelled|that say|saying|that are marked|marked as', { code: 'o', sense: 'marked' }],
  ["of 'em|of them|of these|of those|available|left|in stock|remaining|of each available", { code: '&' }],
  ['a|an|my|this|her|his|our', { code: 'a' }],
  ['some', { code: 'a', sense: 'some' }],
  ['the|these', { code: 'a', sense: 'definite' }],
  ['all|those', { code: 'z', sense: 'definite' }],
  ['also|i also have', { code: 'c', sense: 'also' }],
  ['at', { code: '@' }],
  ['and|plus|along with|&|as well as|including|includes|include|incl|comes with|with|w', { code: 'c' }],
  ['nr|qty|quantity|count|pcs|pieces|piece|pc|ct|cts|count of|qty of|how many|no of', { code: 'j' }],
  [
    'per side|each side|a side|on each side|on both sides|both sides|on each end|each end|per end|on either side|either side|on either end|both ends',
    { code: 'g' },
  ],
  ['x|by|times', { code: 'x' }],
  ["s|'s", { code: 's' }],
];

export const UNITS: readonly Entry[] = [
  ['pound|pounds', { code: 'u', unit: 'lb', sense: 'pounds' }],
  ["lb|lbs|lb's|lbs'|lbd|lbss|pd|pds|lbz|libs|punds|ponds|poud|pouns|pund", { code: 'u', unit: 'lb' }],
  ['pounder|pounders|lber|lbers', { code: 'q', unit: 'lb' }],
  ["kg|kgs|kilo|kilos|kilogram|kilograms|kg's|kilogrammes|kilogramme|kgm", { code: 'u', unit: 'kg' }],
  ['mm|millimeter|millimeters|millimetre|millimetres|mil', { code: 'f', length: 'mm' }],
  ['cm|cms|centimeter|centimeters|centimetre|centimetres', { code: 'f', length: 'cm' }],
  ['m|meter|meters|metre|metres', { code: 'f', length: 'm' }],
  ['in', { code: 'f', length: 'in', sense: 'upon' }],
  ['inch|inches|inchs', { code: 'f', length: 'in' }],
  ['ft|foot|feet|footer', { code: 'f', length: 'ft' }],
];

export const MONEY: readonly Entry[] = [
  [
    'dollar|dollars|bucks|buck|bux|usd|us dollars|bones|clams|smackers|smackeroos|greenbacks|simoleons',
    { code: '$', currency: 'USD' },
  ],
  ['cad|cdn|canadian|canadian dollars|cad dollars', { code: '$', currency: 'CAD' }],
  ['aud|australian dollars', { code: '$', currency: 'AUD' }],
  ['nzd', { code: '$', currency: 'NZD' }],
  ['gbp|quid|nicker|pounds sterling|sterling', { code: '$', currency: 'GBP' }],
  ['eur|euro|euros', { code: '$', currency: 'EUR' }],
  ['chf', { code: '$', currency: 'CHF' }],
  ['c|cent|cents', { code: '¢', currency: 'USD' }],
  ['p|pence', { code: '¢', currency: 'GBP' }],
];

export const MODIFIERS: readonly Entry[] = [
  ['other', { code: 'm', sense: 'ordinal' }],
  [
    'olympic|olympics|olympc|olimpic|olypmic|olmypic|olympik|oly|olympic size|olympic sized|olympic style|olympic grade|olympic type|olympic hole|big hole kind|big hole type|50mm|51mm',
    { code: 'm', fits: '50mm' },
  ],
  ['standard|standards|regular size|standard size|standard sized|std', { code: 'm', fits: '25mm', sense: 'standard' }],
  ['two inch', { code: 'm', fits: '50mm', value: 2, length: 'in' }],
  ['one inch', { code: 'm', fits: '25mm', value: 1, length: 'in' }],
  ['non olympic|not olympic|nonolympic', { code: 'm', fits: '25mm' }],
  [
    'cast iron|castiron|cast|pig iron|grey iron|gray iron|ductile iron|common castings|plain iron|plain black iron|iron plain|all iron|iron ones|iron one',
    { code: 'm', material: 'iron' },
  ],
  [
    'steel|stainless|stainless steel|solid steel|all steel|plate steel|cold rolled steel|bare steel|machined steel|forged steel|steel core',
    { code: 'm', material: 'steel' },
  ],
  ['chrome|chromed|hard chrome|chrome plated|chrome finish|chromed steel|chrome plate', { code: 'm', material: 'chrome' }],
  [
    'rubber coating|rubber coat|rubber clad|rubber coated|rubber encased|rubberized|rubberised|rubber covered',
    { code: 'm', material: 'rubber', grade: 'rubber-coated' },
  ],
  ['vinyl', { code: 'm', material: 'vinyl', sense: 'cover' }],
  ['rubber|rub|crumb rubber|virgin rubber|recycled rubber', { code: 'm', material: 'rubber' }],
  ['urethane|polyurethane|urethane coated', { code: 'm', material: 'urethane' }],
  ['plastic|vinyl coated|plastic coated|plastic covered|vinyl covered|plastic shell', { code: 'm', material: 'vinyl' }],
  [
    'cement|concrete|sand filled|cement filled|concrete filled|filled with cement|filled w cement|filled with concrete|filled with sand|cement inside|sand inside|plastic coated cement|plastic covered cement|vinyl coated cement|vinyl covered cement|vinyl cement|plastic cement|plastic over cement|cement in them|concrete in them|sand in them|plastic coated concrete|vinyl coated concrete|vinyl covered concrete|plastic covered concrete|plastic shell with cement',
    { code: 'm', material: 'cement' },
  ],
  ['wood|wooden|plywood', { code: 'm', material: 'wood' }],
  ['iron', { code: 'm', material: 'iron', sense: 'goods-too' }],
  ['pumping iron|pump iron|ironman|moving iron', { code: 'z' }],
  ['machined iron|machined cast iron', { code: 'm', material: 'iron', grade: 'machined' }],
  ['machined|milled', { code: 'm', grade: 'machined' }],
  // Cast with a deep rim: it says nothing of whether they were turned to weight.
  ['deep dish', { code: 'm' }],
  ['calibrated|competition|comp|powerlifting', { code: 'm', grade: 'calibrated' }],
  [
    'brand new|in the box still|in box still|still boxed|never used|unused|unopened|new in box|new in the box|still in box|still in the box|never opened|never been used|never been opened|bnib|nib|nwt|factory sealed|still sealed|still has tags|still have tags|never installed|still in the bag|still in the wrapper|still in packaging|still in the packaging|still in plastic|never assembled|never touched a bar|never lifted',
    { code: 'm', condition: 'new' },
  ],
  ['new', { code: 'm', condition: 'new', sense: 'new' }],
  [
    'never used that|never used the|never used this|never used those|never used it for|when it was new|when they were new|when this was new|when new|when it was brand new|when i bought it new|pretty much new to|more or less new to|just about new to|new owner|new owners|new home|new house|new apartment|new place|new baby|new gym|new job|new to|new listing|new year|new years|new ones|new one|new setup|new set up|new hobby|new lifter|new york|new jersey|new hampshire|new mexico|new england|new zealand|new orleans|new haven|new line|new wife|new life|new equipment|new car|new truck|new pad|new pads|new bolts|new hardware|new upholstery|new vinyl|new paint|than new|of new|off new|cost new|new cable|new bearings|new bushings|new coat of paint|new collars',
    { code: 'z' },
  ],
  [
    `${each('like|pretty much|more or less|close to|just about|essentially|virtually|almost|practically|nearly|basically', 'new|brand new')}|as new|as good as new|good as new|mint|mint condition|near mint|barely used|hardly used|pristine|looks like new|look like new|looks brand new|look brand new|looking like new|hardly touched|hardly been used|barely been used|looks new|look new|hardly ever used|barely ever used|very lightly used|next to new|showroom condition`,
    { code: 'm', condition: 'like-new' },
  ],
  [
    each(
      'used|only used|used only|used it|used it only|only used it|used them|only used them|used them only|been used|only been used|used maybe|used it maybe|used them maybe|used less than|used like|used just',
      'once|twice|once or twice|a couple times|a couple of times|couple times|a few times|a handful of times|handful of times',
    ),
    { code: 'm', condition: 'like-new' },
  ],
  ['odd', { code: 'm', sense: 'odd' }],
  ['mixed|assorted|misc|random|various|excellent|excellent condition|great condition|lightly used', { code: 'm' }],
  [
    'technique|foam filled|foam core|filled with foam|neoprene|adjustable|free standing|freestanding|black|grey|gray|red|blue|green|yellow|white|silver|gold|orange|old school|vintage|old|good|nice|great|big|small|large|medium|medium sized|mid size|used|heavy duty|commercial|solid|round|grip|gripper|easy grip|tri grip|hex|hexagon|colored|coloured|color|colour|size|sized|quality|extra|matching|full|more|loose|separate|original|usa|made|style|type|professional|weightlifting|virgin|thin|multi|flat|classic|real|genuine|actual|training|bare|raw|rough|lightweight|different|additional|workout|fitness|exercise|spare|aluminium|aluminum|flanged|grips|slots|leftover|sturdy',
    { code: 'm' },
  ],
  ['handle', { code: 'm', sense: 'handle' }],
  ['handles', { code: 'z', sense: 'handle' }],
  ['lonely|lone|stray|orphan|widowed', { code: 'm', sense: 'lone' }],
  ["women's|men's|lady's|womens|mens|ladies|lady|female|male|junior|youth", { code: 'm', sense: 'lifter' }],
  ["dad's old|grandpa's|my old", { code: 'm' }],
];
