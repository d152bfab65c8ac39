/** English words that are asked for by name (language/cues.ts). Common practice, no source. */
import type { CueName } from '../cues.ts';

export const CUES: Readonly<Record<CueName, string>> = {
  'not-so':
    "don't|do not|aren't|are not|isn't|is not|doesn't|does not|not|not so much|not|none|haven't|hasn't|have none|has none|don't have any|do not have any|doesn't have any|does not have any|don't have it|doesn't have it|not at all",
  'is-fine': 'are fine|is fine|are ok|is ok|are okay|is okay|fine|are good|is good|look fine|looks fine|look good|looks good',
  'is-so':
    'do|does|are|is|have|has|have some|has some|have a little|has a little|have a bit|has a bit|have a few|has a few|sure do|sure does',
  'so-too':
    "too|as well|also|likewise|the same|same|ditto|do too|does too|are too|is too|have too|has too|are the same|is the same|do as well|does as well|are as well|is as well|have it too|has it too|either|aren't either|isn't either|don't either|doesn't either|in the same shape|same shape|in same shape|in the same condition|in same condition|same condition|has the same|have the same|much the same|about the same",
  'so-too-of':
    'as does|as do|so does|so do|so is|so are|as is|as are|as has|as have|same with|same for|same on|same goes for|same story with|same story on|same thing with|same thing on|ditto|ditto for|ditto on|likewise|neither do|neither does|neither is|neither are|nor|nor do|nor does|nor is|nor are|nor on',
  'not-so-of':
    'not|not on|nothing on|none on|not so much on|not the case with|not so with|no sign on|but none on|nothing wrong with',
  except:
    'except|except for|all except|apart from|other than|all but|everything but|aside from|with the exception of|save for|excluding|bar the|but for',
  'belongs-to': 'off|off of|off a|off an|off my|from|out of|to fit|fits|fit|used on|used in|used for',
  'pulled-bar': 'lat bar|lat pulldown bar|pull down bar|pulldown bar|row bar|tricep bar|triceps bar|tricep rope|cable handle',
  'shape-of-bar': 'short|long|wide|v|small|straight|low row|row|rowing|curl|angled|the short|the long',
  'of-dumbbells': 'dumbbell*|dumbell*|db rack',
  'both-goods': 'both|both of them|both of these|both of those|the two of them|the pair of them',
  insert: 'insert|inserts|ring|rings|hub ring|center ring|centre ring|collar ring|sleeve insert|bushing|bushings',
  for: 'for',
  from: 'from',
  to: 'to|down to',
  with: 'with|w|including|plus',
  or: 'or',
  concerning: 'on|for',
  under: 'under|less than',
  so: 'so|thus|makes',
  'is-now': 'is|are|now',
  all: 'all',
  'all-sold': 'all|everything|* all|* everything',
  both: 'both',
  any: 'any',
  'whole-lot': 'all|every*|lot|pile|total|together|altogether|package|bundle|whole|entire',
  'of-everything':
    'everything|it all|all of it|every last|every bit|takes all|take all|whole|entire|one price for all|total price|grand total|one buyer|clear me out|clears me out|clean me out|cleans me out|all together|altogether',
  'priced-for-all': 'all in|for*|takes *|all for|as a lot',
  'before-price-of-all': '* for|all *',
  them: "it|them|these|they|this|they are|these are|they're",
  'one-more': 'another|an extra|extra|an additional|additional',
  'unit-of-money': 'buck|dollar|quid',
  price: 'price*',
  'is-enough':
    "is fine|is ok|is okay|is good|is fair|is plenty|is enough|will do|would do|will do it|does it|does the trick|works for me|is all i|is all we|and it's yours|and its yours|and you're done|and everything goes|and it goes|it's yours|its yours|is yours|would be *|would make",
  together: 'together|both together|taken together|combined',
  'others-offer':
    "ask* if|ask me if|asking me if|ask* whether|com* at me|offer* me|insult me|lowball* me|low ball me|hit me with|won't take|will not take|wouldn't take|not taking|not accepting|won't accept|not going to take|not gonna take|turned down|said no to|* offered|if you offer|who offer*|people offer*|don't offer|do not offer|offers under|offers below|offers of|offers like|messages saying|will you take|would you take|will u take",
  'seen-elsewhere':
    'i saw|we saw|did see|i*ve seen|ive seen|have seen|seen the same|seen these|seen them|seen similar|saw the|saw these|saw them|saw similar|i see *|looked * up|googled|people ask*|people are asking|people want|people get|others ask*|others are *|others want|others sell*|every* wants|every* is asking|every* else|guys are|folks are|guy down the|next guy|other guy|another guy|some guy|some people|other people|most ask|similar ones|ones like *|elsewhere|big box|* are listed|got quoted|was quoted|quoted me|pawn shop|scrap yard|scrapyard|the store wants|stores want|they want',
  asks: '*ask*|*want*|*sell*|*price*',
  'new-price': 'new price*|new asking price*|new sale price*',
  lowered: 'dropped*|dropping*|lowered*|lowering*|reduced*|down*|price drop*',
  'prices-are': "that's|thats|prices|prices are|price",
  now: 'now',
  bid: 'bid|* bid',
  costs: 'cost|costs',
  'stand-in':
    "placeholder*|place holder|filler|dummy price|fake price|made up number|not a real price|not the real price|not the actual price|not actual price|not the price|isn't the price|price isn't real|price is not real|price isn't really|isn't really a|not really a dollar|ignore the price|ignore price|price above is wrong|price shown is|amount shown is|price listed is not|price listed isn't|to post it|so it posts|so i can list|just to post|had to put zero|had to put something|had to enter|have to enter|has to have a price|makes * put|made * put|makes * enter|won't let me leave|wants a number|listing rules|box means nothing|price means nothing|just for the listing|site glitch|to get seen",
  'perhaps-former': 'new price|cost|costs|value',
  shipped: 'shipped|delivered',
  take: 'take|takes',
  'lets-go': 'take|takes|do|go|let|let them go|accept|consider',
  would: "would|i'd|could|might|may|i'll|will|we'd",
  'would-perhaps': "might|may|would take|i'd take|i would take|i'd|would|could",
  'would-take': "accept|would take|i'd take|i would take|will take",
  ignored: 'ignored|blocked|deleted|rejected|no reply|no response|no answer',
  spends: 'spend|spending|order|orders|purchase|total|buy',
  contact: 'contact|message|email|text|call|bother',
  'adds-up':
    "that's|thats|that is|it's|its|it is|up to|adds up to|add up to|comes to|come to|comes out to|totals|totaling|totalling|works out to|makes|total|in all|altogether",
  ones: 'ones|one',
  another: 'another|a second',
  'one-is': "one's",
  'no-promise': "can't promise|cannot promise|no promises|no guarantee|no guarantees|can't guarantee|not guaranteed",
  missing: 'missing|is missing|are missing',
  incomplete: 'minus|missing|short|less|lacks|lacking|not complete|incomplete',
  once: 'used to be|once|was|originally',
  gone: 'sold|gone',
  only: 'only|only the|just the',
  left: 'left|remaining',
  'still-selling': 'selling|still|available|asking',
  sells:
    "selling|only selling|just selling|am selling|i'm selling|i am selling|will sell|want to sell|letting go of|getting rid of|parting with|offering",
  keeps: "keeping|i'm keeping|keep|i keep|am keeping|holding on to|hanging on to",
  'part-with':
    'sell|sell only|sell just|selling|split|split off|split up|splitting|separate|part with|part out|break|break up|let go|let go of|ask|ask for|ask about',
  coat: 'paint|coating|powder coat|powdercoat|enamel|paint job',
  'comes-off': 'flaking|flakes|flaked|flake|peeling|peels|peeled|chipping|chips|chipped|coming|comes|came|nicked',
  cover:
    'vinyl|upholstery|pad|pads|padding|seat|seats|cushion|cushions|foam|leather|pleather|backrest|back pad|bench pad|seat pad|bench upholstery|bench seat|cover|fabric',
  'other-one': 'other|other one|the other|the other one|its mate|its twin|its pair|its partner|the second one',
  'small-part':
    'bolt|bolts|nut|nuts|threaded nut|lock nut|screw|screws|pin|pins|knob|knobs|cap|caps|end cap|end caps|spring|ring|foot|feet|washer|washers|pad|decal|sticker|chrome|paint|label|handle',
  removed: 'removed|treated|ground|sanded|blasted|sandblasted|neutralized|stripped',
  removable: 'be|easily|can|just',
  'a-little': 'a little|a bit|a few|a touch|a tad',
  'comes-apart':
    'through|slit|cut|nick|gash|rip|rips|ripped|ripping|tear|tears|tore|torn|split|splits|splitting|crumbling|crumbles|peeling|peels|flaking|holes|hole|apart|shredded|shredding|disintegrating|perished|duct|patched|frayed|fraying|coming out',
  hub: 'hub|hubs|insert|inserts|center ring|centre ring|steel ring|metal ring|steel insert|bushing insert|inner ring|steel hub|metal hub',
  'comes-loose':
    'split|splitting|delaminating|delaminated|separating|loose|popped|pops|out|separated|separates|detached|fell|falling|spinning|turns a little|turns a bit|turns slightly|turns in|rotates a little|rotates in|moves a little|moves a bit|moves in|wobbles|wobbly|wiggles',
  turning: 'sleeve|sleeves|bearings|bearing|bushings|bushing|the ends|ends|end|both ends|both sleeves|one sleeve|one end',
  turns: 'spin|spins|spinning|turn|turns|turning|rotate|rotates|rotating|roll|rolls|go round|move|moves',
  sticks: 'stuck|sticks|sticky|stick|seized|frozen|jammed|gummed|binding|binds|locked',
  hardly: 'hardly|barely|scarcely|quit|stopped|no longer',
  plural: "are|have|both|all|stay|were|have been|are all|have all|had|aren't|haven't",
  others: 'other|another|extra|more|second|last|some',
  handles:
    'change|changing|load|loading|loads|unload|unloading|putting|drop|drops|dropping|lift|lifting|swap|swapping|slide|sliding|throw|throwing|lower|lowering|stack|stacking|lug|carry|carrying|slip|where',
  'beside-goods':
    'across|thru|over|along|beneath|underneath|between|next to|near|past|towards|toward|alongside|atop|on top of|used on|used with|used only with|only used with',
  ordinary: 'normal|typical|usual|regular|ordinary|most|average|any|every|wrong|width|height|bigger|taller|certain',
  wrong: 'wrong',
  zone: 'zone|zones|area|height|days|day|press numbers|work|workout|workouts|session|sessions|room|guy|guys',
  slides:
    'slide|slides|slid|sliding|slip|slips|go on|goes on|fit on|fits on|will not go|will not fit|load|loads|rattle|clank|stay on|hang on',
  uses: 'used|use|using|loaded|dropped',
  throws: 'throw|throws|throwing|thrown|threw',
  offers:
    "there's|theres|here's|selling|sell|trade|n|in|is|it's|its|it|also|too|need|needs|left|offering|got|including|includes|add|throw|throwing|comes|original|has|as|found|left behind|behind|for sale|plus|and|or|then|only|just|if you want|you want|you get|you'll get|you can have|if you take|for free",
  gets: 'get|receive|come with',
  owns: 'own|owns|already own|already owns|already has|already has got|already got',
  'goes-over':
    'went|gone|going|go|moved to|moving to|moved up to|upgraded to|upgrading to|switched to|switching to|changed to|changing to|bought|buying|ordered|got|getting|getting into|have|has|own|use|using|building|collecting|saving for|invested in|replaced with',
  'wants-label': 'want|wants|i want|we want|wanted|looking for|iso|in return|in trade|in exchange|seeking|would like',
  wishes: "i want|we want|want|i need|need|would like|i'd like|like is|i'm after|after|looking for|prefer|would love|i'd love",
  'has-sides':
    '*platform|*mat|*mats|mirror*|*flooring|rug|rugs|carpet|tile*|panel*|plywood|tubing|tube|tubes|upright*|lumber|beam*|post|posts|table|trailer|tarp|poster*|sign|window*|floor|footprint|profile',
  'is-marked': 'say|says|read|reads|it says|they say|each says|saying|stamped|marked|labeled|labelled',
  scale: '*scale|*scales',
  attached: 'attached|part|built|combined|combo|section|bit',
  weighs: 'is|being|weighs|was|it is|weighing|which is|that is|it says|says',
  'if-you': "if you|if u|if someone|if somebody|if anyone|anyone who|whoever|people who|please do not|please don't|do not|don't",
  has: 'has*|had*|is*|are*|have*',
  weights: 'weight|weights|free weight|free weights',
  the: 'the|this|* the|* this',
  style: 'style|type',
  sets: 'set|sets|set *|sets *',
  'before-price':
    "cash|or|so|at|i'm at|looking for|thinking|like|hoping for|hoping to get|looking to get|would like|i'd like|happy with|for|only|just|all|both|together|altogether|total|everything|will do|i'd do|i'll do|can do|let go|let it go|have it for|say|lets say|let's say|give me|need|first|settle for|accept|pair|bundle",
  'behind-price':
    "total|all|together|even|flat|ish|pick|pickup|you|u pick|u haul|local pickup|porch pickup|come|must|no|or trade|or swap|or will|or a|or partial|transfer|bank transfer|* or cash|cash|seems|is fair|is more|sounds|is a fair|is a steal|is the price|is my price|is what i|is all i|would be|would do|will do|does it|do it|works for|gets|get it|takes|buys|and it*|and you*|and done|it's yours|yours|lot|for the|the lot|or offer|or near*|or close|as is|as a|to clear|to go|to a good|ono|ovno|tops|plus|if you|today|first come|but|text|call|on pickup|on collection|collect*|serious|won't|will not|not s*",
  numbered:
    'model|series|version|item|sku|room|apt|unit|suite|box|hwy|highway|route|exit|zip|size|code|since|year|circa|level|number|no|page|psi|after|before|until|till|ext|past',
  numbers:
    'street|st|ave|avenue|rd|road|lane|ln|drive|psi|times|reps|feet|percent|people|different|other|more|of these|of them|k|main|n|s|e|w|north|south|east|west|degrees|ways|years',
  'one-of-them': 'one|one of them|only one|just one|except one',
};
