/**
 * English words of condition. `denied` is what the word means behind a "not" or "no"; without it the denied word says nothing.
 * A noun for a fault ("cracks") has the sense "fault": a denial reaches it over a list ("no rust, cracks or chips").
 * Degrees of rust, verbs of keeping and places are read together by recognisers/conditions.ts.
 */
import type { Condition } from '../../../listing/reading.ts';
import type { Entry, Term } from '../../text/terms.ts';
import { each } from '../phrases.ts';

const condition = (words: string, value: Condition, denied?: Condition, sense?: string): Entry => {
  const term: Term = { code: 'C', condition: value, ...(denied ? { denied } : {}), ...(sense ? { sense } : {}) };
  return [words, term];
};
const fault = (words: string, value: Condition, denied?: Condition): Entry => condition(words, value, denied, 'fault');

/** Places, said behind verbs of keeping ("kept in the basement", "has been outside"). */
const place = (words: string, value: Condition, more: Partial<Term> = {}): Entry => [
  words,
  { code: 'z', condition: value, ...more },
];

const TURNING = 'bearings|bearing|sleeves|both sleeves|bushings|ends|needle bearings|collars on the bar|sleeve bearings';
const FREE =
  'free|are free|is free|run free|move freely|run smooth|smooth|are smooth|is smooth|feel smooth|are nice and smooth|roll freely|roll smooth|still free|still smooth|go round freely';
const STUCK =
  'stuck|are stuck|is stuck|tight|are tight|is tight|stiff|are stiff|is stiff|gummed up|are gummed up|are jammed|jammed|locked|grind|grinding|crunchy|are crunchy|gritty|are gritty|need grease|need greasing|are sticky|barely turn|barely move|hardly turn|hardly move|will not turn|do not turn|are rusted';
const COVERS =
  'foam|padding|vinyl|upholstery|leather|pleather|covering|cover|fabric|seat cover|pad cover|pad vinyl|seat vinyl|cushion|bench pad|seat';
const WORN =
  'crumbling|is crumbling|peeling|is peeling|flaking|is flaking|worn through|is worn through|has worn through|coming apart|is coming apart|has a rip|has a hole|has holes|has a cut|has a split|is splitting|splitting|perished|is perished|disintegrating|is disintegrating|exposed|is exposed|sticking out|is sticking out|falling apart|is falling apart|worn out|is worn out|in shreds|shredded|is shredded|taped up|is taped|is taped up|held with tape|has tape on it|split|is split|has been patched|is patched|is ripped|needs reupholstering|needs recovering|needs replacing|cracked|is cracked|chewed|is chewed';
const KINDS = 'brands|brand|companies|makers|makes|rims|styles|manufacturers|types|stamps|castings|foundries|lettering';
const UNLIKE = 'mixed|odd|different|various|assorted|random|several|mismatched|multiple|all different|all sorts of';

export const CONDITIONS: readonly Entry[] = [
  ['a different brand|a different maker|a different make|a different style|a different type|one different brand', { code: 'z' }],
  // Said of turning parts: "free" is no price there, "tight" no fault elsewhere.
  condition(each(TURNING, FREE), 'spins', 'seized-sleeves'),
  condition(each(TURNING, STUCK), 'seized-sleeves', 'spins'),
  condition('gummed up|jammed|stiff to turn|stiff to spin|sleeves need cleaning|sleeves need work', 'seized-sleeves'),
  condition(each(COVERS, WORN), 'torn'),
  // A degree near by makes them light or heavy.
  condition('rust|rusting|rusts|oxidation|corrosion|pitting|oxide', 'rust', 'no-rust', 'fault rust'),
  condition(
    'rusty|rusted|needs a wire brush|needs wire brushing|needs a wire wheel|could use a wire brush|could use a wire wheel|wants a wire brush|corroded|oxidized|oxidised',
    'rust',
    'no-rust',
    'rust',
  ),
  ['nice patina|great patina|good patina|beautiful patina|lovely patina', { code: 'z' }],
  fault('patina|flash rust', 'rust-light', 'no-rust'),
  condition(
    'pitted|rusted through|rusted out|rust everywhere|nothing but rust|rust bucket|rusted solid|covered with rust',
    'rust-heavy',
    'no-rust',
  ),
  fault('heavy rust|heavy surface rust', 'rust-heavy', 'no-rust'),
  condition('rust free|rustfree|free of rust|free from rust', 'no-rust'),
  [
    'rust oleum|rustoleum|rust colored|rust coloured|rust remover|black oxide|rust converter|rust color|rust inhibitor|rust proof',
    { code: 'z' },
  ],
  [
    'surface|light|lightly|little|slight|slightly|minor|bit|touch|hint|spots|spot|speck|specks|freckle|freckles|freckled|patch|patches|spotting|cosmetic|mild|mildly|small amount|small amounts|tiny|trace|traces|skin|dusting|bloom|minimal|starting|superficial|marks|tad|wipes off|brushes off|cleans up|comes off|wipe off|brush off|wipes right off|brushes right off|comes right off|kiss|smidge|haze',
    { code: 'z', sense: 'faintly' },
  ],
  [
    'heavily|much|too|a lot of|a ton of|lot|ton|very|really|badly|bad|lots|tons|super|severe|severely|major|deep|flaking|flaky|seriously|crusty|quite|extremely|thick|caked|scaly|good and|all over|covered|horrible|terrible|terribly|loads|plenty|as heck|as hell|completely|totally',
    { code: 'z', sense: 'badly' },
  ],
  ['heavy', { code: 'm', sense: 'badly' }],

  fault(
    'bend|bow|slight bend|a slight bend|slight bow|bends|a little bend|a bend|wobble when spun|banana|warp|kink',
    'bent',
    'straight',
  ),
  condition(
    "bent|bowed|warped|bowing|bending|ain't straight|not perfectly true|curved slightly|wobbles when you spin it|rolls with a wobble|wobbles when spun|not true|isn't true|tweaked|out of true|rolls crooked|turns over by itself|rolls over by itself|flips over by itself|turns itself over|rolls itself over|turns over on its own|rolls over on its own|flips over on its own|rolls back to the same side|always rolls to the same side|always rolls to the same spot|always settles the same way|always stops the same way up",
    'bent',
    'straight',
  ),
  condition(
    "straight|strait|str|perfectly straight|dead straight|still straight|completely straight|spins true|rolls true|runs true|roll true|still true|is straight|is true|dead true|straightness checked|he don't bend|it don't bend|is not bend|doesn't wobble when|never been bent|never bent",
    'straight',
    'bent',
  ),
  [
    'straight up|straight forward|straightforward|straight cash|straight to|straight away|straight across|straight after|straight into|straight sale|straight down|straight sleeves|straight edge|straight back',
    { code: 'z' },
  ],
  [
    'bend over|bent over|bend the price|bend it|take a bow|bow out|bend my|bend your|bend the knee|bent knee|bow front|bend under|bent out of shape about',
    { code: 'z' },
  ],

  [
    "when it spins|when it turns|as it spins|if it spins|when spinning|while it spins|doesn't spin like a dream|doesn't spin like new|doesn't spin forever|doesn't spin for days",
    { code: 'z' },
  ],
  condition(
    "seized|froze|frozen|stuck|barely spin|barely spins|don't turn|doesn't turn|won't turn|hard to spin|locked up|don't move|rusted shut|quit spinning|stopped spinning",
    'seized-sleeves',
    'spins',
  ),
  condition(
    'spins|spins freely|spin freely|spin|rotates|rotate|rotating|spins like new|spin like new|does turn|turns freely|turn freely|turns fine|turn fine|both turn|they turn|both spin|both still turn|but turns|still turns|still turn|turns smoothly|turn smoothly|free spinning',
    'spins',
    'seized-sleeves',
  ),

  fault(
    'a chunk is missing|chunk is missing|chunks are missing|piece is missing out|piece missing out|crack|cracks|hairline crack|splits|chunk missing|chunks missing|chunk out|a split|breaks|fractures|a chunk',
    'cracked',
  ),
  condition(
    'cracked|weld broke|welds broke|weld failed|weld has failed|welds failed|weld let go|broken|broken off|snapped|fractured|cracking|has split|split open|split in half|split in two|split along|split down|is split|are split|broke in half|leaks sand|leaking sand|leaks cement|leaking cement|leaks a little sand|leaks concrete|leaking concrete|leaks|leaking',
    'cracked',
  ),
  [
    'heart breaks|lunch breaks|breaks down into|breaks down to|breaks apart for|broken in|broken down|broken up|broken home|cracked up|crack of dawn|get cracking|breaks down flat|breaks down for|breaks down easy|breaks down easily|breaks down small|broken arm|broken leg|broken back|broken english|broken knurl|cracked open|broken wrist|broken record|broken foot|broken ankle|broken hand|cracked a|cracked rib|cracked my',
    { code: 'z' },
  ],
  condition(
    'split hub|split hubs|hubs split|hubs have split|hubs are split|cracked hubs|hubs cracked|hubs are cracked|loose hubs|loose steel hub|loose steel hubs|loose steel insert|loose steel inserts|loose metal insert|loose metal inserts|steel ring came out|ring came out|hub came out|hub fell out|insert fell out|a split hub|a split at the hub|a split in the hub|cracked hub|hub is cracked|hub has split|hub is split|insert spins|ring loose|ring is loose|ring popped out|loose ring|loose center ring',
    'split-hub',
  ),
  // Of a dumbbell: what holds it on the handle has given way.
  condition(
    'head is loose|heads are loose|loose head|loose heads|a loose head|head came loose|heads came loose|head is coming loose|heads are coming loose|head spins|heads spin|head wobbles|heads wobble',
    'wobbly',
  ),
  fault('chip|chips|chipping|paint loss', 'chipped'),
  condition('paint is coming off|paint coming off|paint has come off|chipped', 'chipped'),

  condition(
    "missing|missing parts|missing hardware|missing bolts|missing pieces|missing a bolt|missing a pin|missing one|incomplete|is missing|are missing|one's missing|was lost|got lost|were lost|lost in the|i lost one|i lost the|lost one of the|lost some of the|one bolt short|a bolt short|short one bolt|one pin short|no bolts|no hardware|no pins|no safety pins|no safeties|no safety arms|no safety bars|no spotter arms|no j hooks|no j cups|no hooks|no end caps|no screws|has no pins|has no safeties|has no hooks|has no hardware|has no bolts|without the pins|without the bolts|without bolts|without hardware|without pins|without hooks|without safeties|without a pad|without the pad|without its pad|without a seat|without the seat",
    'missing-parts',
  ),
  [
    'missing out|missing work|miss|missing teeth|missing you|missing the gym|missing the days|i lost the argument|i lost the bet|i lost the fight|i lost the battle|i lost the war|i lost the space|i lost the room|i lost the lease|i lost the garage',
    { code: 'z' },
  ],

  condition(
    'painted with rustoleum|painted with black|painted with spray|painted with a|painted with silver|repainted|re painted|spray painted|spraypainted|freshly painted|newly painted|refinished|restored|painted over|rattle canned|rattle can|refurbished|paint job|painted them|painted it|painted these|been painted|hand painted|painted more than once|were painted by|painted both|overpainted|resprayed|painted several times|painted many times|painted at some point|paint brushed|sprayed black|sprayed silver|sprayed grey|sprayed gray',
    'repainted',
  ),
  condition(
    'homemade|home made|hand made|handmade|diy|custom built|self made|self built|selfmade|homebuilt|handbuilt|shop class|shop project|home brewed|garage built|garage made|i make self|i weld self|i make myself|i cut|built this|made this',
    'home-made',
  ),
  [each('no bolts|no hardware|no pins|no parts|nothing', 'missing|is missing|are missing'), { code: 'z' }],
  ['welded by a professional|welded by a pro|welded by a certified|welded by the factory', { code: 'z' }],
  ['built this gym|built this house|built this up', { code: 'z' }],

  condition(
    'were used outside|was used outside|was used outdoors|were used outdoors|used it outside|used them outside|from the carport|from being outside|from the weather|from the rain|from being left out|left outside|left in the rain|rained on|rain on it|weathered|out in the weather|out in the rain|outdoor gym|out in the elements|left out in|sat out in|left it out|left them out|outside under|outside behind|out back under|been left out',
    'stored-outdoors',
    'stored-indoors',
  ),
  condition(
    'stored in the shop|stored in my shop|stored in our shop|kept in the shop|kept in my shop|used it indoors|used them indoors|only used indoors|used only indoors|used it inside|stored inside|indoors only|kept inside|kept indoors|stored indoors|always inside|always indoors|climate controlled|basement kept|basement stored|garage kept|garage stored|loft stored|attic stored|house kept|kept dry|stored dry|dry stored|dry storage|stayed dry|kept in garage|stored in garage|in a dry garage|dry basement|inside only|indoor use only|never outside|never outdoors|never used outside|never used outdoors|never used in the rain|never been outside|never stored outside|never left outside|never seen weather|never seen rain|never seen the rain|never seen the weather|never seen the outdoors|never seen sunlight|never saw rain|never been rained on|never been in the rain|never been in the weather|out of the weather|out of the rain|out of the elements|heated garage|heated basement|temperature controlled',
    'stored-indoors',
    'stored-outdoors',
  ),
  place(
    'inside|indoors|cellar|attic|loft|house|spare room|spare bedroom|the flat|my flat|our flat|apartment|cabinet|closet|storage unit|storage|warehouse|rumpus room|studio|rec room|living room|dining room|dry room|sunroom|mudroom|laundry room|lock up|condo|workshop|outbuilding|rafters|utility room|conservatory|barn|pole barn|machine shed|hay loft|shipping container|container|office|den|man cave|crawl space|crawlspace',
    'stored-indoors',
  ),
  place('room|garage|bedroom|basement|shed', 'stored-indoors', { sense: 'sizes' }),
  place(
    'behind the shop|behind the building|behind the gym|behind my shop|my back yard|my back patio|my back porch|my back deck|behind the shed|behind the garage|behind the house|behind the barn|beside the shed|outside|outdoors|rain|weather|yard|backyard|back yard|patio|porch|tarp|elements|lean to|dock|deck|carport|balcony|grass|field|driveway|garden|weeds|dirt',
    'stored-outdoors',
    { denied: 'stored-indoors' },
  ),
  ['straight from|straight out of|collecting dust|gathering dust|stashed|sitting around', { code: 'z', sense: 'stays' }],
  [
    'stood|standing|sits|spent|wintered|parked|stored|kept|sat|sitting|been|lived|lives|live|living|stayed|housed|lying|laying|remained',
    { code: 'z', sense: 'stays' },
  ],
  [
    'i was in|we were in|as it sits|as she sits|where it sits|used outside|used outdoors|used inside|used indoors|i live|we live|i live in|we live in|live near|live by|live on|i lived|we lived|he lived|she lived|lived with|been a|been using|been lifting|been training|been working|been in the family|been used|left in the|left on the|left behind|left over|kept clean|kept oiled|kept busy|who lived|living in|living room|dining room|house is|garage sale|yard sale|estate sale|been sold',
    { code: 'z' },
  ],

  condition(
    'wobbly|wobbles|shaky|unsteady|tippy|teeters|unstable|rickety|sways|rocks a bit|rocks a little|rocks a tiny bit|it rocks|wiggles',
    'wobbly',
  ),
  fault('wobble|sway', 'wobbly'),
  condition(
    'welded by a previous|welded by the previous|welded by an old|welded|rewelded|one piece welded|heavy duty welds|good welds|clean welds|solid welds|welds are good|welds are solid',
    'welded',
  ),
  ['welded on|welded back|welding|welder|welds|weld', { code: 'z' }],
  condition(
    'bolted|bolt together|bolts together|unbolts|unbolted|bolts apart|nuts and bolts|bolt up|bolted to itself|put together with bolts|put together with metric bolts|held together with bolts',
    'bolted',
  ),
  ['bolted to the|bolted to a|bolted down|bolted into|bolted onto|bolted on|bolted in|bolted to|bolted against', { code: 'z' }],
  condition(
    'torn|hole in the cushion|hole in the pad|hole in the seat|hole in the upholstery|hole in the vinyl|tear|tears|a rip|a small rip|ripped|duct tape|duct taped|tape on the pad|worn pad|upholstery shot|upholstery is shot|small broken|foam showing|vinyl is toast|upholstery is toast|pad is toast|vinyl is shot|pad is shot|seat is shot|eaten by mice|eat by mice|mice ate|chewed up|seam is split|split seam',
    'torn',
  ),
  [
    'tear down|tear it down|torn down|tear apart|ripped off|rip off|ripped me off|wear and tear|tears to my|tear up|tear my|torn rotator|torn labrum|torn acl|torn meniscus|torn shoulder|torn my|torn bicep|torn muscle|in tears',
    { code: 'z' },
  ],
  condition(
    "one odd|odd one|odd plate|orphan|orphaned|no mate|has no mate|has no partner|has no pair|has no twin|has no match|have no mate|no partner|no twin|without a mate|without a partner|without its mate|not a pair|missing its mate|missing its partner|lost its brother|lost its mate|lost its partner|lost its twin|lost its pair|lonesome|no match|no pairs|widowed|where the other one went|somewhere in this house|don't have the other one|lost the other one|missing the other one|can't find the other one|singleton|mate is missing|other one is missing|odd number of|partner went missing|lost the other|lost one in a move|lost one of them",
    'odd',
  ),
  [
    `${each(UNLIKE, KINDS)}|no full sets|no two alike|no two the same|no two match|` +
      "none of it matches|none of them match|nothing matches|mismatched|mismatch|mis matched|unmatched|mixed maker|different brand plates|mix of brands|mixture of brands|not a matching|not a matched|don't match|do not match|doesn't match|don't all match|not all the same brand|not all matching|not matching|don't expect matching|all different|different sizes|mix and match|don't all look alike|nine different foundries|mixed lot of plates|hodgepodge|hodge podge|none match",
    { code: 'm', condition: 'mismatched' },
  ],
];
