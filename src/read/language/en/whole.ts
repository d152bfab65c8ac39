/** English phrases for the lot as a whole, said of a price ("for the whole bunch", "takes everything"), and words of room to haggle or none. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';

const LOTS =
  'bunch|batch|pile|works|shebang|enchilada|caboodle|setup|set up|collection|gym|home gym|kit|deal|outfit|stack|load|mess|group|shop|package|bundle|lot|thing|set';
const WHOLE = each('whole|entire|the whole|the entire', LOTS);
const ALL = `${WHOLE}|the works|the bunch|the shebang|every last thing|every last bit|every last piece|every last item|it all|all of it|everything|the lot|the pile|them all|all of them|every bit of it`;
/** Pieces in words and digits. */
const NUMBERS: readonly (readonly [words: string, value: number])[] = [
  ['two|2', 2],
  ['three|3', 3],
  ['four|4', 4],
  ['five|5', 5],
  ['six|6', 6],
  ['seven|7', 7],
  ['eight|8', 8],
  ['ten|10', 10],
];

export const WHOLES: readonly Entry[] = [
  [
    [
      ALL,
      each(ALL, 'go for|goes for|go at'),
      each('for|take|takes|get|gets|gets you|buy|buys|grab|grabs|want|have|haul|hauls|takes home', ALL),
      'sold together only for|sold together only|sold together|takes all|take all|both together|in one go|all in one go|to one buyer|one buyer|clear me out|clean me out|everything together|everything goes|all goes|it all goes',
    ].join('|'),
    { code: 'L', sense: 'whole' },
  ],
  ...NUMBERS.map(
    ([words, value]): Entry => [
      [
        each(each('all', words), 'for|together|together for|at once'),
        each(each('the', words), 'together|together for|at once'),
        each('for|take|takes|get|gets|gets you|buy|buys|grab|want', each('all|the', words)),
      ].join('|'),
      { code: 'L', sense: 'whole', value },
    ],
  ),
  ['both for', { code: 'L', sense: 'two' }],
];

const SOME = 'some|a little|little|a bit of|a little bit of|bit of|there is|theres|has some|have some|got some|a touch of';
const ROOM = 'wiggle room|wriggle room|room|leeway|movement|room to move';

/** Room to haggle, by words that no sum stands beside. */
export const HAGGLING: readonly Entry[] = [
  [
    [
      each(SOME, ROOM.replace('|room|', '|')),
      'wiggle room|wriggle room|room to move',
      each('can be|could be|may be|might be', 'talked into|talked down|talked down a little|bargained down'),
      each(
        "might|may|could|can|would|will|i might|i can|i'd|i could|we might|we could|i might",
        'do a small bit off|do better|do a little better|come down a bit|go lower|work something out',
      ),
      "willing to deal|will deal|let's deal|try me|throw me a number|name a price|bartering",
    ].join('|'),
    { code: 'O' },
  ],
  [
    [
      each("no|not much|zero|without|there is no|there's no|ain't no", ROOM),
      each("not|isn't|aren't", 'flexible|flexible on the price|haggling|gonna haggle|coming down'),
      each("don't|dont|do not|please don't|won't|wont|will not", 'haggle|bother haggling|ask for less|budge|bother lowballing'),
      "lowballing|no lowballing|lowball offers|lowball offer|low offers|not interested in offers|not taking a penny less|price isn't moving|prices are the prices|price stands|price is set|price fixed|no hagglers|no negotiations|no bargaining|not taking offers",
    ].join('|'),
    { code: 'R' },
  ],
  ["won't do|won't take|will not take|won't accept|not accepting|not doing|not taking", { code: 'N', sense: 'refuses' }],
  [
    "i pay|we pay|i'll pay|i will pay|we'll pay|i'd pay|i'm paying|we're paying|paying|i buy at|buying at|buying for|i give|i'll give|we give",
    { code: 'z', sense: 'pays' },
  ],
  ['or more|and up|and over|or over|or better|and above|or above|or heavier', { code: 'z', sense: 'and-up' }],
  ['only', { code: 'z', sense: 'those-only' }],
  [
    'when|after|today|tonight|tomorrow|this week|this weekend|because|until|till|since|later|delivered to|at pickup|else|instead|monday|tuesday|wednesday|thursday|friday|saturday|sunday|text|call|so|just|still',
    { code: 'z', sense: 'aside' },
  ],
];
