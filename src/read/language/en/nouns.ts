/** English nouns of the trade. Singular forms; the plural is made by adding "s" unless given after "/". */
import type { Kind } from '../../../listing/reading.ts';
import type { Entry, Term } from '../../text/terms.ts';

/** What the adjectives inside a noun phrase say ("olympic bar", "rubber bumper"). */
function inherent(phrase: string): Partial<Term> {
  if (/\b(olympic|oly)\b/.test(phrase)) return { fits: '50mm' };
  if (/\bstandard\b/.test(phrase)) return { fits: '25mm', sense: 'standard' };
  if (/\b(rubber|crumb)\b/.test(phrase)) return { material: 'rubber' };
  if (/\biron\b/.test(phrase)) return { material: 'iron' };
  if (/\bneoprene\b/.test(phrase)) return { material: 'vinyl' };
  return {};
}

function nouns(kind: Kind, phrases: string, more: Partial<Term> = {}): Entry[] {
  return phrases.split('|').flatMap((phrase): Entry[] => {
    const [one = '', many] = phrase.split('/');
    const plural = many ?? `${one}s`;
    const term = { code: 'k', kind, ...inherent(phrase), ...more };
    const entries: Entry[] = one === '' ? [] : [[one, term]];
    if (plural !== '-') entries.push([plural, { ...term, plural: true }]);
    return entries;
  });
}

const weak = { weak: true } as const;

export const NOUNS: readonly Entry[] = [
  ...nouns(
    'other',
    'plate peg|weight peg|plate horn|weight horn|plate post|storage peg|plate storage peg|weight storage peg|plate loader|chin bar|pull up attachment/-|lat attachment|tricep rope|triceps rope|cable handle|cable attachment',
    weak,
  ),
  ...nouns(
    'other',
    'bar catch/bar catches|safety bar|safety arm|spotter arm|spotter bar|safety pin|j hook|j cup|safety catch/safety catches',
    { weak: true, part: 'rack' },
  ),
  ...nouns('other', 'wood platform|wooden platform|plywood platform', { weak: true, sense: 'sizes' }),
  // Made for lifting and for nothing else: an ad of one is of this trade.
  ...nouns(
    'other',
    'deadlift platform|deadlifting platform|lifting platform|weightlifting platform|weight lifting platform|olympic platform|olympic lifting platform|oly platform|oly lifting platform|barbell platform|gym platform|squat platform|farmers walk handle|farmers handle|strongman log|deadlift jack|barbell jack|jerk block',
    { sense: 'of-the-trade' },
  ),
  ...nouns('collars', 'star nut|star lock|spin lock nut|spinlock nut|screw on collar|screw collar|spin collar|star nut collar'),
  ...nouns('plate', 'weight/-', { ...weak, sense: 'mass' }),
  ...nouns('plate', 'plate|disc|disk|lb plate/-|weight disc|weight disk|free weight', weak),
  ...nouns('plate', '/weights|/wieghts|/wights|/weigths|/weigts|/wts|/iron weights', weak),
  ...nouns(
    'plate',
    'weight plate|wieght plate|iron change/-|rubber change/-|steel change/-|barbell plate|barbell weight|barbell disc|gym plate|gym weight|standard plate|standard weight|lifting plate|bar weight|plate weight|plate wieght',
  ),
  ...nouns('plate', '/olympic iron|/oly iron|/gym iron', { material: 'iron' }),
  ...nouns(
    'plate',
    'olympic plate|olympic weight|oly plate|olympic weight plate|weightlifting plate|lifting weight|workout weight|exercise weight',
  ),
  ...nouns('plate', 'technique plate|training plate', { sense: 'full-height-too' }),
  ...nouns(
    'bumper',
    'bumper plate|bumper weight|technique bumper|training bumper|rubber bumper|rubber bumper plate|olympic bumper|olympic bumper plate|crumb bumper|competition bumper|competition plate/competition plates',
  ),
  ...nouns('bumper', 'bumper', weak),
  ...nouns(
    'micro',
    'micro plate|microplate|fractional plate|change plate|steel change plate|iron change plate|rubber change plate|micro weight|fractional weight|add on plate|fractional|micro',
  ),
  ...nouns(
    'bar',
    "barbell|bar bell|barbel|barbell bar|straight barbell|olympic barbell|olympic bar|oly bar|olympic weight bar|olympic lifting bar|olympic straight bar|straight bar|power bar|power lifting bar|powerlifting bar|weightlifting bar|weight lifting bar|lifting bar|deadlift bar|squat bar|weight bar|standard weight bar|long bar|bench press bar|bench bar|training bar|technique bar|bushing bar|bearing bar|women's bar|men's bar|ladies bar",
  ),
  ...nouns('bar', 'axle|axle bar|fat bar|thick bar|fat axle|thick axle|strongman axle', { sense: 'thick' }),
  ...nouns('bar', 'bar', weak),
  ...nouns(
    'curl-bar',
    'curl bar|curling bar|curl barbell|ez bar|e z bar|ez curl bar|e z curl bar|easy curl bar|easy bar|ez curl|ezbar|ez curl barbell|ez barbell|olympic curl bar|olympic ez bar|olympic ez curl bar|bicep curl bar|bicep bar|biceps bar|preacher curl bar|super curl bar|olympic super curl bar|cambered curl bar|curved bar|zig zag bar|z bar|bar z',
  ),
  ...nouns(
    'hex-bar',
    'hex bar|trap bar|hex trap bar|trap hex bar|hexagonal bar|hexagon bar|shrug bar|olympic hex bar|olympic trap bar|deadlift hex bar|hexbar|trapbar|open trap bar',
  ),
  ...nouns(
    'other',
    'dumbbell bar|dumbbell handle|adjustable dumbbell handle|adjustable dumbbell bar|adjustable dumbell handle|loadable dumbbell handle|dumbell bar|dumbell handle|dumbbell rod|db handle|db bar',
    { sense: 'handle' },
  ),
  ...nouns(
    'other',
    'safety squat bar|ssb|specialty bar|speciality bar|swiss bar|multi grip swiss bar|neutral grip bar|cambered bar|cambered bench bar|bow bar|cambered squat bar|football bar|multi grip bar|tricep bar|triceps bar|olympic tricep bar|tricep hammer bar|hammer curl bar|tricep curl bar|lat bar|lat pulldown bar|pull down bar|pulldown bar|pull up bar|pullup bar|chin up bar|chinup bar|dip bar|dip attachment|dip station|landmine|log bar|row bar|spreader bar|bar pad|squat pad|barbell pad|neck pad',
  ),
  ...nouns(
    'other',
    'rack attachment|squat rack attachment|squat attachment|lat pulldown|lat pull down|lat tower|lat machine|lat attachment|cable machine|cable crossover|home gym machine|home gym system|multi gym|leg press|leg extension|tricep rope|triceps rope|cable handle|cable attachment|leg curl|leg curl attachment|leg attachment|leg developer|preacher pad|preacher attachment|preacher curl attachment|smith machine|functional trainer|weight machine|pulley system|pulley|ab roller|ab wheel|ab bench|hyperextension bench|roman chair|ghd|glute ham developer|plyo box/plyo boxes|battle rope|weight belt|lifting belt|dip belt|lifting strap|lifting glove|foam roller|gym flooring/-|rubber flooring/-|treadmill|elliptical|exercise bike|stationary bike|rowing machine|rower|resistance band|pull up tower|power tower|bar jack|crossbar|pin press|sled|stability ball|exercise ball|mirror|sit up bench/sit up benches|knee sleeve|jump rope|speed rope|weight tree attachment/-|calf machine|calf raise|t bar row|dip bars attachment/-|chalk bowl',
    weak,
  ),
  ...nouns(
    'other',
    'weight stack|medicine ball|med ball|slam ball|wall ball|sandbag|sand bag|punching bag|heavy bag|weight vest|weighted vest|ankle weight|wrist weight|stall mat|horse stall mat|rubber mat|gym mat|steel club|steel mace|atlas stone',
    { weak: true, sense: 'heavy' },
  ),
  ...nouns(
    'rack',
    'power rack|squat rack|half rack|full rack|power cage|squat cage|squat stand rack|lifting rack|folding rack|wall mounted rack|wall mount rack|wall mounted squat rack|folding squat rack|foldable rack|fold back rack|weight cage|lifting cage|bench press rack|barbell squat rack|adjustable squat rack|portable squat rack|monster rack/-|combo rack|barbell squat stand rack/-|squat stand with pull up bar/-',
  ),
  ...nouns(
    'rack',
    'rack|cage|folding wall rack|wall folding rack|wall fold rack|wall fold up rack|fold back wall rack|fold up wall rack',
    weak,
  ),
  ...nouns(
    'stands',
    'squat stand|barbell stand|bench press stand|bench stand|independent squat stand|adjustable squat stand|weight stand/-|bar stand|barbell squat stand|single stand|power stand|independent stand|squat upright',
  ),
  ...nouns(
    'bench',
    'weight bench/weight benches|flat bench/flat benches|incline bench/incline benches|adjustable bench/adjustable benches|workout bench/workout benches|exercise bench/exercise benches|lifting bench/lifting benches|press bench/press benches|fid bench/-|decline bench/decline benches|utility bench/utility benches|olympic bench/olympic benches|olympic weight bench/olympic weight benches|weightlifting bench/weightlifting benches|weight lifting bench/weight lifting benches|bench press bench/-|preacher bench/preacher benches|preacher curl bench/-|preacher curl/-|flat weight bench/flat weight benches|adjustable weight bench/adjustable weight benches|flat incline bench/-|incline decline bench/-|flat incline decline bench/-|gym bench/gym benches|competition bench/competition benches|olympic bench press/-|bench press set/-|standard weight bench/-',
  ),
  ...nouns('bench', 'bench/benches|bench press/bench presses|bech/-|weight bech/-|wieght bench/-|wieght bech/-', weak),
  ...nouns(
    'collars',
    'collar|barbell collar|spring collar|spin lock collar|spinlock collar|spin lock|spinlock|star collar|locking collar|lock collar|bar collar|clamp collar|barbell clip|spring clip|bar clip|weight clip|barbell clamp|bar clamp|weight collar|olympic collar|lock jaw collar|screw collar|weight clamp|spring lock|locking clip|spring clamp',
  ),
  ...nouns('collars', 'clip|clamp', weak),
  ...nouns(
    'dumbbell',
    'dumbbell|dumbell|dumb bell|dumbbel|dumbel|db|hex dumbbell|hex dumbell|dumbbell weight|dumbell weight|hand weight|adjustable dumbbell|adjustable dumbell|rubber hex dumbbell|rubber dumbbell|hand dumbbell|neoprene dumbbell',
  ),
  ...nouns('kettlebell', 'kettlebell|kettle bell|kb|kettlebell weight|ketlebell|kettlebel|kettleball|kettle ball'),
  ...nouns(
    'storage',
    'dumbbell stand/-|dumbell stand/-|kettlebell stand/-|upright stand/-|stand for them/-|stand for dumbbells/-|plate tree|weight tree|weight plate tree|plate rack|weight rack|dumbbell rack|dumbell rack|dumbbell tree|plate storage/-|plate stand|weight storage/-|weight plate rack|weight plate storage/-|bar holder|barbell holder|barbell rack|plate holder|weight holder|weight plate holder|storage rack|bumper rack|bumper tree|rack dumbbell/-|rack dumbbells/-|a frame rack|a frame dumbbell rack|toaster rack|bar storage/-|storage tree|vertical plate rack|vertical weight rack|kettlebell rack|weight tree stand/-|plate toaster|dumbbell storage rack|weight storage rack|weights rack/-|weights tree/-|weight plate stand/-|olympic plate tree|olympic weight tree|olympic tree/-|plate tree rack/-|tree stand/-|bar rack/-|gun rack/-|storage pin/storage pins|rack for weights/-|rack for plates/-|rack for the weights/-|rack for the plates/-|stand for plates/-|stand for weights/-|tree for the weights/-|tree for plates/-|weight plate tree stand/-|rolling rack/-|tier rack/tier racks|rack for them/-|rack for dumbbells/-|rack for the dumbbells/-',
  ),
  ...nouns('stands', '/stands', { weak: true, sense: 'verb-too' }),
  ...nouns('storage', 'tree', weak),
  ['bar stock', { code: 'z' }],
];
