/** German nouns of the trade: "singular/plural", compounds made of their parts. Foreign names that German ads use as they are stand beside them. */
import type { Kind } from '../../../listing/reading.ts';
import type { Entry, Term } from '../../text/terms.ts';
import { compounds, spelt } from './spelling.ts';

/** What the first part of a compound says ("Gussscheibe", "Olympiastange"). */
const INHERENT: readonly (readonly [RegExp, Partial<Term>])[] = [
  [/olympia|olympic/, { fits: '50mm' }],
  [/standard/, { fits: '25mm', sense: 'standard' }],
  [/^(guss|eisen)/, { material: 'iron' }],
  [/^stahl/, { material: 'steel' }],
  [/^(voll)?gummi/, { material: 'rubber' }],
  [/^chrom/, { material: 'chrome' }],
  [/^(kunststoff|plastik|vinyl|neopren)/, { material: 'vinyl' }],
  [/^(zement|beton)/, { material: 'cement' }],
  [/^wettkampf/, { grade: 'calibrated' }],
];

const inherent = (phrase: string): Partial<Term> =>
  Object.assign({}, ...INHERENT.filter(([pattern]) => pattern.test(phrase)).map(([, meaning]) => meaning));

/** Phrases "one/many"; "one/-" has no plural of its own, "/many" no singular. Dative plurals are made of plurals in -e. */
function nouns(kind: Kind, phrases: string, more: Partial<Term> = {}): Entry[] {
  return phrases.split('|').flatMap((phrase): Entry[] => {
    const [one = '', many = '-'] = phrase.split('/');
    const term = { code: 'k', kind, ...inherent(phrase), ...more };
    const entries: Entry[] = one === '' ? [] : [[one, term]];
    if (many !== '-' && many !== one) entries.push([many.endsWith('e') ? `${many}|${many}n` : many, { ...term, plural: true }]);
    return entries;
  });
}

const weak = { weak: true } as const;
const PLATE = 'scheibe/scheiben|platte/platten|gewicht/gewichte';
const TRADE_PLATE =
  'hantelscheibe/hantelscheiben|gewichtsscheibe/gewichtsscheiben|hantelgewicht/hantelgewichte|gewichtsplatte/gewichtsplatten';
const MAKES = 'guss|gusseisen|gusseisern|eisen|stahl|gummi|vollgummi|chrom|kunststoff|plastik|vinyl|zement|beton|wettkampf';
const STANGE = 'stange/stangen';

export const NOUNS: readonly Entry[] = spelt([
  ...nouns('plate', 'scheibe/scheiben|platte/platten|plate/plates|disc/discs|disk/disks', weak),
  ...nouns('plate', '/gewichte', { ...weak, sense: 'vague' }),
  ...nouns(
    'plate',
    `${compounds(`${MAKES}|hantel|langhantel|kurzhantel|olympia|standard|gewichts|gewicht|kraft|fitness|trainings|studio`, PLATE)}|${compounds(`${MAKES}|olympia|standard|langhantel|kurzhantel|trainings`, TRADE_PLATE)}`,
  ),
  ...nouns(
    'plate',
    'hantel scheibe/hantel scheiben|gewicht scheibe/gewicht scheiben|gewichte scheibe/gewichte scheiben|weight plate/weight plates|guss platte/guss platten|scheibengewicht/scheibengewichte|gripscheibe/gripscheiben|griffscheibe/griffscheiben|scheiben gewicht/scheiben gewichte|krafttrainingsgewicht/krafttrainingsgewichte|gewichtescheibe/gewichtescheiben|kilo scheibe/kilo scheiben|kiloscheibe/kiloscheiben|weights/-',
  ),
  ...nouns(
    'bumper',
    `bumper plate/bumper plates|bumperplate/bumperplates|bumper platte/bumper platten|bumper scheibe/bumper scheiben|bumper gewicht/bumper gewichte|bumper disc/bumper discs|training plate/training plates|${compounds('bumper', PLATE)}|${compounds('bumper', TRADE_PLATE)}`,
  ),
  ...nouns('bumper', '/bumperset|/bumper set|/bumper plate set|/bumper plates set|/bumpersatz', { sense: 'set' }),
  ...nouns(
    'plate',
    '/scheibenset|/hantelscheibenset|/hantelscheiben set|/scheibensatz|/scheiben set|/gewichtsscheiben set|/hantelscheiben satz|/gewichtscheiben set',
    { sense: 'set' },
  ),
  ...nouns('bumper', 'bumper/bumpers', weak),
  ...nouns(
    'micro',
    `mikroscheibe/mikroscheiben|mikro scheibe/mikro scheiben|microscheibe/microscheiben|mikrogewicht/mikrogewichte|mikro gewicht/mikro gewichte|microgewicht/microgewichte|micro plate/micro plates|fractional plate/fractional plates|change plate/change plates|kleinstscheibe/kleinstscheiben|mikro hantelscheibe/mikro hantelscheiben|mikrohantelscheibe/mikrohantelscheiben|microplate/microplates`,
  ),
  ...nouns(
    'bar',
    `langhantel/langhanteln|lang hantel/lang hanteln|barbell/barbells|olympia langhantel/olympia langhanteln|olympiahantel/olympiahanteln|powerbar/powerbars|power bar/power bars|olympic bar/olympic bars|olympia bar/olympia bars|multi purpose bar/multi purpose bars|deadlift bar/deadlift bars|squat bar/squat bars|weightlifting bar/-|langhantel stange/langhantel stangen|hantel stange/hantel stangen|hantel stange lang/-|langhantelstange komplett/-|kdk stange/kdk stangen|bankdrück stange/bankdrück stangen|training bar/-|technik stange/technik stangen|gewichtheber stange/-|${compounds('langhantel|hantel|olympia|olympialanghantel|olympiahantel|lang|gewichtheber|gewichts|gewichte|powerlifting|kreuzhebe|trainings|technik|damen|herren|frauen|männer|bankdrück|wettkampf|kraftdreikampf|stahlhantel|standard|langhantelstahl|langhanteltrainings', STANGE)}|${compounds('damen|herren|trainings|wettkampf|frauen|männer|olympia|standard', 'langhantel/langhanteln')}`,
  ),
  ...nouns('bar', 'stange/stangen', weak),
  ...nouns(
    'curl-bar',
    `sz stange/sz stangen|sz hantel/sz hanteln|sz hantelstange/sz hantelstangen|sz langhantel/sz langhanteln|sz langhantelstange/-|sz bar/sz bars|sz curlstange/sz curlstangen|sz curl stange/-|sz curl bar/-|sz curlhantel/-|ez bar/ez bars|ez stange/ez stangen|ez curl bar/-|curl bar/curl bars|curl stange/curl stangen|bizeps stange/-|bizepsbar/-|s z stange/-|s z hantelstange/-|w stange/-|${compounds('sz|ez|curl|bizeps|super-curl|bizepscurl', STANGE)}|szhantel/szhanteln|szhantelstange/-|curlhantel/curlhanteln`,
  ),
  ...nouns('curl-bar', 'sz/-', weak),
  ...nouns(
    'hex-bar',
    `hex bar/hex bars|hexbar/hexbars|trap bar/trap bars|trapbar/trapbars|hex stange/hex stangen|trap stange/trap stangen|hex trap bar/-|trap hex bar/-|hexagon stange/-|hexagonalstange/-|sechskantstange/-|rautenstange/-|${compounds('hex|hexagon|trap|shrug|trapez', STANGE)}`,
  ),
  ...nouns('hex-bar', 'hex/-', weak),
  ...nouns(
    'dumbbell',
    `kurzhantel hex/kurzhanteln hex|hantel hex/hanteln hex|kurzhantel hexagon/kurzhanteln hexagon|dumbbell hex/dumbbells hex|kurzhantel/kurzhanteln|kurz hantel/kurz hanteln|dumbbell/dumbbells|dumbell/dumbells|hexhantel/hexhanteln|hex hantel/hex hanteln|hex kurzhantel/hex kurzhanteln|hex dumbbell/hex dumbbells|${compounds('kompakt|rund|sechskant|gymnastik|chrom|gummi|vinyl|neopren|verstell|studio|gewichts|handhantel|aerobic|fitness|hexagon|eisen|guss|stahl', 'hantel/hanteln|kurzhantel/kurzhanteln')}|handgewicht/handgewichte`,
  ),
  ...nouns(
    'dumbbell',
    '/kurzhantelset|/kurzhantel set|/kurzhantelsets|/kurzhantelsatz|/dumbbell set|/kurzhanteln set|/hexhantel set',
    { sense: 'set' },
  ),
  ...nouns('dumbbell', 'hantel/hanteln', { ...weak, sense: 'loosely' }),
  ...nouns(
    'kettlebell',
    'kettlebell/kettlebells|kettle bell/kettle bells|kugelhantel/kugelhanteln|rundgewicht/rundgewichte|kettleball/kettleballs|girja/-',
  ),
  ...nouns('kettlebell', '/kettlebell set|/kettlebellset|/kettlebells set', { sense: 'set' }),
  ...nouns(
    'rack',
    'power rack/power racks|powerrack/powerracks|power cage/power cages|powercage/-|squat rack/squat racks|squatrack/squatracks|half rack/half racks|halfrack/halfracks|full rack/full racks|kniebeugenrack/-|kniebeugen rack/-|kniebeugerack/-|kniebeuge rack/-|kraftkäfig/kraftkäfige|wandrack/wandracks|wand rack/-|klapprack/klappracks|langhantelrack/langhantelracks|langhantel rack/-|hantel rack/-|bankdrückrack/-|kraftrack/-|multi rack/-|multirack/-|kniebeugenkäfig/-|squat cage/-|trainingsrack/-|fitness rack/-|fitnessrack/-|kniebeugengestell/-|folding rack/-',
  ),
  ...nouns('rack', 'rack/racks|käfig/käfige', weak),
  ...nouns(
    'stands',
    'kniebeugenständer/-|kniebeugeständer/-|kniebeugen ständer/-|kniebeuge ständer/-|langhantelständer/-|langhantel ständer/-|squatständer/-|squat ständer/-|squat stand/squat stands|hantelablageständer/-|bankdrückständer/-|stützständer/-|hantelstützen/-|kniebeugenstützen/-',
  ),
  ...nouns(
    'bench',
    `${compounds('hantel|flach|schräg|trainings|drück|bankdrück|kraft|gewichts|gewichte|fitness|negativ|multifunktions|langhantel|flachschräg|bankpress|krafttrainings|universal|kurzhantel|wettkampf|heim|multi', 'bank/bänke')}|hantel bank/-|drück bank/-|flach bank/-|schräg bank/-|bankdrück bank/-|bankdrücken bank/-|weight bench/-|trainings bank/-|flat bench/-|incline bench/-`,
  ),
  ...nouns('bench', 'bank/bänke|bench/-', weak),
  ...nouns(
    'collars',
    `${compounds('feder|stern|schraub|hantel|langhantel|kurzhantel|schnell|clip|spann|stangen|hantelstangen|klemm|gewinde|scheiben|sicherheits|olympia|klick|hebel|dreh', 'verschluss/verschlüsse')}|${compounds('hantel|feder|langhantel|olympia|schnell', 'klemme/klemmen|klammer/klammern|clip/clips')}|verschluss/verschlüsse|stellring/stellringe|collar/collars|hantel verschluss/hantel verschlüsse|spinlock/spinlocks|sternmutter/sternmuttern|sternschraube/sternschrauben|olympia verschluss/olympia verschlüsse|feststeller/-|schraubmutter/schraubmuttern|hantelmutter/hantelmuttern|scheibensicherung/scheibensicherungen`,
  ),
  ...nouns('collars', 'klemme/klemmen|clip/clips|klammer/klammern', weak),
  ...nouns(
    'storage',
    'scheibenständer/-|hantelbaum/hantelbäume|hantelscheibenständer/-|gewichtsständer/-|gewichteständer/-|hantelständer/-|kurzhantelständer/-|hantelablage/hantelablagen|langhantelablage/-|hantelregal/hantelregale|kurzhantelregal/-|scheibenbaum/-|scheibenhalter/-|scheibenhalterung/-|scheibenablage/-|hantelhalter/-|hantelhalterung/-|langhantelhalter/-|langhantelhalterung/-|gewichtebaum/-|gewichtsbaum/-|hantelrack/-|kurzhantelrack/-|scheibenrack/-|hantelturm/-|gewichtehalter/-|gewichtsablage/-|gewichteablage/-|hantelscheibenhalter/-|hantelscheiben ständer/-|hantel ständer/-|gewichte ständer/-|ständer für hantelscheiben/-|ständer für die hantelscheiben/-|ständer für scheiben/-|ständer für die scheiben/-|ständer für gewichte/-|ständer für die gewichte/-|ablage für gewichte/-|ablage für hantelscheiben/-|ablage für scheiben/-|scheiben ständer/-|bumper ständer/-|bumperständer/-|plate tree/-|scheibenwagen/-|hantelscheibenbaum/-|hantelwagen/-|aufbewahrungsständer/-|kettlebellständer/-|kettlebell rack/-|stangenhalter/-|stangenständer/-|langhantel halter/-|langhantelwandhalter/-',
  ),
]);
