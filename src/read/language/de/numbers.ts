/** German numbers in words: "zwei", "fünfundzwanzig", "hundertfünfzig", "zweieinhalb"; and weights as words: "die Zehner". */
import type { Entry } from '../../text/terms.ts';

const ONES = 'ein zwei drei vier fünf sechs sieben acht neun'.split(' ');
const TENS = 'zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig'.split(' ');
const SMALL = 'zwei drei vier fünf sechs sieben acht neun zehn elf zwölf'.split(' ');
const TEENS = 'dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn'.split(' ');

const counts: Entry[] = SMALL.map((word, index): Entry => [word, { code: 'd', value: index + 2 }]);

function* above(): Generator<readonly [string, number]> {
  const belowHundred: [string, number][] = TEENS.map((word, index) => [word, 13 + index]);
  TENS.forEach((ten, index) => {
    belowHundred.push([ten, 20 + 10 * index]);
    ONES.forEach((one, unit) => {
      belowHundred.push([`${one}und${ten}`, 21 + 10 * index + unit]);
    });
  });
  yield* belowHundred;
  const rest: readonly (readonly [string, number])[] = [
    ['', 0],
    ['zehn', 10],
    ...belowHundred.filter(([, value]) => value % 5 === 0),
  ];
  for (const [hundred, hundreds] of [
    ['hundert', 100] as const,
    ...ONES.map((one, index) => [`${one}hundert`, 100 * (index + 1)] as const),
  ])
    for (const [word, value] of rest) yield [`${hundred}${word}`, hundreds + value];
  yield* [
    ['tausend', 1000],
    ['eintausend', 1000],
    ['zweieinhalb', 2.5],
    ['zwei einhalb', 2.5],
    ['eineinhalb', 1.5],
    ['anderthalb', 1.5],
    ['siebeneinhalb', 7.5],
    ['zwölfeinhalb', 12.5],
  ] as const;
}

const weights: readonly (readonly [string, number])[] = [
  ['zweieinhalber', 2.5],
  ['zwei einhalber', 2.5],
  ['fünfer', 5],
  ['zehner', 10],
  ['fünfzehner', 15],
  ['zwanziger', 20],
  ['fünfundzwanziger', 25],
];

export const COUNT_WORDS: readonly Entry[] = [
  ...counts,
  ['zwo', { code: 'd', value: 2 }],
  ['halbes dutzend|ein halbes dutzend', { code: 'd', value: 6 }],
  ['dutzend|ein dutzend', { code: 'd', value: 12 }],
  ...[...above()].map(([word, value]): Entry => [word, { code: 'i', value }]),
  ...weights.map(([word, value]): Entry => [`${word}|${word}n`, { code: 'v', value }]),
];
