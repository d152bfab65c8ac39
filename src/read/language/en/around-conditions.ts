/** English words by which recognisers and refiners tell whether a condition or material holds, and of what. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';

/** Words around a condition. */
export const AROUND: readonly Entry[] = [
  // "My back is broken", "tore his shoulder": whose it is tells it from the back of a bench.
  [
    each(
      "my|his|her|our|my own|my bad|my left|my right|my lower|my old|husband's|wife's|dad's|son's|a bad|bum",
      'back|knee|knees|shoulder|shoulders|wrist|wrists|hip|hips|ankle|elbow|elbows|arm|arms|leg|legs|foot|neck|hand|hands|heart|spine|body|rotator cuff|tendon|achilles|collarbone|rib|ribs|toe|finger',
    ),
    { code: 'z', sense: 'body' },
  ],
  ['but|though|although|however|yet|otherwise', { code: 'z', sense: 'turn' }],
  ['or', { code: 'z', sense: 'or' }],
  [
    "if|whether|may be|may|might|could be|could|can't tell|not certain|some may be|some might be|no idea if|can't say|not sure if|not sure whether|don't know if|do not know if|untested",
    { code: 'z', sense: 'unknown' },
  ],
  ['rest|others|remainder|everything else', { code: 'z', sense: 'rest' }],
  ['on|along|across|inside of|throughout', { code: 'z', sense: 'upon' }],
  ["it|it's|its|he's|he|she", { code: 'z', sense: 'it' }],
  [
    'some have|some are|some of them|some of them have|some of them are|some of these|some of the plates|some with|a few have|a few are|most are|most have|most of them|most of these|a couple have|a couple are|one or two have|one or two are|a couple of them|a few of them|a few of these|one or two of them|several of them|a couple of the plates|a few of the plates|a couple of plates|a few plates|a couple plates|several plates',
    { code: 'z', sense: 'unknown' },
  ],
  ["they|they're|them|theyre|they've|em", { code: 'z', sense: 'they' }],
  ['all', { code: 'z', sense: 'whole' }],
  [
    "made that way|made this way|made like that|built that way|built like that|how it is made|how it's made|how they are made|how they're made|on purpose|by design|designed that way|designed like that|supposed to be like that|supposed to be that way|supposed to be bent|meant to be bent|meant to be like that|meant to be that way|bent kind|bent type|bent style|bent shape|bent on purpose|bent by design|comes that way|comes like that|its shape|that's the shape|that is the shape|is the shape",
    { code: 'z', sense: 'by-design' },
  ],
  ['zig zag|zigzag|zig zags|zig zaggy|squiggly|squiggle|w shaped|z shaped', { code: 'z', sense: 'by-design', part: 'curl-bar' }],
];

/** Things that materials are said of beside the goods ("rubber mats", "steel ring"). */
export const THINGS: readonly Entry[] = [
  [
    'full height|full diameter|full sized diameter|full size diameter|450 mm|450mm|45 cm across|17.7|bumper height|bumper diameter|same height as|same diameter as',
    { code: 'z', sense: 'full-height' },
  ],
  // Goods of their own: what is said of them is said of nothing else.
  [
    'door|doors|elevator|mat|mats|flooring|platform|platforms|table|raise stand|knee raise|knee raise stand|couch|freezer|fridge|saddle|trampoline|desk|mower|trailer|fan|truck|van|car|roof|window|windows|wheelbarrow|ladder|fence',
    { code: 'z', sense: 'thing apart' },
  ],
  [
    'ring|rings|insert|inserts|core|wheel|wheels|pipe|pipes|cover|covers|hook|hooks|pins|pegs|horn|horns|box|boxes|shell|bolts|cap|caps|wool|brush|tile|tiles|slab|bumper feet|stopper|stoppers|stuff|thing|things|top|tops|tread|treads|toe|toed|toes|gloves|mallet|screw things|crate|pallet|rod|rods|flakes|plating|lid|case|base|bases|finish',
    { code: 'z', sense: 'thing' },
  ],
];

/** Parts that tell which goods are spoken of ("rust on the knurl"). */
export const PARTS: readonly Entry[] = [
  [
    'the curl|curly one|the curly|wavy one|zig zag one|curl one|curl is|curl has|the ez|ez one|ez is|ez has',
    { code: 'z', part: 'curl-bar' },
  ],
  ['hex one|trap one|the hex one|hex is|the hex|hex has|the trap|trap is', { code: 'z', part: 'hex-bar' }],
  [
    'knurl|knurling|center knurl|centre knurl|end cap|end caps|endcap|endcaps|bushings|bushing|bearings|bearing|the ends',
    { code: 'z', part: 'bar' },
  ],
  [
    'seat|bench pad|bench pads|bench seat|bench upholstery|upholstery|cushion|padding|backrest|back pad|foam|stuffing|seat pad|my back pad|my back rest',
    { code: 'z', part: 'bench' },
  ],
  ['pad', { code: 'z', sense: 'sizes', part: 'bench' }],
  ['upright|uprights|post|posts', { code: 'z', sense: 'sizes', part: 'rack' }],
  ['crossmember|crossmembers|cross member|cross members', { code: 'z', part: 'rack' }],
  ['lettering|edge|edges|rim|rims|lip|letters|raised letters', { code: 'z', part: 'plate' }],
];
