/**
 * English words of other trades, so that "bar stools" is no bar and "wheel weights" no plates. Phrases that hold one of our nouns become one
 * term, which takes the noun away from the recognisers. Senses, as refiners/trade.ts weighs them: `foreign` another trade's goods,
 * `household` goods that a mover sells beside a weight set, `very-foreign` services and goods that borrow the very names of ours.
 */
import type { Entry } from '../../text/terms.ts';

/** Every phrase in the singular and the plural: "es" behind a hiss, else "s"; "/-" has no plural. */
function goods(sense: string, phrases: string): Entry[] {
  return phrases.split('|').flatMap((phrase): Entry[] => {
    const [one = '', many] = phrase.split('/');
    const term = { code: 'z', sense };
    if (many === '-') return [[one, term]];
    return [
      [one, term],
      [`${one}${/(?:s|x|z|ch|sh)$/.test(one) ? 'es' : 's'}`, term],
    ];
  });
}

/** One of our nouns behind each of the words: "wheel weight", "wheel weights". */
const named = (noun: string, words: string, sense = 'foreign'): Entry[] =>
  goods(
    sense,
    words
      .split('|')
      .map((word) => `${word} ${noun}`)
      .join('|'),
  );

/** Each of the words behind one of our nouns: "bar stool", "bar stools". */
const leading = (noun: string, words: string): Entry[] =>
  goods(
    'foreign',
    words
      .split('|')
      .map((word) => `${noun} ${word}`)
      .join('|'),
  );

const OTHER_WEIGHTS: readonly Entry[] = [
  ...named(
    'weight',
    "wheel|tire|tyre|rim|tractor|suitcase|lawn tractor|garden tractor|front suitcase|front|rear|rear wheel|front wheel|axle|fishing|lead|lead fishing|dive|diving|scuba|lead dive|curtain|drape|drapery|sash|window|window sash|sash window|clock|grandfather clock|cuckoo clock|pendulum|scale|weighing scale|kitchen scale|balance|apothecary|brass|bell|postal|letter|assay|calibration|test|pattern|sewing|sewing pattern|fabric|quilting|quilt|tablecloth|table cloth|table|book|canopy|canopy leg|tent|tent leg|umbrella|patio umbrella|umbrella base|gazebo|awning|flag|banner|sign|balloon|boat|ballast|keel|anchor|mooring|decoy|trolling|downrigger|bank|pool cover|leg|head|saddle|horse|hoof|jockey|golf|golf club|putter|driver|bat|baseball bat|derby car|derby|balancing|wheel balancing|wheel balance|tire balancing|tyre balancing|stick on|stick on wheel|stick on balancing|clip on|adhesive|adhesive wheel|crank|clutch|variator|roller|governor|flywheel|counterbalance|telescope|tripod|camera|stage|theatre|theater|light stand|mic stand|elevator|garage door|gate|plow|plough|snow plow|truck bed|traction|loader|skid steer|forklift|race car|racing|kart|go kart|record|turntable|tonearm|key|piano key|pie|baking|pickle|pickling|fermentation|fermenting|bacon|burger|steak|meat|grill|yarn|knitting|loom|vertical blind|blind|shade|net|cast net|crab trap|trap|plumb|jeweller's|jeweler's|jewelers|jewellers|troy|door|dead|tongue|paper",
  ),
  ...goods(
    'foreign',
    'weight loss/-|lose weight/-|losing weight/-|weight distribution/-|weight distribution hitch|weight management/-|weight gainer|weight scale|weight forward/-|light weight/-|weight limit per person/-|counterweight|counter weight|paperweight|sinker|plumb bob|fishing sinker|egg sinker|downrigger ball|keel bulb|ballast/-|ballast pig|lead ingot|lead shot/-|weighted blanket|weighted base|welterweight',
  ),
];

const OTHER_PLATES: readonly Entry[] = [
  ...named(
    'plate',
    "license|licence|number|private number|personalised|personalized|personalised number|registration|vanity|dealer|car|car number|name|brass name|face|switch|light switch|wall|outlet|cover|kick|push|strike|door|door kick|mounting|mount|backing|adapter|adaptor|build|print bed|print|hot|griddle|grill|cast iron griddle|cooking|pizza|dinner|salad|dessert|side|bread|bread and butter|soup|cake|pie|tea|lunch|luncheon|paper|china|fine china|bone china|porcelain|stoneware|earthenware|ceramic|pottery|melamine|glass|crystal|silver|silver plated|pewter|decorative|decorator|collector|collector's|collectors|collectible|collectable|commemorative|souvenir|christmas|holiday|limited edition|display|hand painted|transferware|willow|serving|chop|snack|egg|deviled egg|sushi|oyster|charger|cheese|appetizer|starter|camping|camp|enamel|tin|printing|printer's|etching|engraving|photographic|tintype|sheet steel|sheet|diamond|tread|checker|chequer|armor|armour|body armor|body armour|ballistic|trauma|chest|breast|skid|bash|fork|pressure|clutch|flex|valve|end|timing|winch|hitch|trailer|fish|mending|truss|tie|gusset|nail|sill|faceplate|lathe|surface|granite surface|angle|lap|belly|warming|heat|heating|petri|culture|well|microtitre|dental|bone|growth|nose|floor|scaffold|road|trench|manhole|drain|blanking|blank|patch|escutcheon|finger|hinge|tap|shower|fire|fireback|back|bolster|leveling|levelling|vibrating|vibratory|compactor|kitchen|picnic|party|disposable|plastic dinner|baby|toddler|kids dinner|children's|dog tag|ground|cutting|die|press|steel base|bumper winch|engraved|memorial|bronze|builder's|builders|makers|maker's|data|serial|ID|locomotive|railway|enamel number|quick release|tripod|camera|camera mounting|tripod mounting|guitar neck|neck|pickguard|reverb|swim|transom|jack|motor|battery|antenna|router|router base|router table|dust|saw|throat|needle|stitch|hoop|loft|stair|soleplate|sole|iron sole",
  ),
  ...goods(
    'foreign',
    'plate compactor|plate glass/-|plate carrier|plate frame|plate warmer|plate hanger|plate joiner|plate boiler|plate reader|plate tectonics/-|plate rail|plate setting|plate armor/-|plate armour/-|plate camera|plate set for|plates and bowl|plates bowl|plates and cup|plates cup|plates and mug|plates and saucer|plates saucer|bowls plate|bowls and plate|cups and plate|base plate|baseplate|dish plate|steel plates drop|license plate frame|license plate holder|license plate bracket|number plate holder|number plate surround|place setting|dinner set|dinner service|tea set|dinnerware/-|tableware/-|crockery/-|dishware/-|flatware/-|cutlery/-|saucer|gravy boat|soup bowl|serving bowl|teapot|teacup|tureen|platter|salad bowl|cereal bowl|pasta bowl|wine glass|wineglass|drinking glass|vinyl record|record player|turntable|vinyl lp|jukebox/jukebox',
  ),
];

const OTHER_BARS: readonly Entry[] = [
  ...named(
    'bar',
    'towel|towel hanging|grab|safety grab|shower grab|bathroom grab|tow|sound|light|led light|led|roll|sway|front sway|rear sway|anti roll|anti sway|anti sway hitch|nerf|brush|bull|crash|engine crash|engine|crow|pry|wrecking|pinch|digging|lining|railroad|spud|tamper|tamping|nail|jemmy|roof|roof cross|cross|roof rack|roof rack cross|luggage|chocolate|candy|protein|whey|energy|granola|snack|cereal|nut|muesli|fruit|ice cream|soap|shampoo|gold|silver|bullion|copper|brass|aluminum|aluminium|wet|home|tiki|mini|breakfast|kitchen|coffee|wine|juice|sushi|salad|pool|pool hand rail|hand rail|handrail|patio|outdoor|garden|basement|pub|cocktail|liquor|drinks|drink|dry|oak|mahogany|walnut|fold away|curtain|clothes|garment|wardrobe|closet|clothes hanging|hanging clothes|shower|shower curtain|panic|push door|sissy|handle|drag|ape hanger|motorcycle handle|flat|steel flat|round|square|angle|cold rolled|hot rolled|steel round|drill|boring|sine|tommy|breaker|torque|ratchet|chainsaw|chain saw|saw|guide|chainsaw guide|sprayer|spray|boom|gymnastics|gymnastic|gymnast|uneven|parallel|horizontal|high|ballet|monkey|swing|trapeze|hospital bed|bed|bed assist|bed grab|magnetic knife|knife|tool|magnetic tool|hitch|tow hitch|trailer hitch|draw|tie|strut|strut tower|traction|torsion|track|panhard|stabilizer|stabiliser|bus|copper bus|earth|ground|grounding|neutral|menu|space|touch|side|side step|step|kick|window|window security|security|door|door security|burglar|stair|baby gate|mobile|dive|karaoke|hookah|oxygen|tongue|belly|nipple|piercing|belly button|navel|whammy|tremolo|slide|lap steel|fishing|rod|carp|buzz|buzzer|bite|headboard|rail|rack|jockey|boat|ski|wakeboard|water ski|tower|t top|heat|heater|electric|sensor|infrared|video|camera|flash|jewelry|jewellery|necklace|tack|hay|feed|spreader hay|weld|welding|reinforcing|reinforcement|threaded|leaf|push up|pushup|door way|doorway pull up|doorway|door frame|doorway chin up|door frame pull up|grill|burner|sediment|sand|anchor|cam|rake|cutter|sickle|cutting|mower|hedge trimmer|load|cargo|truck bed cargo|cargo stabilizer|telescopic|ratcheting cargo|steering wheel lock|steering|bike|bicycle|road bike|bmx|mtb|riser|drop|aero|tri',
  ),
  ...leading(
    'bar',
    'stool|cart|table|top|counter|sink|fridge|refrigerator|cabinet|mirror|sign|code|tender|mat|towel|rail|glass|soap|riser|mitzvah|exam|light|oil|crawl|owner|spoon|chair|snip|pull|joist|staff|height table|height chair|height stool|globe|lamp|furniture/-|tools/-|keeper|taps/-',
  ),
  ...goods(
    'foreign',
    'barstool|bartender/-|bartending/-|barware/-|barcode|barre/-|handlebar|crowbar|prybar|minibar|soundbar|sway bar link|bull bar kit|toolbar|drawbar|rebar/-|re bar/-|bar and grill/-|bar b q/-|happy hour/-|crossbars roof/-|roof rail|grab rail|hand rail|handrail|monkey bars set/-|clothes rail|curtain rod|curtain pole|shower rod|tension rod|carbide|end mill|round stock/-|flat stock/-|angle iron/-|chocolate/-|candy/-|granola/-|whey/-|whey protein|protein powder|protein shake|pre workout/-|preworkout/-|creatine|mass gainer|supplement|bcaa|energy drink|vitamin',
  ),
];

const OTHER_RACKS: readonly Entry[] = [
  ...named(
    'rack',
    "roof|car roof|bike|bicycle|4 bike|2 bike|3 bike|four bike|two bike|three bike|bike roof|hitch bike|bike hitch|luggage|cargo|roof cargo|ski|snowboard|surfboard|surf|kayak|canoe|paddle board|paddleboard|boat|ladder|van ladder|truck|contractor|headache|hitch|trunk|trunk bike|tire|tyre|wheel|spare tire|wine|wine bottle|spice|shoe|boot|hat|coat|hat and coat|clothes|clothing|garment|rolling garment|drying|clothes drying|laundry|towel|dish|dish drying|over the sink dish|pot|pan|pot and pan|pots and pans|hanging pot|hanging|baker's|bakers|bakery|bread|cooling|cake cooling|oven|grill|roasting|broiler|smoker|jerky|cake|pie|cookie|speed|sheet pan|bun pan|server|network|network server|comms|data|19 inch|19 inch server|audio|amp|stereo|studio|media|cd|dvd|cd dvd|record|lp|game|video game|book|magazine|newspaper|mail|letter|key|jewelry|jewellery|earring|necklace|tie|belt|scarf|quilt|blanket|rifle|shotgun|bow|sword|fishing rod|rod|fishing|pool cue|cue|golf|golf club|golf bag|bat|hockey|sports equipment|ball|basketball|guitar|instrument|sheet music|hay|feed|saddle|tack|bridle|firewood|log|pallet|warehouse|industrial|shelving|gondola|retail|display|brochure|merchandise|clothing display|tool|garden tool|pipe|parts|drill bit|test tube|lab|drum|plant|flower|seedling|mug|cup|glass|stemware|bottle|beer|keg|can|soda|egg|antler|elk|moose|deer|whitetail|buck|atv|motorcycle|rear|front|rear luggage|scooter|wheelchair|pedalboard|synth|keyboard|computer|mining|gpu|solar|solar panel|battery|cattle|costume|dress|hose|overhead|overhead storage|ceiling storage|garage storage|closet|pantry|kitchen|bathroom|shower|toilet paper|over the door|paper|poster|yarn|thread|nail polish|wire|chrome wire|rotisserie|rib|taco|toast|pizza|turkey|napkin|utensil|pen|file|document|sample|tray|wood storage|lumber storage|trailer|trimmer|landscape trailer|string trimmer|dryer|gear|timing|steering|4 tier|3 tier|5 tier|utility|wall hat|entry|umbrella|cane|helmet|skateboard|longboard|scuba|tank|yoga mat storage",
  ),
  ...leading(
    'rack',
    'server|unit|ear|and pinion|of ribs/-|of lamb/-|of antlers/-|mount server|mount case|mount kit|mount shelf|rail',
  ),
  ...goods(
    'foreign',
    'rackmount/-|rack mount/-|wine cabinet|racking/-|pallet racking/-|shelving/-|shelving unit|bookcase|coat hook|hat stand|cross rail|roof box|cargo box|hitch receiver|ball mount|hitch mount|patch panel|ethernet/-|nas/-|ups battery/-',
  ),
];

const OTHER_BENCHES: readonly Entry[] = [
  ...named(
    'bench',
    "piano|adjustable piano|duet piano|duet|organ|keyboard|drum|garden|park|patio|porch|outdoor|deck|potting|storage|shoe storage|entry|entryway|entry way|hall|hallway|dining|dining table|kitchen|bedroom|vanity|dressing table|church|deacons|deacon's|deacon|window|shoe|mudroom|mud room|toy|toy box|shower|bath|tub|transfer|bathtub|massage|picnic|picnic table|teak|cedar|oak|pine|pallet wood|carpenter's|carpenters|carpentry|woodworking|wood working|woodworker's|woodworkers|joiner's|joiners|jeweler's|jewelers|jeweller's|jewellers|watchmaker's|optical|lab|laboratory|test|saw|milking|shaving|swing|tufted|upholstered|ottoman|farmhouse|bathroom|locker|locker room|changing room|team|dugout|baseball|players|sideline|judges|boat|pontoon|memorial|stone|granite|marble|trolley|cobbler's|cobblers|school|bus|tool|mechanic's|mechanics|garage work|drafting|computer|end of bed|foot of bed|bed end|bed|telephone|gossip|monks|monk's|reading|corner|nook|breakfast nook|breakfast|banquette|restaurant|diner|artist|artist's|art|easel|sewing|loom|weaver's|kneeling|meditation|prayer|tattoo|chiropractic|inversion|love seat|glider|arbor|arbour|tree|fire pit|railway|station|pew|hope chest|blanket chest|accent|velvet|leather ottoman|wrought iron|wrought iron garden|cast iron garden|electronics|electronic|soldering|reloading|gun cleaning|work top|vice|step|sauna|ice fishing|truck|van|rear|back|front|third row|split|car seat|truck seat|seat",
  ),
  ...leading(
    'bench',
    'grinder|vise|vice|saw|seat|seating|top|drill|sander|hook|plane|dog|cushion|scraper|test|mark|scale|coat|power supply/-|racing|pew|warmer|jeweler|lathe|oven|polisher|buffer|shear|brake|clothes/-|swing|chest|mount grinder',
  ),
  ...goods('foreign', "workbench|work bench|pew|bench type|carpenter's vise|woodworking vise|vise|vice grip|bench dog hole"),
];

const OTHER_SMALL_GOODS: readonly Entry[] = [
  ...named(
    'collar',
    'dog|cat|pet|puppy|large dog|small dog|leather dog|shock|dog shock|bark|anti bark|e|dog training|dog training e|flea|cone|leather|nylon|choke|choke chain|prong|tracking|gps|gps dog|horse|draft horse|cow|goat|cattle|calf|sheep|harness|shirt|detachable|detachable shirt|fur|mink|lace|coat|dress|blouse|neck|cervical|clerical|priest|shaft|set screw|set screw shaft|split shaft|stop|drill stop|drill|reamer|depth|pipe|riser|chimney|stove pipe|flashing|well|drill depth|router|elizabethan|studded|spiked|rhinestone|starched|yoke|invisible fence|wireless fence|remote training|breakaway|martingale|blue|white|pink|cattle gps|gorget',
  ),
  ...leading('collar', 'box|stay|stud|pin|bell|bone|tag|and leash|and lead'),
  ...named(
    'disc',
    'brake|golf|compact|floppy|cutting|grinding|sanding|abrasive|clutch|harrow|plow|flap|blu ray|vented brake|front brake|rear brake|game|laser|music|spinal|herniated|slipped',
  ),
  ...named('disk', 'brake|floppy|hard|sanding|cutting|clutch|harrow'),
  ...goods(
    'foreign',
    'disc golf/-|disc brake|disc harrow|disc player|disk drive|disc jockey|disc changer|brake rotor|brake pad|brake caliper|rotors and pad',
  ),
  ...named(
    'cage',
    'bird|dog|rabbit|hamster|guinea pig|reptile|chicken|parrot|parakeet|budgie|ferret|rat|chinchilla|batting|tomato|shark|roll|animal|pet|large bird|water bottle|bottle|pedal',
  ),
  ...goods('foreign', 'cage nut|cage pedal|birdcage'),
  ...named(
    'bumper',
    'front|rear|back|car|truck|steel front|steel rear|front truck|rear truck|rear step|step|crib|winch|off road|offroad|trailer|pinball|boat|dock|pool table|door|door wall|corner|edge|chrome|chrome front|chrome rear|cot|pickup|oem|oem front|oem rear|aftermarket|plastic front',
  ),
  ...leading('bumper', 'sticker|car|boat|cover|pool|guard|hitch|jumper|bracket|mount|pad for crib|pull|end cap|lip|sled'),
  ...named(
    'clip',
    'hair|money|tie|alligator|hose|binder|pocket|pen|bag|badge|suspender|cable|pant|chip|trim|fender|belt|nose|video',
  ),
  ...named(
    'clamp',
    'c|hose|pipe|wood|wood working|woodworking|bar woodworking|toggle|welding|muffler|exhaust|battery|beam|parallel|f|quick|quick grip|ratchet|hand screw|strap|corner|edge|ground|cable|seat|seatpost|stem|handlebar|36 inch bar|24 inch bar|48 inch bar|sash|g|trigger|furniture',
  ),
  ...named(
    'tree',
    'christmas|xmas|artificial christmas|artificial|apple|fruit|palm|cat|shoe|cedar shoe|hat|coat|hall|ornament|pine|maple|fig|fiddle leaf fig|lemon|olive|bonsai|money|family|climbing|shade|oak|jewelry|mug|peach|pear|cherry|avocado|banana|citrus|ficus|fake|silk|willow|birch|redwood|cactus|tire|kitty',
  ),
  ...leading('tree', 'house|skirt|topper|trimming|removal|service|saw|spade|stump|pruner|trimmer|farm|lot|topping'),
  ...named(
    'press',
    'french|printing|drill|wine|tortilla|hydraulic|heat|garlic|arbor|cider|shop|book|cheese|juice|bearing|hot|trouser|sandwich|panini|letter|rosin|reloading|flower|tofu|pasta|t shirt heat|button|fruit|apple|punch|bench drill|floor drill',
  ),
  ...named(
    'iron',
    'clothes|steam|curling|flat|waffle|golf|branding|soldering|fire|tire|climbing|hair|sad|corrugated|gaucho|pitching',
  ),
  ...goods(
    'foreign',
    'ironing board|iron set golf|micro usb|micro sd/-|microwave|micro wave|micro atx/-|micro four thirds/-|micro sim|micro scooter|micro brewery|ssb radio/-',
  ),
  ...named(
    'barbell',
    'titanium|piercing|tongue|nipple|belly|industrial|surgical steel|curved|14g|16g|14 gauge|16 gauge|circular|eyebrow|jewelled|jeweled|navel',
    'very-foreign',
  ),
  ...goods(
    'very-foreign',
    ['barbell', 'dumbbell', 'kettlebell', 'weight plate']
      .flatMap((one) =>
        [
          'wall art',
          'wall decor',
          'sign',
          'decor',
          'decoration',
          'ornament',
          'keychain',
          'key chain',
          'lamp',
          'clock',
          'costume',
          'poster',
          'print',
          'sticker',
          'decal',
          'mug',
          'trophy',
          'paperweight',
          'salt shaker',
        ].map((thing) => `${one} ${thing}/-`),
      )
      .join('|'),
  ),
  ...goods(
    'very-foreign',
    'not a real barbell/-|not a real dumbbell/-|not a real weight/-|not real barbells/-|not real dumbbells/-|not real weights/-|not an actual barbell/-|not actual weights/-|piercing|body jewelry/-|body jewellery/-|barbell jewelry/-|barbell jewellery/-|internally threaded|externally threaded|piercing studio|tattoo studio|belly ring|nose ring|gauge earring|dog dumbbell|retrieving dumbbell|obedience dumbbell|dumbbell toy|shaped like a|shaped like an|in the shape of a|in the shape of an|barbell shaped|dumbbell shaped|kettlebell shaped|barbell necklace/-|dumbbell necklace/-|kettlebell necklace/-|barbell pendant/-|dumbbell pendant/-|barbell earring|cufflink|cake topper|cookie jar|piggy bank/-|keychain|key chain|coffee mug|beer mug',
  ),
];

export const OTHER_TRADES: readonly Entry[] = [
  ...OTHER_WEIGHTS,
  ...OTHER_PLATES,
  ...OTHER_BARS,
  ...OTHER_RACKS,
  ...OTHER_BENCHES,
  ...OTHER_SMALL_GOODS,
];
