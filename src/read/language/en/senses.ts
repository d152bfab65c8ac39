/** English words of price, terms, measures and noise, by the class that recognisers ask for. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';

export const PRICES: readonly Entry[] = [
  ['per', { code: 'r' }],
  ['take|takes', { code: 'A', sense: 'take' }],
  ['make it|no make it|no call it', { code: 'A', sense: 'retract' }],
  [
    "asking|asking price|price|priced at|selling for|sell for|will sell for|selling it for|selling them for|sale price|my price|our price|i want|wanting|want|wants|yours for|will take|i'll take|reduced to|marked down to|price drop|let go for|let it go for|letting go for|looking to get|price is|for only|all yours for|sell at|going for|let them go for|gone for|buys it|buys them|cash price|cost is|call it|down to|reducing to|new asking price|new asking price is",
    { code: 'A', sense: 'told' },
  ],
  ['now|dropped to|lowered to|would like|get|now only|dropping to|lowering to', { code: 'A' }],
  [
    'then|old price|former price|originally|original price|original cost|orig|orig price|retail|retails|retail price|store wanted|store wants|stores want|shop wanted|shop wants|shop price|bought|purchased|was asking|was listed at|was listed for|had listed at|were asking|new price|retail value|retailed|retailing|retails for|msrp|rrp|list price|listed at|paid|i paid|bought for|bought it for|bought them for|bought new for|cost me|cost|costs|costing|cost over|new they are|new these are|new these cost|new these|brand new price|new cost|new is|new for|valued at|value|worth about|compare at|reg|regular price|regularly|normally|usually|store price|stores charge|sells for|sell new for|sell for new|selling new for|goes for|go for|going rate|previously|used to be|reduced from|down from|dropped from|marked down from|spent|invested|scrap yard gives|scrap yard gives me|scrap yard pays|scrapyard pays|scrap pays|scrap price|online for|online they are|they want|they charge|they ask|they get|replacement cost|before|new over|new around|new about|new almost|new nearly|new close to|new was|new were|new they go for|new they run|new it was|brand new was|over new',
    { code: 'F' },
  ],
  [
    each(
      'brand new|new',
      'they are going for|these are going for|these run|these go for|these were|these sell for|they sell for|it runs|it is|this is|this was|this goes for|it goes for|it sells for|they were|this runs|this cost|this costs|it cost|it costs|they cost|these costs|sets go for|sets run|ones are going for|ones go for|ones run|ones cost|ones are|ones sell for|ones start at|plates run|plates go for|plates cost',
    ),
    { code: 'F' },
  ],
  ['brand new they are|brand new these are|brand new they run|brand new they go for|brand new these cost', { code: 'F' }],
  // "Everything in the shop for $600": a place as well.
  [
    'in the store|in stores|at the store|at stores|at the shop|in the shop|in shops|at the sports store',
    { code: 'F', sense: 'in-shops' },
  ],
  ['was|were', { code: 'F', sense: 'stays' }],
  ['save|savings|saving|off|discount|you save', { code: 'V' }],
  [
    'delivery|deliver|delivered|can deliver|shipping|ship|shipped|postage|p&p|post|courier|freight|drop off|gas money|for gas|delivery fee|deliver for',
    { code: 'D' },
  ],
  ['deposit|to hold|holds it|hold fee|holding fee', { code: 'H' }],
  [
    'for all|if you take it all|if you take all of it|if you take every|if you take everything|if you take them all|if you take the lot|if you take all of them|flat for all|for every last one|every last one|if taken together|if bought together|if you buy it all|for the group|for the set|all for|everything for|as a lot|as a set|lot price|job lot|as a job lot|job lot price|package|package deal|package price|bundle|bundle price|all together|total price|if you take all|as a package|all in|grand total|for the package|comes to|full set|complete set',
    { code: 'L' },
  ],
  ['for the both|for the both of|if you take both|for both|for both of them', { code: 'L', value: 2 }],
  [
    'in total|total|total weight|totaling|totalling|totals|total of|adds up to|combined|altogether|overall|in all|all told',
    { code: 'L', sense: 'sum' },
  ],
  [
    "obo|oboe|o b o|no reasonable offer refused|no sensible offer refused|ono|or best offer|best offer|or nearest offer|or offer|negotiable|neg|make offer|make an offer|make me an offer|open to offers|offers|offer|taking offers|price negotiable|willing to negotiate|reasonable offers|all offers considered|haggle|or best|flexible|will negotiate|send offers|accepting offers|come make an offer|nego|open to reasonable offers|can talk about the price|can take less|could take less|will take less|would take less|might take less|may take less|take a bit less|take a little less|might go lower|could go lower|can go lower|room to negotiate|work something out|we'll work something out|work out a deal|work with you on price|work with you on the price|send me your best|give me your best|message me your best|msg me your best|text me your best|shoot me your best|msg me ur best|your best offer|ur best offer|name your price|and what you'd pay|and what you would pay|what you'd pay for it|talk about the price|can negotiate|price can be discussed",
    { code: 'O' },
  ],
  [
    'can be discussed|we can speak about it|we can talk about it|we can talk|can discuss|we can discuss|we can discuss it|can talk about it',
    { code: 'O', sense: 'talks' },
  ],
  [
    "not taking less|nothing less|won't take less|will not take less|not a penny less|don't lowball|don't low ball|no low ball|low balls|low ball|low ball offers|firm on price|firm on the price|firm at|last price|last price please|not looking to dicker|not looking to haggle|not looking to negotiate|not here to haggle|no counter offers|firm|price firm|firm price|price is firm|no lowballs|no low balls|no lowballers|no low ballers|no lowball offers|non negotiable|nonnegotiable|not negotiable|not really negotiable|not lower|no lower|not going lower|will not dicker|won't dicker|no dickering|that's the bottom|bottom dollar|bottom price|no offers|no haggling|not budging|no less|fixed price|no haggle|no discussion|no discussions|lowballers|lowball|lowballs|low ballers|won't go lower|no negotiation|no negotiating|not negotiating|price isn't negotiable|prices are firm|prices firm|price is the price|the price is the price|prices are what they are|price is what it is|not less",
    { code: 'R' },
  ],
  ['cash|cash only|cash money|takes it|takes them|gets it|gets them|cash and carry|cash in hand|or less', { code: '£' }],
  ['free|for free|giving away|give away|no charge|curb alert', { code: 'Z' }],
];

export const RELATIONS: readonly Entry[] = [
  [
    'true mass|true weight|true weights|actual mass|actual weight|actual weights|real weight|real weights|measured mass|measured weight|scale weight',
    { code: 'z', sense: 'measured' },
  ],
  ['that|which|whose', { code: 'z', sense: 'which' }],
  ['is|are', { code: 'z', sense: 'is' }],
  ['first|second|third|another', { code: 'z', sense: 'ordinal' }],
  ['scale|scales', { code: 'z', sense: 'scale' }],
  ['pull|pulled|pulling', { code: 'z', sense: 'pull' }],
  ['purchase|minimum purchase|minimum order|minimum|min order|smallest order', { code: 'z', sense: 'least' }],
  [
    'lumber|timber|board|boards|joist|joists|rafter|decking|stud|studs|tubing|tube|tubes|sheet|sheets|profile|footprint|steel tubing|rug|carpenter|4x4|square tubing|square tube|frame|beam|beams|sheets of',
    { code: 'z', sense: 'sizes' },
  ],
  ['update|updated|edit|edited|price drop alert|price update|addendum|bump', { code: 'z', sense: 'update' }],
  [
    'no wait|wait no|no sorry|scratch that|strike that|make that|no make that|i mean|i meant|i meant to say|meant to say|should say|should read|should have said|correction|typo|oops|whoops|my mistake|my bad|miscounted|i miscounted|recounted|i recounted|counted wrong',
    { code: 'z', sense: 'retract' },
  ],
  ['sorry|actually', { code: 'z', sense: 'retract-maybe' }],
  [
    "the rest|for the rest|rest of it|rest of the stuff|rest is|the rest is|rest for|the remainder|remaining items|remaining stuff|what's left|what is left|everything left|all that's left|whatever is left",
    { code: 'z', sense: 'rest' },
  ],
  [
    "if gone|if it's gone|if they're gone|if sold|until gone|till gone|until it's gone|until sold|till sold|when gone|once sold|once gone|when sold|be gone|to be gone|gone by|gone today|gone this week|gone this weekend|need gone|needs gone|want gone|want it gone|want them gone|gone tonight|gone tomorrow|gone asap|gone fast|gone before|gone this month|gone soon|gone now|gone quick",
    { code: 'z', sense: 'be-gone' },
  ],
  [
    'will split|can split|could split|would split|may split|happy to split|willing to split|split up|split into|split them|split it|gone off|plate loaded|bar none|if you take|if you buy|when you buy|if you want|if you need|take at least',
    { code: 'z' },
  ],
  [
    'before you offer|before you make an offer|feel free|toll free|drug free|pet free|smoke free|hands free|free time|free of charge delivery|free delivery|free shipping|free local delivery',
    { code: 'z' },
  ],
  ['well kept|kept up', { code: 'z' }],
  [
    "i have no room|have no room|we have no room|i've no room|i got no room|got no room|have got no room|no room for it|no room for them|no room for the|no room in|no room at|no room here|no room anymore|no room any more|no room left|haggle at your peril|haggle at your own risk|haggle at your own peril",
    { code: 'z' },
  ],
  ['was kept|been kept|is kept|are kept|were kept', { code: 'z', sense: 'stays' }],
  [
    'unless|unless noted|unless otherwise noted|unless marked|unless otherwise marked|unless stated|otherwise noted|if not marked|unless priced',
    { code: 'z', sense: 'unless' },
  ],
  [
    "nae|nay|no|not|never|without|isn't|isnt|aren't|arent|none|don't|dont|doesn't|doesnt|does not|do not|didn't|didnt|is not|are not|has not|hasn't|hasnt|nothing|nothing's|nothing is|nothing has|nothing has been|nobody's|wasn't|was not|zero|non|has no|have no|wont|won't|can't|cannot|free of|nor|neither|w/o|w/out",
    { code: 'N' },
  ],
  [
    "not included|are not for sale|is not for sale|are not included|is not included|not for sale|isn't for sale|excluded|separate ad|are staying|is staying",
    { code: 'Q', sense: 'left-out' },
  ],
  [
    "aren't for sale|not up for sale|isn't included|aren't included|not part of|not selling|not include|not included in|excluding|minus|except|except for|other than|apart from|aside from|with the exception of|save for|keeping|kept the|kept my|i kept|held onto the|i'm keeping|sold separately|staying|stays|not with it|does not include|doesn't include|not including|does not come with|doesn't come with|no longer have|not pictured|don't have|do not have|not available|everything but|not in this ad|all except|all but|got lost|got lost in|my keeper|is my keeper|are my keepers|is mine|are mine|isn't mine|is not mine|aren't mine|are not mine|belongs to|belong to|stays where|decided to keep|decided to keep the|going to keep|going to keep the|gonna keep|gonna keep the|want to keep the|plan to keep|planning to keep|will keep the|i'll keep the|hanging on to|hanging onto|holding on to|holding onto|hang on to|hold on to|stay with me|stays with me|stay with us|staying with me|staying with us|borrowed|there was|there were|there used to be",
    { code: 'Q' },
  ],
  [
    'in my other ads|in my other ad|see my other ads|other listing|other listings|other ad|other ads|other post|other posts',
    { code: 'Q', sense: 'elsewhere' },
  ],
  ['trades for|swap for|swaps for', { code: 'Q', sense: 'trade-for' }],
  [
    'trades considered|trades considered for|trades accepted|consider trades|consider trades for|interested in trades|interested in trades for|open to trades|open to trades for|take trades|take trades for|trades i would take|trades wanted',
    { code: 'z', sense: 'trade-for' },
  ],
  [
    'sold|gone|got stolen|was stolen|were stolen|went missing|sold already|sold as well|sold too|sold also|also sold|already sold|are sold|is sold|have sold|has sold|been sold|spoken for|no longer available|are gone|is gone|already gone|went to the scrapper|went to the dump|went to scrap|was scrapped|got scrapped|threw it out|threw them out|sold out|been claimed|is claimed|are claimed|has been claimed|have been claimed|has been picked up|have been picked up|got claimed|got sold|got picked up|was claimed|were claimed|was sold|were sold|found a home|found a new home|someone took|somebody took|someone bought|somebody bought|someone grabbed|somebody grabbed',
    { code: 'Y' },
  ],
  [
    each('gone', 'a bit|a little|dull|rusty|yellow|soft|hard|stiff|flat|bad|brown|green|tacky|sticky|grey|gray|to rust|slightly'),
    { code: 'z' },
  ],
  // "He is grown and gone": of people.
  [
    `grown and gone|up and gone|dead and gone|${each('he|she|son|my son|daughter|my daughter|husband|my husband|kid|the kid', 'is gone|has gone|is gone now')}|he's gone|she's gone|kids are gone|the kids are gone|boys are gone`,
    { code: 'z' },
  ],
  [
    each(
      'paint|finish|chrome|knurling|knurl|padding|foam|label|labels|stickers|numbers|lettering|logos|markings|tread|plating|grip',
      'gone|is gone|are gone|mostly gone|is mostly gone|are mostly gone|all gone|half gone|has gone',
    ),
    { code: 'z' },
  ],
  // Promised and not fetched: still there if the buyer does not come.
  [
    'pending|sale pending|pending sale|spf|pending pickup|pending pick up|pending payment|on hold|is on hold|are on hold',
    { code: 'z', sense: 'pending' },
  ],
  ['mostly|mainly|largely|primarily|a mix of|mix of|mixture of|a mixture of|chiefly', { code: 'z', sense: 'mostly' }],
  [
    'sold by the|sold by weight|sold by pound|sold by the pound|on offer|on offer is|on offer are|sold as|sold in|sold new|sold only|not sold|only sold|sold my|sold our|sold the house|sold for|being sold|must be sold|to be sold|can be sold|will be sold|sold individually|sold per',
    { code: 'z' },
  ],
  [
    'wtb|want to buy|wanting to buy|looking to buy|wanted|iso|in search of|looking for|looking 4|lookin for|lookin 4|lookn for|want to trade for|wanted to buy|seeking|searching for|on the hunt for|anyone selling|anybody selling|does anyone have|anyone have',
    { code: 'W' },
  ],
  // What the seller would rather have, in an ad that offers something.
  ["after a|after an|i'm after|i am after", { code: 'W', sense: 'rather' }],
  [
    'fit|fits|fitting|suit|suits|suited to|suited for|suitable for|to suit|will suit|room for|compatible with|came with|came with the|works with|work with|used with|use with|designed for|made for|to fit|that fit|intended for|meant for|accepts|accept|holds|hold|for use with|goes on|go on|any|your|holding|use|using|need|needs|needing|require|requires|your own|bring your own|buy your own|fit on|fits on|fit on most|fits on most|fit most|fits most|holder for|store|stores|storing',
    { code: 'X' },
  ],
  [
    'for sale|for sell|for pickup|for pick up|for details|for info|for more info|for more|for now|for years|for free weights',
    { code: 'z' },
  ],
  ['trade|trades|trading|swap|swaps|swapping|barter|straight swap|straight trade', { code: 'z', sense: 'trade' }],
  ['lot', { code: 'z', sense: 'named-lot' }],
  [
    'was going to keep|was going to keep the|was gonna keep|was planning to keep|were going to keep|wanted to keep',
    { code: 'z' },
  ],
  [
    'rain or shine|hundreds of|thousands of|weight room|weight rooms|weight training|weight class|weight belt|weight loss',
    { code: 'z' },
  ],
  [
    'asking if|ask if|asks if|ask about|asking about|asking whether|ask whether|asked if|wondering if|before asking|before you ask|ask me for|ask me about|ask me if|asked me for|asked me if|asking me for|asking me if',
    { code: 'z', sense: 'asks-whether' },
  ],
  ['give or take|plus or minus|plus minus|within', { code: 'z', sense: 'tolerance' }],
  ['increments|increment|jumps|steps|intervals', { code: 'z', sense: 'steps' }],
  ['to|through|thru', { code: 'z', sense: 'to' }],
  ['per line|per row|for the row|for the line|a line|a row', { code: 'z', sense: 'per-line' }],
  ['toward|towards', { code: 'z', sense: 'toward' }],
  ['works out to|working out to|works out at|that works out to|which works out to|which is', { code: 'z', sense: 'works-out' }],
  ['just the|only the|sell just|sell only|alone|by itself|on its own', { code: 'z', sense: 'only' }],
  ['worth of|worth of the|worth', { code: 'b' }],
  ['for', { code: 'w' }],
  ['or', { code: 'z', sense: 'or' }],
  ['every', { code: 'z', sense: 'every' }],
  ['between', { code: 'z', sense: 'between' }],
  ['from|fr|starting at|starting from', { code: 'z', sense: 'from' }],
  [
    'by the|near|near the|next to the|hits|hits against|touches|touched|bumps|bumped|rubs|rubbed|rubs on|scrapes|scraped',
    { code: 'z', sense: 'place' },
  ],
  ['letting go of|getting rid of|parting with', { code: 'z' }],
  ['kind of|type of|sort of', { code: 'z', sense: 'kind-of' }],
  [
    'already|at home|at mine|of my own|of our own|for myself|too many as it is|in my own|other ones|better ones|dogs|cats|daughters|sons|children',
    { code: 'z', sense: 'own-ones' },
  ],
  [
    'to hang|to put|to store|to keep|to stack|to rack|to carry|to organise|to organize|that holds|which holds|for holding|for storing|for hanging|for stacking|to set|to stick',
    { code: 'z', sense: 'stow' },
  ],
  [
    'upgraded to|upgrading to|upgraded my|upgraded all my|replaced them with|replaced it with|replacing them with|replacing it with|moved up to|went to all|went with|downsizing to|downsizing to just|down to just|switching to|switching to just|switched to|switched over to|switching over to|moving to just|moved on to|changed to|changing over to|training with just|train with just|sticking with|sticking with just|sticking to',
    { code: 'z', sense: 'turn-to' },
  ],
  ['station|stations|bundles|package of gear|packages of gear', { code: 'z', sense: 'bundle' }],
  ['over|under|less than|more than', { code: 'U', sense: 'bound' }],
  [
    'a hair over|a hair under|a touch over|as near as|just about|about|approx|approximately|around|roughly|nearly|almost|close to|just over|just under|at least|little over|a little over|or so|ish|circa|approximate|est|estimated',
    { code: 'U' },
  ],
  [
    "i think|i believe|not sure|unsure|probably|maybe|might be|guess|i'm guessing|guessing|think|believe|supposedly|should be|seller said|was told|i was told|pretty sure|supposed to be|looks like|looks to be|seems|appears",
    { code: 'y' },
  ],
];

export const MEASURES: readonly Entry[] = [
  // What is marked on goods is no guess of the seller's.
  ['say', { code: 'U', sense: 'marking' }],
  ['says', { code: 'y', sense: 'marking' }],
  ['big hole|big holes|large hole|large holes|bigger hole|bigger holes', { code: 'B', fits: '50mm' }],
  ['small hole|small holes|little hole|little holes|smaller hole|smaller holes', { code: 'B', fits: '25mm' }],
  [
    'hole|holes|bore|center hole|centre hole|center holes|centre holes|hole size|hole diameter|holes in the middle|center|centre|centers|bores|inner diameter|inside diameter|opening|openings|hole in the middle|inside hole|id|hub',
    { code: 'B' },
  ],
  [
    'grip diameter|shaft diameter|thickness|thick|diameter|dia|shaft thickness|bar diameter|od|o d|outer diameter|outside diameter|barrel|shaft dia',
    { code: 'S' },
  ],
  ['shaft', { code: 'S', part: 'bar' }],
  ['sleeve|sleeves', { code: 'T', part: 'bar' }],
  ['ends|sleeve diameter|loadable sleeve|loadable|end|collar to collar', { code: 'T' }],
  ['long|length|in length|overall length|tall|high|wide|width|height|depth', { code: 'G' }],
  [
    'capacity|weight capacity|rated|rated to|rated for|rated at|holds up to|hold up to|up to|max|max weight|max load|weight limit|supports|support|supports up to|max capacity|weight rating|weight rated|limit|load capacity|can handle|load|maximum|maximum weight|rating|weight cap|can hold|will hold|good for|tested to|safe working load',
    { code: 'K' },
  ],
  ['psi|tensile|tensile strength|psi tensile', { code: 'I' }],
  [
    "bench press pr|bench press prs|bench pr|bench prs|bench press record|squat pr|squat prs|deadlift pr|deadlift prs|my max bench|max bench|bench max|my bench max|my bench press max|squat|squats|squatted|rack pulls|rack pull|bench presses|bench pressing|deadlift|deadlifts|deadlifted|benched|bench pressed|bench pressing|lifted|lifts|press|pressed|my max|personal record|maxed|maxing|rep|reps|one rep max|repping|i weigh|weigh|weighed|weighs|weighing|body weight|bodyweight|lost|gained|i'm|im|year old|years old|yr old|yrs old|clean and jerk|snatch",
    { code: 'P' },
  ],
  ['miles|mile|mi|km|kms', { code: 'J', sense: 'distance' }],
  [
    "years|year|yrs|yr|months|month|weeks|week|days|day|hours|hour|hrs|hr|minutes|minute|mins|min|am|pm|o'clock|people|person|kids|gauge|ga|percent|%|st|nd|rd|th|gallon|gallons|oz|ounce|ounces|watt|watts|volt|hp|cc|amp|gb|sets of|positions|position|levels|stories|story|floor|floors|bedroom|bath|x a week|sq",
    { code: 'J' },
  ],
];
