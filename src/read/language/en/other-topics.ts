/** English words that tell what else an ad is about: other pursuits, services, vehicles, goods of the house. Senses as in other-trades.ts. */
import type { Entry } from '../../text/terms.ts';
import { SEEKING } from './seeking.ts';

const topic = (sense: string, words: string): Entry => [words, { code: 'z', sense }];

/** Things sold beside a weight set when somebody moves: they say little about the rest of the ad. */
const HOUSEHOLD: readonly Entry[] = [
  topic(
    'household',
    'couch|couches|sofa|sofas|sectional|loveseat|love seat|recliner|armchair|arm chair|coffee table|end table|end tables|side table|side tables|dining table|dining set|dining chairs|kitchen table|table and chairs|patio set|patio furniture|desk|desks|office chair|bookshelf|bookshelves|book shelf|dresser|dressers|nightstand|nightstands|night stand|wardrobe|armoire|mattress|mattresses|bed frame|bedframe|bunk bed|headboard|crib|stroller|high chair|car seat|tv|tvs|tv stand|television|flat screen|dvd|dvds|dvd player|xbox|game console|washer and dryer|washing machine|dryer|dishwasher|fridge|refrigerator|freezer|stove|toaster|blender|vacuum|vacuum cleaner|air conditioner|space heater|lamps|rugs|lawnmower|lawn mower|mower|weed eater|leaf blower|hedge trimmer|pressure washer|tool box|toolbox|bicycle|bicycles|mountain bike|road bike|bikes|toys|clothes|baby clothes|kids clothes|books|board games|dishes|pots and pans|luggage|suitcase|suitcases|christmas decorations|picture frames|golf clubs|tennis racket|skis|snowboard|fishing poles|camping gear|tent|cooler|grill|bbq|ladder|wheelbarrow|hand tools|power tools|printer|laptop|curtains|pillows|bedding|microwave oven|foosball table|ping pong table|pool table|air hockey table|trampoline|basketball hoop',
  ),
];

const OTHER_TOPICS: readonly Entry[] = [
  topic(
    'foreign',
    // Water, fishing and hunting
    'scuba|diving|snorkel|wetsuit|fins|regulator|bcd|fishing|angling|angler|tackle box|tackle|rod and reel|fishing rod|fishing reel|reel|reels|lures|lure|bait|hooks and sinkers|trout|bass boat|walleye|salmon|carp|downrigger|decoys|decoy|duck hunting|hunting|hunter|archery|crossbow|rifle|rifles|shotgun|shotguns|ammo|ammunition|holster|sailboat|sloop|keel|mast|outboard|boat trailer|pontoon|dinghy|marine|yacht|canoe|paddle|paddleboard|surfboard|wakeboard|anchor|bilge|pool cover|pool ladder|inground pool|above ground pool|swimming pool|hot tub|pool liner',
  ),
  topic(
    'foreign',
    // Vehicles and machines
    'tractor|tractors|compact tractor|lawn tractor|garden tractor|loader|skid steer|backhoe|excavator|three point hitch|3 point hitch|3pt|plow|plough|snowblower|snow blower|atv|utv|quad bike|motorcycle|motorbike|dirt bike|scooter|moped|sedan|coupe|minivan|4dr|4 door|2 door|mpg|odometer|clean title|salvage title|tags|mileage|low mileage|transmission|automatic transmission|manual transmission|gearbox|engine|engines|cylinder|v6|v8|turbo|diesel|awd|4wd|2wd|rwd|fwd|exhaust|radiator|alternator|carburetor|carburettor|brakes|rotors|suspension|struts|shocks|lug nuts|lug|lugs|bolt pattern|hubcap|hubcaps|hub caps|rims|rim size|alloys|alloy wheels|alloy|tire|tires|tyre|tyres|all season tires|winter tires|snow tires|tread|tread left|tpms|tonneau|tailgate|windshield|windscreen|headlight|headlights|taillights|fender|fenders|grille|winch|receiver|coupler|tow|towing|towed|flat towed|motorhome|rv|camper|caravan|fifth wheel|gooseneck|semi trailer|fairing|kickstand|saddlebags|helmet|pickup bed|truck bed|f series|oem|aftermarket part|chassis|axles|wheel bearing|tire shop|wheel balancer|go kart|golf cart|drivetrain|derailleur|groupset|shimano style|pedals|cranks|bike seat|seat post|spokes|freewheel|panniers|bike lock',
  ),
  topic(
    'foreign',
    // Kitchen, table and house
    'kitchen|kitchens|cookware|skillet|skillets|saucepan|griddle|frying pan|dutch oven|burner|burners|oven|ovens|barbecue|smoker|charcoal|propane|baking|bake|baker|recipe|cookbook|cook|cooking|cups|mugs|bowls|service for 4|service for 6|service for 8|service for 12|service for four|service for six|service for eight|service for twelve|porcelain|stoneware|earthenware|china|bone china|pottery|melamine|dishwasher safe|microwave safe|oven safe|glassware|crystal|wine|bottles|bottle|liquor|whiskey|beer|brewery|keg|cocktail|swivel|counter height|upholstery fabric|cushions|ottoman|seats 4|seats 6|seats four|seats six|seater|bistro|tabletop|table top|tablecloth|curtain|drape|drapes|drapery|blinds|valance|towel|towels|bathroom|shower|bathtub|toilet|vanity|faucet|sink|sinks|brushed nickel|escutcheon|closet|hangers|hat box|shoes|boots|coats|bottles not included|ornaments|christmas|easter|halloween|figurine|figurines|doll|dolls|barbie style|action figure|action figures|teddy|puzzle|lego style|antique|antiques|edwardian|victorian|art deco|mid century|collectible|collectibles|collectable|collectables|memorabilia|stamps|coins|coin collection|numismatic|bullion|troy|carat|karat|hallmarked|sterling silver|pewter|brass pan|millefiori|engraved|engraving|framed|signed print|oil painting|easel|canvas prints',
  ),
  topic(
    'foreign',
    // Garden, farm and animals
    'garden|gardening|gazebo|canopy|awning|umbrella|parasol|farmers market|greenhouse|planter|planters|flower pots|patio pavers|sprinkler|irrigation|chainsaw|firewood|hay|silage|cattle panels|livestock|chickens|coop|puppy|puppies|kitten|kittens|cat litter|leash|kennel|kennels|aquarium|fish tank|terrarium|reptile|bird seed|parrot|saddle|bridle|stirrups|horse tack|dog crate|dog lovers|breed|breeder|vet checked|neutered|spayed|hooves|bales|fence panels|fence posts|gate post',
  ),
  topic(
    'foreign',
    // Sewing, craft, music, records, clocks, pictures
    'sewing|sewing machine|serger|fabric|fabrics|quilting|quilt|quilts|knitting|crochet|yarn|loom|embroidery|sew|felt|lace|piano|cello|violin|guitar|guitars|bass guitar|amplifier|ukulele|drum kit|drum set|drums|cymbals|cymbal|trumpet|saxophone|keyboard|synthesizer|sheet music|metronome|capo|stylus|records|vinyls|lps|lp|33s|33 rpm|45 rpm|78 rpm|rpm records|album|albums|b side|sleeve worn|picture sleeve|picture sleeves|audiophile|subwoofer|wireless sub|speaker|speakers|receiver amp|bluetooth|hdmi|remote|usb|wifi|charger|phone case|tablet|monitor|cpu|motherboard|server|servers|router|casters and shelves|sliding shelves|pdu|telescope|equatorial|astronomy|camera|lens|lenses|tripod|clock|clocks|cuckoo|pendulum|chimes|grandfather clock|mantel|balance scale|balance scales|weighing scales|apothecary|postal|letter scale|scale pan|platform scale|beam scale|bench scale|grocery scale|feed scale|poise|nested brass',
  ),
  topic(
    'foreign',
    // Building, metal and shop
    'a36|1018|4140|drops|cold rolled|hot rolled|mill finish|bar stock|structural steel|scrap metal|scrap yard|scrap buyer|i beam|i beams|conduit|plumbing|copper pipe|pvc|drywall|shingles|2x4s|2x6|deck boards|decking|plywood sheets|insulation|scaffold|scaffolding|formwork|compactor|jackhammer|generator|air compressor|band saw|table saw|miter saw|mitre saw|router bits|lathe|milling machine|tool rest|grinder|grinding wheel|wire wheel|chisels|woodworking|carpentry|joinery|cabinet maker|sash|sash windows|double glazing|window frames|polished edge|beveled edge|bevelled edge|tempered glass|shelves|shelf|pallets of|conveyor|forge|anvil|blacksmith|hand truck|dolly cart|rigging|theatre|theater|stage lighting|traffic cones|manhole|nails|wood screws|nuts and bolts|hex bolts|carriage bolts|pipe fittings|solar panels|solar|inverter|off grid|well pump',
  ),
  topic(
    'foreign',
    // Other sports, cardio, clothes, food, health
    'cricket|baseball|softball|football helmet|shoulder pads|cleats|soccer|hockey|hockey sticks|ice skates|lacrosse|tennis|racquet|racket|golf|putter|driver shaft|bowling|bowling ball|skateboard|longboard|trucks and wheels|ski boots|wrestling|singlet|boxing gloves|karate|martial arts|yoga|pilates|ballet|gymnastics|spin bike|indoor cycle|peloton style|flywheel|stepper|stair climber|treadmill belt|incline motor|resistance tubes|tube bands|therabands|exercise bands|ankle straps|door anchor|walking poles|weighted hula hoop|hula hoop|jersey|jerseys|hoodie|hoodies|t shirt|t shirts|tshirt|shirt|shirts|jeans|jacket|dress|dresses|sneakers|size 9|size 10|size large|size xl|size medium|leggings|activewear|swimsuit|scrubs|perfume|jewelry|jewellery|necklace|bracelet|earrings|rings|protein|peanut|flavor|flavour|flavored|calories|servings|best by|exp date|expires|expiry|gluten free|diet|dieting|paperback|hardcover|hardback|isbn|ebook|magazine|magazines|dvd set|wheelchair|walker|mobility|medical|physio|nursing|caregiver',
  ),
  topic(
    'very-foreign',
    // Services, jobs, rentals, tickets, courses
    'gym membership|gym memberships|membership|memberships|month membership|joining fee|initiation fee|monthly dues|class pass|personal training|personal trainer available|personal training sessions|training sessions|online coaching|coaching available|first session free|first session|per session|a session|group classes|fitness classes|boot camp|bootcamp|now hiring|hiring|job opening|job opportunity|apply in person|apply now|apply online|resume|cv|salary|wages|hourly|per hour|an hour pay|paid weekly|benefits package|2nd shift|shift work|employer|for rent|to rent|to let|for lease|rental rate|per month|monthly rent|plus utilities|utilities included|roommate wanted|sublease|airbnb style|hire rates|for hire|rent per day|per day hire|tickets|tix|ticket|admission|concert|festival pass|lessons|tuition|workshop places|certification course|online course|ebook download|pdf download|workout plan|workout plans|training program|training plan|meal plan|meal plans|mobile app|lifetime access|subscription|moving service|moving services|movers available|junk removal|hauling service|we haul|haul away service|assembly service|repair service|upholstery service|powder coating service|sandblasting service|welding service|free quote|free quotes|free estimates|free estimate|licensed and insured|fully insured|book now|massage therapy|physiotherapy|retention|cherished number|transfer fee',
  ),
];

/** Phrases that hold words of the services above and yet belong to sellers of weights. */
const HARMLESS: readonly Entry[] = [
  [
    'cancel your gym membership|cancel your membership|cancel the gym membership|cheaper than a gym membership|cheaper than a membership|cheaper than gym membership|instead of a gym membership|no gym membership needed|no more gym membership|got a gym membership|have a gym membership|joined a gym|skip the gym membership|gym membership now|beats a gym membership|less than a gym membership|work part time|working full time|work full time|a month ago|per month storage|storage unit rent|months rent|moving service not included|bathroom scale|bathroom scales|kitchen scale|kitchen scales|shipping scale|luggage scale|boat anchor|boat anchors|dog chewed|pet free|smoke free|scrap metal price|scrap metal prices|scrap price|scrap prices|pickup truck|pick up truck|kitchen table top|tractor tire|tractor tires|in the kitchen|moving truck|sewing machine oil|3 in one oil|engine oil|motor oil|gun oil|engine hoist|engine stand|engine block|baseball player|football player|football team|played football|plays football|play football',
    { code: 'z' },
  ],
];

/** Words by which a clause tells what the seller would take instead of money. */
const SWAPS: readonly Entry[] = [
  topic('swap', 'trade for|trades for|trade|trades|swap|swaps|swap for|trading for|interested in|barter'),
];

/** Words of the gym that lend weight to a noun beside them. */
const GYM: readonly Entry[] = [
  topic(
    'gym',
    'gym|gyms|garage gym|basement gym|lifting|weightlifting equipment|powerlifter|powerlifters|lifter|lifters|strength training|bodybuilding|work out|working out|workouts|gym equipment|workout equipment|exercise equipment|fitness equipment|weightlifter|weightlifters|strongman|knurl|knurling|spotter arms|spotter arm|safety arms|j hooks|j hook|j cups|j cup|spotters|safeties|safety bars|spotter bars|pull ups|pullups|weight room|weightroom',
  ),
  topic(
    'weights-set',
    'weight set|weight sets|set of weights|barbell set|barbell sets|weights set|plate set|weight lifting set|weightlifting set|olympic weight set|olympic set|standard weight set',
  ),
];

export const TOPICS: readonly Entry[] = [...HOUSEHOLD, ...OTHER_TOPICS, ...HARMLESS, ...SWAPS, ...GYM, ...SEEKING];
