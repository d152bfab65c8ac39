/** English words of condition. `denied` is what the word means behind a "not" or "no"; without it the denied word says nothing. */
import type { Condition } from '../../../listing/reading.ts';
import type { Entry, Term } from '../../text/terms.ts';

const condition = (words: string, value: Condition, denied?: Condition): Entry => {
  const term: Term = denied ? { code: 'C', condition: value, denied } : { code: 'C', condition: value };
  return [words, term];
};

export const CONDITIONS: readonly Entry[] = [
  condition(
    'surface rust|light rust|a little rust|little rust|some rust|minor rust|slight rust|bit of rust|a bit of rust|light surface rust|minor surface rust|some surface rust|slightly rusty|a little rusty|little rusty|bit rusty|a bit rusty|lightly rusted|rust spots|spots of rust|rust spot|rust marks|a touch of rust|touch of rust|some light rust|flash rust|cosmetic rust|light rusting|patina|rusting a bit|some minor rust|a few rust spots',
    'rust-light',
    'no-rust',
  ),
  condition('rust|rusty|rusted|rusting|corroded|corrosion|oxidized|oxidised|oxidation', 'rust', 'no-rust'),
  condition(
    'heavy rust|very rusty|really rusty|badly rusted|rusted badly|heavily rusted|lots of rust|a lot of rust|deep rust|pitted|pitting|flaking rust|rusted pretty good|super rusty|pretty rusty|rusted through|severe rust|major rust|quite rusty',
    'rust-heavy',
    'no-rust',
  ),
  condition('rust free|rustfree|no rust', 'no-rust'),
  condition(
    "bent|bend|bow|bowed|warped|bowing|bends|bending|slightly bent|slight bend|slight bow|a little bent|not straight|isn't straight|little bend|a bend|a slight bend|curved slightly|not perfectly straight|wobble when spun|wobbles when you spin it|not true|tweaked|banana",
    'bent',
    'straight',
  ),
  condition(
    'straight|perfectly straight|still straight|nice and straight|dead straight|arrow straight|spins true|rolls true|runs true|straight as an arrow|rolls straight|is straight|completely straight|totally straight|bar straight|100 straight|true',
    'straight',
    'bent',
  ),
  condition(
    "seized|seized up|frozen|don't spin|dont spin|doesn't spin|doesnt spin|do not spin|does not spin|won't spin|wont spin|stuck|don't rotate|doesn't rotate|no spin|do not rotate|barely spin|barely spins|don't turn|doesn't turn",
    'seized-sleeves',
    'spins',
  ),
  condition(
    'spins|spin|spins freely|spin freely|spins well|spins great|spin great|spin fine|spins fine|spins smooth|spins smoothly|spin smoothly|spin well|rotates|rotate|rotating|rotates freely|spins nice|great spin|good spin|smooth spin|sleeves spin',
    'spins',
    'seized-sleeves',
  ),
  condition(
    'cracked|crack|cracks|broken|split|chunk missing|chunks missing|chunk out|broken off|snapped|fractured|cracking|hairline crack',
    'cracked',
  ),
  condition(
    'split hub|loose hub|hub is loose|loose inserts|insert loose|insert popped|ring loose|loose insert|center ring loose|hubs are loose',
    'split-hub',
  ),
  condition(
    'chipped|chip|chips|chipping|nicks|scratched|scratches|scuffed|scuffs|dings|dinged|paint chipping|chipped paint|paint chips',
    'chipped',
  ),
  condition(
    'missing|missing parts|missing hardware|missing bolts|missing pieces|missing a bolt|missing a pin|incomplete|lost the',
    'missing-parts',
  ),
  condition(
    'repainted|painted|spray painted|re painted|fresh paint|refinished|restored|painted over|fresh coat of paint|rattle canned|refurbished|powder coated myself|paint job',
    'repainted',
  ),
  condition(
    'homemade|home made|hand made|handmade|diy|built myself|built it myself|i built|welded myself|custom built|custom made|self made|made it myself|shop made|home built|homebuilt|made by my',
    'home-made',
  ),
  condition(
    'stored outside|outside|outdoors|left outside|left out|in the rain|been outside|kept outside|sat outside|in the yard|in the shed|stored outdoors|under a tarp|been in the weather|left in the rain|weathered|out in the weather|on the patio|in the backyard|sitting outside|out back',
    'stored-outdoors',
    'stored-indoors',
  ),
  condition(
    'stored inside|indoors|kept inside|kept indoors|stored indoors|always inside|inside|climate controlled|in the basement|basement kept|garage kept|kept in garage|kept in the garage|stored in garage|stored in the garage|in a dry garage|kept in the house|dry basement|always indoors',
    'stored-indoors',
  ),
  condition('wobbly|wobbles|wobble|shaky|unstable|a little wobbly|rickety|wobbles a bit', 'wobbly'),
  condition('welded|fully welded|all welded|weld|welds', 'welded'),
  condition('bolted|bolt together|bolts together|bolt on|bolt down|bolts', 'bolted'),
  condition(
    'torn|tear|tears|rip|rips|ripped|ripped upholstery|torn upholstery|cut in the pad|duct tape|duct taped|vinyl is torn|tape on the pad|worn pad|upholstery cracked',
    'torn',
  ),
  condition('one odd|odd one|odd plate|orphan|no mate|without a mate|not a pair|missing its mate', 'odd'),
];
