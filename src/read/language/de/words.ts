/** German words around the nouns: counts, units, money, makes. Numbers in words are in numbers.ts. */
import type { Entry } from '../../text/terms.ts';
import { each } from '../phrases.ts';
import { COUNT_WORDS } from './numbers.ts';
import { adjectives, spelt } from './spelling.ts';

export const COUNTS: readonly Entry[] = spelt([
  ...COUNT_WORDS,
  ['beide|beiden|beider', { code: 'd', value: 2 }],
  ['einzeln|einzelne|einzelnen|einzelner|nur eine|nur ein|nur einer|einmal', { code: 'd', value: 1, sense: 'single' }],
  // "ein Paar" is two, "ein paar" some.
  ['ein paar|nen paar|n paar|noch paar', { code: 'p', lower: 'z' }],
  ['paar|paare|paaren|paarweise|pärchen|doppelpack|pair|pairs', { code: 'p' }],
  [
    'pro paar|je paar|das paar|paarpreis|preis pro paar|preis je paar|preis fürs paar|preis für das paar|paar jeweils',
    { code: 'p', sense: 'per' },
  ],
  ['set|sets|satz|sätze|garnitur|komplettset', { code: 't' }],
  [
    'hantelset|hantel set|hantelsets|langhantelset|langhantel set|langhantelsatz|hantelsatz|langhantelsets|langhantel komplettset|hantel komplettset|langhantelkomplettset|gewichteset|gewichtsset|gewichte set|gewichtesatz|hantel sets|krafttrainingsset|krafttraining set|fitness set',
    { code: 't', sense: 'set' },
  ],
  [
    'je|jeweils|à|pro stück|je stück|das stück|pro stk|je stk|pro stck|je stck|pro st|je st|/ stück|/ stk|/ stck|/ st|pro scheibe|je scheibe|pro platte|je platte|pro hantel|je hantel|pro gewicht|pro teil|je teil|pro bumper|das teil|pro einheit|/ scheibe|pro exemplar|die scheibe|jede scheibe',
    { code: 'e' },
  ],
  [
    'stückpreis|stückpreise|einzelpreis|einzelpreise|preis pro stück|preis je stück|preis pro scheibe|preis je scheibe',
    { code: 'e', sense: 'told' },
  ],
  [
    'von jedem|von jeder|von jeder sorte|von jeder größe|von jedem gewicht|je sorte|je größe|pro sorte|je gewicht|pro größe',
    { code: 'E' },
  ],
  ['von|von den|von diesen|davon', { code: 'o', sense: 'place' }],
  ['ein|eine|einen|einem|einer|eines|ne|nen|n', { code: 'a', sense: 'one' }],
  [
    'der|die|das|den|dem|des|diese|dieser|dieses|diesen|mein|meine|meinen|meiner|meinem|meines|unser|unsere|unseren|unserer|seine|ihre',
    { code: 'a' },
  ],
  ['und|u|sowie|plus|samt|nebst|dazu|dazu noch|außerdem|zusätzlich|zzgl|zuzüglich|und noch|und dazu|plus noch', { code: 'c' }],
  ['mit', { code: 'c', sense: 'with' }],
  ['zu je|mit je|von je|mit jeweils|zu jeweils|von jeweils|à je|je à|zu', { code: 'z', sense: 'weighs' }],
  ['inkl|inklusive|incl|inclusive|einschließlich|schon inklusive|bereits inkl', { code: 'c', sense: 'included' }],
  [
    'habe|hab|ich habe|habe ich|hab ich|haben|gibt es|es gibt|es sind|sind es|vorhanden|vorhanden sind|es handelt sich um|handelt sich um',
    { code: '%' },
  ],
  ['davon vorhanden|stück vorhanden|stück verfügbar|verfügbar|stück da|auf lager|übrig', { code: '&' }],
  ['stück|stücke|stücken|stk|stck|st|anzahl|menge|exemplare|stücker|stückzahl|teile', { code: 'j' }],
  [
    'pro seite|je seite|auf jeder seite|jede seite|auf jede seite|jeder seite|beidseitig|auf beiden seiten|an jeder seite|links und rechts|rechts und links|pro hantelseite|je hantelseite|auf jeder hantelseite',
    { code: 'g' },
  ],
  ['x|mal', { code: 'x' }],
  ['er|ers|ern', { code: 's', length: 'mm' }],
]);

export const UNITS: readonly Entry[] = spelt([
  ['lb|lbs|pfund|pound|pounds|pfd|amerikanische pfund', { code: 'u', unit: 'lb' }],
  ['kg|kgs|kilo|kilos|kilogramm|kilogram|kilogramms|kilogrammes|kl kg', { code: 'u', unit: 'kg' }],
  ['mm|millimeter|milimeter|millimetern', { code: 'f', length: 'mm' }],
  ['cm|zentimeter|centimeter|zentimetern', { code: 'f', length: 'cm' }],
  ['m|meter|metern|mtr', { code: 'f', length: 'm' }],
  ['zoll|inch', { code: 'f', length: 'in' }],
  ['ft|fuß', { code: 'f', length: 'ft' }],
]);

export const MONEY: readonly Entry[] = [
  ['eur|euro|euros|euronen|eus|teuro|teuros|teuronen|öcken|tacken|kröten|taler', { code: '$', currency: 'EUR' }],
  ['chf|sfr|fr|franken|fränkli|schweizer franken|stutz', { code: '$', currency: 'CHF' }],
  ['usd|dollar|us dollar', { code: '$', currency: 'USD' }],
  ['cent|cents|rappen', { code: '¢' }],
];

const made = (list: string, what: Omit<Entry[1], 'code'>): Entry => [list, { code: 'm', ...what }];

export const MODIFIERS: readonly Entry[] = spelt([
  made(
    `${adjectives('olympisch')}|olympia|olympic|oly|olympiamaß|olympianorm|olympiastandard|olympia norm|olympia maß|olympia standard|olympiagröße|olympia größe|olympische norm|internationaler norm|internationale norm`,
    { fits: '50mm' },
  ),
  // Holes of 50 and 30 mm go by these names; plates of 50 and 30 kg are hardly made (common practice, no source).
  made('50 er|51 er', { fits: '50mm', length: 'mm' }),
  made('30 er|31 er', { fits: '25mm', length: 'mm' }),
  made('standard|standardmaß|standardgröße|standard maß|standard größe|normalmaß', { fits: '25mm', sense: 'standard' }),
  made(`guss|gusseisen|eisen|hammerschlag|${adjectives('gusseisern|eisern')}|grauguss`, { material: 'iron' }),
  made(
    `stahl|edelstahl|metall|vollstahl|massivstahl|${adjectives('stählern|metallen')}|stainless steel|steel|federstahl|rostfreier stahl|rostfreiem stahl|rostfreien stahl`,
    { material: 'steel' },
  ),
  made(`chrom|chromstahl|hartverchromt|${adjectives('verchromt')}|hartchrom`, { material: 'chrome' }),
  made(
    `${adjectives('gummiert|gummibeschichtet|gummiummantelt|gummi beschichtet|gummi ummantelt')}|gummierung|gummimantel|gummiüberzug|gummibeschichtung|gummiummantelung|mit gummi überzogen|mit gummi ummantelt|mit gummi beschichtet`,
    { material: 'rubber', grade: 'rubber-coated' },
  ),
  made('gummi|vollgummi|hartgummi|kautschuk|naturkautschuk|rubber|recyclinggummi', { material: 'rubber' }),
  made('urethan|polyurethan|pu|urethane|polyurethane', { material: 'urethane' }),
  made(
    `kunststoff|plastik|plaste|vinyl|neopren|${adjectives('kunststoffummantelt|kunststoffbeschichtet')}|kunststoffmantel|kunststoffhülle|plastikhülle|plastikmantel|pvc`,
    { material: 'vinyl' },
  ),
  made(
    `zement|beton|sand|${adjectives('sandgefüllt|zementgefüllt|betongefüllt')}|sandfüllung|zementfüllung|betonfüllung|betonkern|zementkern|mit sand gefüllt|mit zement gefüllt|mit beton gefüllt|mit beton ausgegossen`,
    { material: 'cement' },
  ),
  made('holz|multiplex|sperrholz|massivholz', { material: 'wood' }),
  made(`abgedreht|überdreht|präzisionsgedreht|${adjectives('gefräst')}`, { grade: 'machined' }),
  made(`${adjectives('kalibriert')}|wettkampf|competition|kdk`, { grade: 'calibrated' }),
  made(
    `${adjectives('neu|nagelneu|brandneu|originalverpackt|original verpackt|unbenutzt|ungebraucht|ungeöffnet')}|ovp|in ovp|neu in ovp|neu ovp|neu und ovp|nie benutzt|noch nie benutzt|nicht benutzt|nie verwendet|nie genutzt|unbenutzter zustand|noch verpackt|noch eingepackt|noch original verpackt|fabrikneu|neuware|zustand neu`,
    { condition: 'new' },
  ),
  made(
    `wie neu|fast neu|annähernd neu|nahezu neu|beinahe neu|so gut wie neu|quasi neu|praktisch neu|${adjectives('neuwertig|neuwertigst')}|kaum benutzt|kaum gebraucht|kaum genutzt|kaum verwendet|wenig benutzt|wenig genutzt|wenig gebraucht|selten benutzt|selten genutzt|nur wenig benutzt|sehr guter zustand|sehr gutem zustand|sehr guten zustand|sehr gut erhalten|sehr gut|top zustand|topzustand|tip top|tiptop|tipp topp|bester zustand|bestem zustand|besten zustand|einwandfrei|einwandfreier zustand|einwandfreiem zustand|tadellos|tadellosem zustand|tadelloser zustand|makellos|makellosem zustand|1 a zustand|neuwertiger zustand|neuwertigem zustand|zustand sehr gut|zustand neuwertig|zustand wie neu|zustand top|perfekter zustand|perfektem zustand|ausgezeichneter zustand|ausgezeichnetem zustand|hervorragendem zustand|hervorragender zustand|${each('einmal|zweimal|dreimal|nur einmal|nur zweimal|nur dreimal|paar mal', 'benutzt|genutzt|gebraucht|verwendet')}|super zustand|mint`,
    { condition: 'like-new' },
  ),
  made(
    `${adjectives('zusammengewürfelt|gemischt')}|bunt gemischt|${each('verschiedene|verschiedener|verschiedenen|unterschiedliche|unterschiedlicher|unterschiedlichen', 'hersteller|herstellern|marken')}|passen nicht zusammen|passen optisch nicht|nicht zusammenpassend`,
    {
      condition: 'mismatched',
    },
  ),
  made(
    `${adjectives(
      'schwarz|mattschwarz|rot|blau|gelb|grün|grau|weiß|silbern|golden|orange|bunt|farbig|alt|uralt|antik|schwer|gut|schön|toll|groß|klein|lang|kurz|dick|dünn|flach|gebraucht|stabil|massiv|robust|rund|sechseckig|einzeln|passend|weiter|ander|restlich|original|professionell|hochwertig|verstellbar|klappbar|höhenverstellbar|richtig|echt|normal|leicht|lose|klassisch|komplett|solid|abnehmbar|lackiert|pulverbeschichtet|beschichtet|zusätzlich',
    )
      .split('|')
      .filter(
        (word) =>
          ![
            'einzeln',
            'einzelnen',
            'einzelne',
            'einzelner',
            'komplett',
            'zusätzlich',
            'leicht',
            'lang',
            'lange',
            'dick',
            'dicke',
            'rund',
          ].includes(word),
      )
      .join(
        '|',
      )}|lila|rosa|silber|gold|dunkelgrau|vintage|retro|profi|studio|studioqualität|heavy|premium|mit griffen|mit griff|tri grip|3 griff|4 griff|grip|sechskant|hexagon|hexagonal|viele|ex|diverse|verschiedene|verschiedenen|unterschiedliche`,
    {},
  ),
  made('einige|manche|mehrere|etliche', { sense: 'some' }),
]);
