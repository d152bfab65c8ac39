/** English phrases for the lot as a whole, said of a price ("for the whole bunch", "takes everything"), and words of room to haggle or none. */
import type { Entry } from '../../text/terms.ts';

const each = (first: string, second: string): string =>
  first
    .split('|')
    .flatMap((one) => second.split('|').map((other) => `${one} ${other}`))
    .join('|');

const LOTS =
  'bunch|batch|pile|works|shebang|enchilada|kit and caboodle|caboodle|setup|set up|shooting match|collection|gym|home gym|kit|deal|outfit|stack|load|ball of wax|nine yards|mess|group|shop|package|bundle|lot|thing|set';
const WHOLE = each('whole|entire|the whole|the entire', LOTS);
const ALL = `${WHOLE}|the works|the bunch|the shebang|every last thing|every last bit|every last piece|every last item|it all|all of it|everything|the lot|the pile|them all|all of them|every bit of it`;
const NUMBERS = 'two|three|four|five|six|seven|2|3|4|5|6|7';
const COUNTED = each('all|the', NUMBERS);

/** Phrases that stand in senses.ts already, each with its older meaning. */
const KNOWN = new Set(
  'whole lot|the whole lot|whole thing|the whole thing|whole set|everything|the lot|all of it|for all of it|for everything|for the lot|for the pile|for the bunch|for them all|for all of them|for the whole thing|for the whole lot|for the whole set|for the whole pile|entire set|takes it all|take it all|takes everything|take everything|takes the pile|takes the lot|takes the whole lot|gets it all|gets everything|buys it all|buy it all|it all|them all|all of them|for the three|for all three|for all four'.split(
    '|',
  ),
);
const fresh = (phrases: string): string => [...new Set(phrases.split('|'))].filter((phrase) => !KNOWN.has(phrase)).join('|');

export const WHOLES: readonly Entry[] = [
  [
    fresh(
      [
        ALL,
        each(ALL, 'go for|goes for|go at'),
        each('for|take|takes|get|gets|gets you|buy|buys|grab|grabs|want|have|haul|hauls|takes home', ALL),
        each(each('all', NUMBERS), 'for|together|together for|at once'),
        each(each('the', NUMBERS), 'together|together for|at once'),
        each('for|take|takes|get|gets|gets you|buy|buys|grab|want', COUNTED),
        'both together|the two together|in one go|all in one go|in one shot|all in one shot|to one buyer|one buyer|clear me out|clears me out|clean me out|cleans me out|clear it out|clears it out|takes it all away|everything together|everything goes|all goes|it all goes|lock stock and barrel|soup to nuts|the complete lot|the complete setup|whole kit and kaboodle|one price for all|all as one|everything must go together',
      ].join('|'),
    ),
    { code: 'L', sense: 'whole' },
  ],
  ['both for', { code: 'L', sense: 'two' }],
];

const SOME =
  'some|a little|little|a bit of|a little bit of|bit of|a tad of|there is|theres|has some|have some|got some|a touch of';
const ROOM =
  'wiggle room|wriggle room|room|leeway|give in the price|movement|movement on price|room to move|room to negotiate|play in the price';

/** Room to haggle, by words that no sum stands beside. */
export const HAGGLING: readonly Entry[] = [
  [
    [
      each(SOME, ROOM.replace('|room|', '|')),
      'wiggle room|wriggle room|room to move|room to negotiate|room on price|room on the price|room for negotiation|room to haggle',
      each(
        'can be|could be|may be|might be',
        'talked into|talked down|talked down a little|talked into less|talked down some|talked down a bit|persuaded to take less|bargained down',
      ),
      each(
        "might|may|could|can|would|will|i'd|i could|we might|we could|i might",
        'do better|do a little better|do a bit better|come down a bit|come down a little|come down some|come down on price|go a little lower|go a bit lower|go lower|knock some off|knock a bit off|work with you|work something out|make a deal|cut a deal|do a deal',
      ),
      "willing to deal|ready to deal|will deal|open to haggling|open to negotiation|open to negotiating|open to a deal|lets make a deal|let's make a deal|lets deal|let's deal|try me|throw me a number|throw a number at me|shoot me a number|shoot me an offer|shoot me a price|hit me with an offer|name your price|name a price|what will you give|what would you give|hear offers|hear any offers|entertain offers|entertain any offers|entertain an offer|entertain reasonable offers|considering offers|consider offers|consider any offers|consider reasonable offers|listen to offers|offers welcome|offers considered|offers accepted|offers entertained|or close offer|or near offer|come with an offer|bring me an offer|bring an offer|put in an offer|price is open|price open|somewhat flexible|fairly flexible|a little flexible|a bit flexible|price is flexible|not set on price|not set on the price|not married to the price|prices can be negotiated|bartering|sensible offers|fair offers|serious offers|serious offers only|decent offers",
    ].join('|'),
    { code: 'O' },
  ],
  [
    [
      each("no|not much|zero|without|there is no|there's no|theres no|ain't no", ROOM),
      each(
        "not|isn't|isnt|aren't|arent",
        'flexible|flexible on price|flexible on the price|haggling|going to haggle|gonna haggle|moving on price|moving on the price|budging on price|coming down',
      ),
      each(
        "don't|dont|do not|please don't|please dont|won't|wont|will not",
        'haggle|bother haggling|ask for less|try to haggle|budge|ask if i will take less|ask for my lowest price|bother with low offers|bother lowballing|come down on price|go any lower|be going lower|take less than that|take any less|take a penny less',
      ),
      "lowballing|no lowballing|lowball offers|lowball offer|low offers|insulting offers|not interested in offers|not interested in low offers|not interested in lowballs|not taking a penny less|prices are the prices|the prices are the prices|the price is what it is|price isn't moving|price isnt moving|price is not moving|price stands|price as stated|price as listed|price as marked|prices as listed|price is set|price fixed|prices fixed|price is fixed|prices are fixed|fixed pricing|price set|prices are set|set price|prices set|set on price|set on the price|that's the price|thats the price|that is the price|what you see is what you pay|take it or leave it|lowest i'll go|lowest ill go|lowest i will go|as low as i'll go|as low as i will go|as low as i go|as low as it goes|that's as low as i go|my bottom|rock bottom price|already priced to sell no|haggling not welcome|hagglers not welcome|no hagglers|tire kickers and hagglers|no negotiations|no bartering|no bargaining|no deals|no discounts|i won't do less|i wont do less|wont do less|won't do less|price is not negotiable|not up for negotiation|not open to offers|not open to negotiation|not taking offers|not accepting offers|not entertaining offers|not looking for offers|don't make offers|dont make offers",
    ].join('|'),
    { code: 'R' },
  ],
  [
    "won't do|wont do|will not do|won't take|wont take|will not take|won't accept|wont accept|not accepting|not doing|not taking",
    { code: 'N', sense: 'refuses' },
  ],
  [
    "i pay|we pay|i'll pay|ill pay|i will pay|we'll pay|i'd pay|i am paying|i'm paying|im paying|we're paying|paying|i buy at|i buy for|i also buy at|i also buy for|buying at|buying for|i give|i'll give|we give",
    { code: 'z', sense: 'pays' },
  ],
  ['or more|and up|and over|or over|or better|and above|or above|or heavier', { code: 'z', sense: 'and-up' }],
  ['only', { code: 'z', sense: 'those-only' }],
  [
    'if|when|after|before then|today|tonight|tomorrow|this week|this weekend|but|because|until|till|unless you|since|later|delivered to|at pickup|otherwise|else|instead|for you|yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|please|thanks|text|call|so|well|just|still|again|too|really|each way',
    { code: 'z', sense: 'aside' },
  ],
];
