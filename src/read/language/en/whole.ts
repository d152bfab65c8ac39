/** English phrases for the lot as a whole, said of a price ("for the whole bunch", "takes everything"), and words of room to haggle or none. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';

const LOTS =
  'bunch|batch|pile|works|shebang|enchilada|caboodle|kit and caboodle|setup|set up|collection|gym|home gym|kit|deal|outfit|stack|load|mess|group|shop|package|bundle|lot|thing|set';
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
      'sold together only for|sold together only|sold together for|sold together|only sold together|sold only together|must be sold together|must sell together|takes all|take all|both together|the two together|in one go|all in one go|in one shot|all in one shot|to one buyer|one buyer|clear me out|clears me out|clean me out|cleans me out|clear it out|clears it out|takes it all away|everything together|everything goes|all goes|it all goes|the complete lot|the complete setup|whole kit and kaboodle|one price for all|all as one|everything must go together',
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

const SOME =
  'some|a little|little|a bit of|a little bit of|bit of|a tad of|there is|theres|has some|have some|got some|a touch of';
const ROOM =
  'wiggle room|wriggle room|room|leeway|give in the price|movement|movement on price|room to move|room to negotiate|play in the price';

/** Room to haggle, by words that no sum stands beside. */
export const HAGGLING: readonly Entry[] = [
  [each("what's your|what is your|what's the|your", 'lowest|lowest price|best price'), { code: 'z', sense: 'lowest' }],
  [
    [
      each(SOME, ROOM.replace('|room|', '|')),
      'wiggle room|wriggle room|room to move|room to negotiate|room on price|room on the price|room for negotiation|room to haggle',
      each(
        'can be|could be|may be|might be',
        'talked into|talked down|talked down a little|talked into less|talked down some|talked down a bit|persuaded to take less|bargained down',
      ),
      each(
        "might|may|could|can|would|will|i might|i can|i'd|i could|we might|we could",
        'do a bit off|do a small bit off|do a little off|take a bit off|take a little off|take some off|do something on the price|do something on price|drop a bit|drop a little|do better|do a little better|do a bit better|come down a bit|come down a little|come down some|come down on price|go a little lower|go a bit lower|go lower|be negotiated|haggle|negotiate|take a little less|do a little less|do a bit less|move a little|knock some off|knock a bit off|work with you|work something out|make a deal|cut a deal|do a deal',
      ),
      "willing to deal|ready to deal|will deal|open to haggling|open to negotiation|open to negotiating|open to a deal|let's make a deal|let's deal|try me|shoot me a number|throw me a number|name your price|name a price|what would you give|price is open|price can move|known to take less|not set in stone|isn't set in stone|haggling welcome|ovno|whatever you think is fair|open to being told|closest offer|not set on price|not set on the price|bartering",
    ].join('|'),
    { code: 'O' },
  ],
  [
    [
      each("no|not much|zero|without|there is no|there's no|ain't no", ROOM),
      each(
        "not|isn't|aren't",
        'up for debate|up for discussion|accepting less|going any lower|entertaining offers|coming off that|flexible|flexible on price|flexible on the price|haggling|going to haggle|gonna haggle|moving on price|moving on the price|budging on price|coming down',
      ),
      each(
        "don't|dont|do not|please don't|won't|wont|will not",
        'haggle|bother haggling|ask for less|try to haggle|budge|ask if i will take less|ask for my lowest price|bother with low offers|bother lowballing|come down on price|go any lower|be going lower|take less than that|take any less|take a penny less|take less|be taking less|accept less|go lower|come off that|respond to offers|bother with offers|entertain offers|ask me to go lower|negotiate',
      ),
      "non neg|no deals|no discounts|lowest i will go|lowballing|no lowballing|lowball offers|lowball offer|low offers|not interested in offers|not interested in low offers|not taking a penny less|price isn't moving|price is not moving|prices are the prices|price stands|price is set|price fixed|price is fixed|prices are fixed|prices are set|set on price|that's the price|take it or leave it|lowest i'll go|as low as i will go|as low as i go|hagglers not welcome|no hagglers|no negotiations|no bargaining|i won't do less|won't do less|not open to offers|not open to negotiation|not taking offers|not accepting offers|don't make offers",
    ].join('|'),
    { code: 'R' },
  ],
  [
    "won't do|will not do|won't take|will not take|won't accept|not accepting|not doing|not taking",
    { code: 'N', sense: 'refuses' },
  ],
  [
    "i pay|we pay|i'll pay|i will pay|we'll pay|i'd pay|i am paying|i'm paying|we're paying|paying|i buy at|i buy for|i also buy at|i also buy for|buying at|buying for|i give|i'll give|we give",
    { code: 'z', sense: 'pays' },
  ],
  ['or more|and up|and over|or over|or better|and above|or above|or heavier', { code: 'z', sense: 'and-up' }],
  ['only', { code: 'z', sense: 'those-only' }],
  [
    'when|after|today|tonight|tomorrow|this week|this weekend|because|until|till|since|later|delivered to|at pickup|else|instead|monday|tuesday|wednesday|thursday|friday|saturday|sunday|text|call|so|just|still',
    { code: 'z', sense: 'aside' },
  ],
];
