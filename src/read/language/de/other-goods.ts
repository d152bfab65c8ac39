/** German names of gym goods that are not weighed iron, and of other trades' goods, which speak against an ad of ours. */
import type { Entry, Term } from '../../text/terms.ts';
import { compounds, spelt } from './spelling.ts';

const other = (phrases: string, weak: boolean, more: Partial<Term> = {}): Entry[] =>
  phrases.split('|').map((phrase): Entry => [phrase, { code: 'k', kind: 'other', ...(weak ? { weak } : {}), ...more }]);

const foreign = (phrases: string, sense: 'foreign' | 'very-foreign' | 'household'): Entry => [phrases, { code: 'z', sense }];

export const OTHER_GOODS: readonly Entry[] = spelt([
  // Made for lifting and for nothing else: an ad of one is of this trade.
  ...other(
    'heberplattform|gewichtheberplattform|gewichtheber plattform|hantelplattform|kreuzhebeplattform|kreuzheben plattform|deadlift plattform|lifting platform|deadlift platform|heberpodest',
    false,
    { sense: 'of-the-trade' },
  ),
  ...other(
    `${compounds('kurzhantel', 'stange|stangen|griff|griffe')}|kurzhantel stange|kurzhantel stangen|kurzhantel griffe`,
    false,
    { sense: 'handle' },
  ),
  ...other(
    `trizepsstange|trizepsstangen|trizeps stange|trizepshantel|parallelstange|multigrip stange|multigripstange|football bar|safety squat bar|safety bar|ssb|squat bar safety|kambered bar|cambered bar|latzugstange|latstange|lat stange|latziehstange|klimmzugstange|klimmzugstangen|klimmzugstation|landmine|schulterpolster|nackenpolster|langhantelpolster|hantelpolster|stangenpolster|stangenpad`,
    false,
  ),
  ...other(
    'kraftstation|kraft station|multistation|multi station|fitnessstation|latzug|lat zug|latzugturm|latzugstation|kabelzug|kabelzugstation|kabelturm|seilzug|zugturm|beinpresse|beinstrecker|beinbeuger|beincurler|beincurl|beinteil|butterfly|curlpult|curl pult|bizepspult|bizepscurlpult|pult|multipresse|smith maschine|smithmaschine|bauchtrainer|bauchbank|situp bank|sit up bank|rückentrainer|rückenstrecker|hyperextension|roman chair|dipstation|dip station|dipbarren|dip barren|barren|dipständer|dipgürtel|laufband|crosstrainer|ergometer|heimtrainer|hometrainer|rudergerät|rudermaschine|indoor bike|indoorbike|stepper|boxhandschuhe|gymnastikball|plyobox|plyo box|sprungkasten|gewichthebergürtel|trainingsgürtel|kraftgürtel|zughilfen|widerstandsbänder|fitnessbänder|springseil|faszienrolle|yogamatte|gymnastikmatte|bodenmatte|bodenmatten|bodenschutzmatte|bodenschutzmatten|gummimatte|gummimatten|fallschutzmatte|fallschutzmatten|schutzmatte|schutzmatten|matte|matten|spiegel|turnringe|schlingentrainer|sicherheitsablage|sicherheitsablagen|ablage|ablagen|safeties|spotter|j cups|jcups|j hooks|podest|trainingshandschuhe|handschuhe|ab roller|bauchroller|liegestützgriffe|balance board|trampolin|vibrationsplatte|gewichtsschlitten|schlitten|tower|deadlift jack',
    true,
  ),
  ...other(
    'boxsack|sandsack|medizinball|medizinbälle|slamball|slam ball|slamballs|wallball|wallballs|gewichtsweste|gewichtsmanschetten|fußgewichte|handgelenkgewichte',
    true,
    { sense: 'heavy' },
  ),
  foreign(
    `${compounds('brems|front|windschutz|heck|seiten|fenster|glas|schleif|trenn|kupplungs|unterleg|ziel|milch|dicht|riemen|polier|dreh|wurf|radio', 'scheibe|scheiben')}|${compounds('koch|herd|tisch|arbeits|schall|gehweg|terrassen|stein|span|fest|grill|heiz|rüttel|gips|boden|schreibtisch|marmor|granit|glas|warmhalte|dämm|kegel', 'platte|platten')}|${compounds('gardinen|vorhang|dusch|kleider|angel|teleskop|zelt|besen|bohr|fahnen|treppen|absperr|boden|strom', 'stange|stangen')}|${compounds('auswucht|blei|tauch|wuchst|rad|anlegegewichte|uhren|waag|tara', 'gewicht|gewichte')}`
      .split('|')
      .filter((word, index, words) => words.indexOf(word) === index)
      .join('|'),
    'foreign',
  ),
  foreign(
    `${compounds('garten|park|eck|sitz|werk|hobel|küchen|esszimmer|truhen|holz|bier|dreh|daten|schlaf|kegel|reha|massage|ruhe|sonnen', 'bank|bänke')}|dachgepäckträger|dachträger|dachreling|lochkreis|vogelkäfig|hamsterkäfig|hasenkäfig|kaninchenkäfig|hundekäfig|nymphensittich|server rack|serverrack|19 zoll rack|netzwerkschrank|weinregal|schwerlastregal|fahrradständer|christbaumständer|notenständer|wäscheständer|autogewicht|felgen|reifen|radkappen|traktorgewicht|traktorgewichte|frontgewicht|frontgewichte|schleppergewichte|heckgewicht|golfschläger|angelrute|tauchausrüstung|taucherblei|bleigurt|briefwaage|balkenwaage|apothekerwaage|gusspfanne|bratpfanne|kochtopf|backofen|ofenplatte|kaminofen|herdring|schallplatten sammlung|vinyl lp|lps|single schallplatten|stoßstange|stoßstangen|kuchenform`,
    'foreign',
  ),
  foreign(
    'wanddeko|wanddekoration|wandbild|wandschild|blechschild|metallschild|holzschild|dekoration|schlüsselanhänger|türstopper',
    'foreign',
  ),
  foreign(
    'anhänger|fahrrad|motorrad|moped|waschmaschine|trockner|kühlschrank|fernseher|spielkonsole|kinderwagen|plattenspieler|verstärker|lautsprecher|sofa|couch|schlafsofa|kleiderschrank|kommode|esstisch',
    'household',
  ),
  foreign(
    'keine echte hantel|keine echte langhantel|keine echten gewichte|keine echten hanteln|hanteldeko|hantel deko|mitgliedschaft|probetraining|personal trainer|personal training|vertrag abzugeben|fitnessvertrag|studiovertrag|jahresvertrag|monatsbeitrag',
    'very-foreign',
  ),
]);
