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

const TURNING = 'bearings|bearing|sleeves|both sleeves|bushings|ends|needle bearings|sleeve bearings';
const FREE =
  'free|are free|is free|run free|move freely|run smooth|smooth|are smooth|is smooth|feel smooth|roll freely|roll smooth|still free|still smooth';
const STUCK =
  'stuck|are stuck|is stuck|tight|are tight|is tight|stiff|are stiff|is stiff|gummed up|are jammed|jammed|locked|grind|grinding|crunchy|are crunchy|gritty|are gritty|need grease|need greasing|are sticky|barely turn|barely move|hardly turn|hardly move|do not turn|are rusted';
const COVERS =
  'foam|padding|vinyl|upholstery|leather|pleather|covering|cover|fabric|seat cover|pad cover|pad vinyl|seat vinyl|cushion|bench pad|seat';
const WORN =
  'crumbling|is crumbling|peeling|is peeling|flaking|is flaking|worn through|coming apart|has a rip|has holes|has a split|is splitting|splitting|perished|is perished|disintegrating|is disintegrating|exposed|is exposed|sticking out|falling apart|worn out|in shreds|shredded|is shredded|taped up|is taped|split|is split|is patched|is ripped|needs reupholstering|needs recovering|needs replacing|cracked|is cracked|chewed|is chewed';
const KINDS = 'brands|brand|makers|makes|rims|styles|manufacturers|types|stamps|castings|foundries|lettering';
const UNLIKE = 'mixed|odd|different|various|assorted|random|several|mismatched|multiple|all different|all sorts of';

export const CONDITIONS: readonly Entry[] = [
  ['a different brand|another brand', { code: 'z' }],
  // Said of turning parts: "free" is no price there, "tight" no fault elsewhere.
  condition(each(TURNING, FREE), 'spins', 'seized-sleeves'),
  condition(each(TURNING, STUCK), 'seized-sleeves', 'spins'),
  condition('gummed up|jammed up|jammed|wont rotate', 'seized-sleeves'),
  condition(each(COVERS, WORN), 'torn'),
  // A degree near by makes them light or heavy.
  condition('rust|rusting|rusts|oxidation|corrosion|pitting|oxide', 'rust', 'no-rust', 'fault rust'),
  condition('rusty|rusted|rusty looking|needs a wire brush|corroded|oxidized|oxidised', 'rust', 'no-rust', 'rust'),
  ['nice patina', { code: 'z' }],
  fault('patina|flash rust', 'rust-light', 'no-rust'),
  condition(
    'pitted|deeply pitted|badly pitted|rusted through|rusted out|rust everywhere|rust bucket|rusted solid',
    'rust-heavy',
    'no-rust',
  ),
  fault('heavy rust|heavy rusting', 'rust-heavy', 'no-rust'),
  condition('rust free|rustfree|zero rust', 'no-rust'),
  [
    'rust oleum|rustoleum|rust colored|rust coloured|rust remover|black oxide|rust converter|rust color|rust inhibitor|rust proof',
    { code: 'z' },
  ],
  [
    'surface|light|lightly|little|slight|slightly|minor|bit|touch|hint|spots|spot|speck|specks|freckle|freckles|freckled|patch|patches|spotting|cosmetic|mild|mildly|small amount|small amounts|tiny|trace|traces|skin|dusting|bloom|minimal|starting|superficial|marks|tad|wipes off|brushes off|cleans up|comes off|wipe off|brush off|kiss|smidge|haze',
    { code: 'z', sense: 'faintly' },
  ],
  [
    'heavily|much|too|a lot of|lot|ton|very|really|badly|bad|lots|tons|super|severe|severely|major|deep|flaking|flaky|seriously|crusty|quite|extremely|thick|caked|scaly|good and|all over|covered|horrible|terrible|terribly|loads|plenty|as heck|as hell|completely|totally',
    { code: 'z', sense: 'badly' },
  ],
  ['heavy', { code: 'm', sense: 'badly' }],

  fault(
    'bend|bow|bends|slight bend|slight bow|a little bend|little bend|a bend|a slight bend|banana|warp|kink',
    'bent',
    'straight',
  ),
  condition(
    "bent|bowed|warped|bowing|bending|slightly bent|a little bent|not straight|isn't straight|ain't straight|curved slightly|rolls with a wobble|not true|isn't true|tweaked|out of true|rolls crooked|turns over by itself|rolls over by itself",
    'bent',
    'straight',
  ),
  condition(
    "straight|strait|str|straight as a string|perfectly straight|still straight|dead straight|arrow straight|spins true|rolls true|runs true|roll true|roll straight|still true|straight as an arrow|rolls straight|is straight|completely straight|totally straight|bar straight|100 straight|is true|dead true|straight and true|straightness checked|he don't bend|is not bend|rolled straight|never been bent|never bent",
    'straight',
    'bent',
  ),
  [
    'straight up|straight trade|straight swap|straight forward|straightforward|straight cash|straight to|straight away|straight across|straight after|straight into|straight sale|straight down|straight sleeves|straight edge|straight back',
    { code: 'z' },
  ],
  ['bend over|bent over|bend it|bow out|bend my|bend your|bent knee|bow front|bend under', { code: 'z' }],

  ["when it spins|when spinning|doesn't spin like a dream", { code: 'z' }],
  condition(
    "seized|seized up|frozen|don't spin|doesn't spin|won't spin|stuck|don't rotate|doesn't rotate|no spin|barely spin|barely spins|don't turn|doesn't turn|won't turn|doesn't spin well|locked up|don't move|frozen up|frozen solid|rusted shut|quit spinning|stopped spinning",
    'seized-sleeves',
    'spins',
  ),
  condition(
    'spins|spin|spins freely|spin freely|spins free|spin free|spins well|spins great|spin great|spin fine|spins fine|spins smooth|spin smooth|spins smoothly|spin smoothly|spin well|spin good|spins good|spins ok|spin ok|rotates|rotate|rotating|rotates freely|rotate freely|spins nice|spin nice|great spin|good spin|smooth spin|nice spin|sleeves spin|spins like new|spin like new|spins like a top|spin like they should|still spin like new|sleeves turn|sleeves move|ends turn|ends spin|it does turn|does turn|turns freely|turn freely|turns fine|turn fine|sleeves go round|both turn|they turn|both spin|sleeves turn ok|but turns|still turns|still turn|turns smoothly|turn smoothly|free spinning',
    'spins',
    'seized-sleeves',
  ),

  fault(
    'crack|cracks|hairline crack|hairline cracks|splits|chunk missing|chunks missing|chunk out|a split|breaks|fractures|a chunk',
    'cracked',
  ),
  condition(
    'cracked|weld broke|welds broke|weld failed|welds failed|broken|broken off|snapped|fractured|cracking|has split|split open|split along|split down|is split|are split|leaks sand|leaking sand|leaks cement|leaking cement|leaks a little sand|leaks concrete|leaking concrete|leaks|leaking|sand leaking',
    'cracked',
  ),
  [
    'breaks my heart|heart breaks|lunch breaks|broken in|broken down|broken up|broken home|cracked up|get cracking|breaks down flat|broken arm|broken leg|broken back|broken english|broken knurl|cracked open|broken wrist|broken record|broken foot|broken ankle|broken hand|break even|cracked a|cracked rib|cracked my',
    { code: 'z' },
  ],
  condition(
    'split hub|a split hub|a split at the hub|split at the hub|loose hub|hub has split|hub has split loose|hub split|loose inserts|insert loose|insert popped|insert spins|ring loose|ring is loose|loose insert|loose ring|hub separating|hub separated',
    'split-hub',
  ),
  fault(
    'chip|chips|paint chips|chipped paint|paint chipping|chipping|paint flaking|flaking paint|paint peeling|peeling paint|paint loss',
    'chipped',
  ),
  condition('paint is coming off|paint has come off|chipped|chipped up', 'chipped'),

  condition(
    "missing|missing parts|missing hardware|missing bolts|missing pieces|missing one|incomplete|is missing|are missing|one's missing|was lost|got lost|were lost|lost in the|i lost one|i lost the|lost one of the|one bolt short|no bolts|no hardware|no pins|no safeties|no safety arms|no j hooks|no hooks|no screws|without bolts|without hardware|without pins|without hooks|without safeties|without a pad",
    'missing-parts',
  ),
  [
    'missing out|missing work|miss|missing teeth|missing you|lost interest|lost weight|i lost the argument|lost lease',
    { code: 'z' },
  ],

  condition(
    'repainted|re painted|spray painted|spraypainted|fresh paint|freshly painted|newly painted|refinished|restored|painted over|painted over once|new paint|rattle canned|rattle can|refurbished|paint job|painted them|painted it|powder coated by me|painted these|been painted|i painted|we painted|painted by my|hand painted|painted gray by me|painted more than once|painted myself|have been painted|someone painted|somebody painted|painted both|overpainted|resprayed|paint brushed|sprayed black|sprayed silver|sprayed grey|sprayed gray',
    'repainted',
  ),
  condition(
    'welded myself|welded by my|welded by a|welded by the|husband welded|dad welded|brother welded|buddy welded|friend welded|i welded|we welded|he welded',
    'home-made',
    undefined,
    'welded-too',
  ),
  ['welded by a certified', { code: 'z' }],
  condition(
    'homemade|home made|hand made|handmade|diy|built myself|built it myself|i built|we built|custom built|self made|shop made|home built|i poured myself|poured myself|i poured|built out of|cobbled together|homebuilt|hand built|handbuilt|made by my|made by me|made by a|built by me|built by my|built by a|both built by me|made by hand|built this|built it|he built|dad built|dad made|grandpa built|grandpa made|husband built|husband made|brother built|son built|he made|i made|i make self|i weld self|made this|shop class|shop project|home brewed|self built|selfmade|garage built|we made|i cut|he turned down himself|turned from bar stock|also turned from|garage made|farm made|farm built|homemade style',
    'home-made',
  ),
  ['i built my|built this up|i already built|built up', { code: 'z' }],

  condition(
    'were used outside|from the carport|stored outside|stored outdoors|left outside|kept outside|kept outdoors|sat outside|been rained on|rained on|weathered|outdoor gym|lived outside|been outside|left it out|left them out|outside under|outside behind|been left out',
    'stored-outdoors',
    'stored-indoors',
  ),
  condition(
    'stored in the shop|used it indoors|stored inside|indoors only|kept inside|kept indoors|stored indoors|always inside|always indoors|climate controlled|basement kept|basement stored|garage kept|garage stored|loft stored|attic stored|house kept|kept dry|stored dry|dry stored|dry storage|stayed dry|dry basement|inside only|never outside|never outdoors|never been outside|never seen weather|out of the weather|heated garage|heated basement|temperature controlled',
    'stored-indoors',
    'stored-outdoors',
  ),
  place(
    'inside|indoors|cellar|attic|loft|house|spare room|spare bedroom|the flat|my flat|our flat|apartment|cabinet|closet|storage unit|storage|warehouse|rumpus room|studio|rec room|living room|dining room|dry room|sunroom|mudroom|laundry room|lock up|condo|workshop|outbuilding|rafters|utility room|conservatory|barn|pole barn|machine shed|hay loft',
    'stored-indoors',
  ),
  place('room|garage|bedroom|basement|shed', 'stored-indoors', { sense: 'sizes' }),
  place(
    'behind the shop|my back yard|behind the shed|behind the barn|outside|outdoors|rain|weather|yard|backyard|back yard|patio|porch|tarp|elements|lean to|dock|deck|carport|balcony|grass|field|driveway|garden|weeds|dirt',
    'stored-outdoors',
    { denied: 'stored-indoors' },
  ),
  ['straight from|collecting dust|gathering dust|stashed|sitting around', { code: 'z', sense: 'stays' }],
  ['stored|kept|sat|sitting|been|lived|lives|live|living|stayed|housed|lying|laying|remained', { code: 'z', sense: 'stays' }],
  [
    'used outside|used outdoors|used inside|used indoors|i live|we live|live in|live near|live by|live on|i lived|we lived|he lived|she lived|lived with|been a|been using|been lifting|been training|been working|been used|left on the|left behind|left over|kept clean|kept oiled|kept busy|who lived|living in|living room|dining room|house is|garage sale|yard sale|estate sale|been sold',
    { code: 'z' },
  ],

  condition(
    'wobbly|wobbles|shaky|unstable|a little wobbly|rickety|wobbles a bit|sways|a bit of sway|some sway|rocks a little|rocks a tiny bit|it rocks|so it rocks|wiggles',
    'wobbly',
  ),
  fault('wobble|sway', 'wobbly'),
  condition(
    'welded by a previous|welded|rewelded|re welded|fully welded|all welded|welded together|one piece welded|heavy duty welds|good welds|clean welds|solid welds|welds are good|welded up|welded frame',
    'welded',
  ),
  ['welded on|welded back|welding|welder|welds|weld', { code: 'z' }],
  condition(
    'bolted|bolted together|bolt together|bolts together|unbolts|unbolted|to be unbolted|bolts apart|bolt up|bolted construction|bolted to itself|put together with metric bolts|bolted up',
    'bolted',
  ),
  [
    'bolted to the|bolted to a|bolted down|bolted into|bolts to|bolts down|bolt to|bolt down|bolts into|bolt it to|bolt into|bolted onto|bolted on|bolted in|bolted to|be bolted to|bolted against',
    { code: 'z' },
  ],
  condition(
    "torn|tear|tears|a rip|a small rip|ripped|ripped upholstery|torn upholstery|torn vinyl|ripped vinyl|duct tape|duct taped|vinyl is torn|worn pad|upholstery shot|upholstery torn|pad is torn|pad torn|seat torn|hole in the cushion|nick in the pad|a nick in the pad|hole in the upholstery|rip in the|small broken|upholstery ripped|padding ripped|pad ripped|seat ripped|seat's ripped|foam showing|vinyl is toast|eat by mice|got eat by mice|mice ate|chewed up|split seam",
    'torn',
  ),
  [
    'tear down|torn down|tear apart|ripped off|rip off|tear up|tear my|tore my|torn rotator|torn labrum|torn acl|torn meniscus|torn shoulder|torn my|torn bicep|torn muscle|in tears|rip to',
    { code: 'z' },
  ],
  condition(
    'one odd|odd one|odd plate|orphan|orphaned|no mate|has no mate|has no partner|no partner|no twin|without a mate|lost its brother|lonesome|no match|no pairs|widowed|where the other one went|somewhere in this house|singleton|odd number of|lost the other|lost one in a move',
    'odd',
  ),
  [
    `${each(UNLIKE, KINDS)}|no full sets|no two alike|no two the same|no two match|` +
      "nothing matches|mismatched|mismatch|mis matched|unmatched|mixed maker|mix of brands|don't match|doesn't match|not all the same brand|not matching|don't expect matching|all different|different sizes|nine different foundries|hodgepodge|hodge podge|none match",
    { code: 'm', condition: 'mismatched' },
  ],
];
