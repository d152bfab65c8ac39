/** German words of condition. `denied` is what the word means behind "kein" or "nicht"; without it the denied word says nothing. */
import type { Condition } from '../../../listing/reading.ts';
import type { Entry, Term } from '../../text/terms.ts';
import { each } from '../phrases.ts';
import { adjectives, spelt } from './spelling.ts';

const condition = (words: string, value: Condition, denied?: Condition, sense?: string): Entry => {
  const term: Term = { code: 'C', condition: value, ...(denied ? { denied } : {}), ...(sense ? { sense } : {}) };
  return [words, term];
};

/** Places, said with verbs of keeping ("stand in der Garage", "in der Garage gestanden"). */
const place = (words: string, value: Condition, more: Partial<Term> = {}): Entry => [
  words,
  { code: 'z', condition: value, ...more },
];

const RUST = 'rost|flugrost|rostansatz|rostflecken|rostspuren|roststellen|oberflächenrost|rostflecke|rostpunkte';
const RUSTY = adjectives('rostig|angerostet|verrostet|korrodiert');

export const CONDITIONS: readonly Entry[] = spelt([
  ['polster|polsterung|sitzpolster|rückenpolster|sitzfläche|rückenlehne|kunstleder|bezug|sitz', { code: 'z', part: 'bench' }],
  ['ständer|gestell|rahmen|streben', { code: 'z', part: 'rack' }],
  [
    'lag|lagen|lagerte|lagerten|gelagert|lagern|gelegen|stand|standen|gestanden|aufbewahrt|untergebracht|verstaut|geblieben',
    { code: 'z', sense: 'stays' },
  ],
  place(
    'keller|hobbykeller|kellerraum|garage|wohnung|haus|dachboden|speicher|abstellraum|abstellkammer|hobbyraum|waschküche|werkstatt|scheune|gästezimmer|kinderzimmer|lagerraum|wintergarten',
    'stored-indoors',
  ),
  place('garten|hof|balkon|terrasse|vordach|regen', 'stored-outdoors', { denied: 'stored-indoors' }),
  // What is new there are no goods.
  [each('neue|neuen|neuer|neues', 'wohnung|haus|zuhause|job|platz|besitzer|bleibe|hobby|baby|auto|jahr'), { code: 'z' }],
  ['die lange|die längere|die lange stange', { code: 'z', part: 'bar' }],
  // Of the seller, and of no goods.
  [
    each(
      'mein|meine|meinem|meinen|meiner|sein|seine|seinem|ihr|ihre|unser',
      'rücken|schulter|schultern|knie|knien|hüfte|handgelenk|ellenbogen|arm|bein|fuß|hand|kreuz',
    ),
    { code: 'z', sense: 'body' },
  ],
  [
    'bandscheibe|bandscheiben|bandscheibenvorfall|kreuzband|rücken kaputt|knie kaputt|schulter kaputt',
    { code: 'z', sense: 'body' },
  ],
  // Things of their own: what is said of them is said of nothing else.
  ['wagen|auto|rad|tisch|schrank|regal|fenster|zaun|schubkarre', { code: 'z', sense: 'thing apart' }],
  condition(
    `flugrost|rostansatz|rostansätze|rostflecken|rostflecke|rostspuren|rostspur|roststellen|roststelle|rostpunkte|rostpünktchen|oberflächenrost|anflug von rost|spuren von rost|stellen mit rost|patina|${adjectives('angerostet')}|rost ansatz|ansatz von rost|${each('leichter|leichten|leichte|leichtem|leicht|etwas|ein wenig|ein bisschen|bisschen|bissl|wenig|kaum|minimal|minimaler|minimale|minimalen|geringer|geringe|geringfügig|oberflächlicher|oberflächlich|oberflächlichen|kleine|kleiner|kleinere|einzelne|vereinzelt|vereinzelte|stellenweise|teilweise|teils|paar', RUST)}|${each('leicht|etwas|ein wenig|ein bisschen|bisschen|minimal|oberflächlich|stellenweise|kaum', RUSTY)}`,
    'rust-light',
    'no-rust',
  ),
  condition(
    `rost|rostbefall|rosten|rostet|korrosion|${adjectives('rostig|verrostet|korrodiert')}|gerostet|verrosten`,
    'rust',
    'no-rust',
  ),
  condition(
    `${each('starker|starken|stark|viel|massiver|massiv|tiefer|tiefen|dicker|schwerer|heftig|schlimm|sehr|ordentlich|richtig|ziemlich|übel|total|komplett|extrem|völlig|durch und durch', `rost|${RUSTY}`)}|lochfraß|rostnarben|rostfraß|durchgerostet|rostet durch|zugerostet|vergammelt|blättert der rost|verrostet stark`,
    'rust-heavy',
    'no-rust',
  ),
  condition(
    'rostfrei|rost frei|rostfreie|rostfreier|rostfreien|frei von rost|entrostet|nicht rostig|keinen rost|kein rost|keinerlei rost|ohne rost|rostet nicht|rosten nicht|null rost|keine rostflecken|keine roststellen|keine rostspuren|nicht verrostet|nicht rostend',
    'no-rust',
  ),
  condition(
    `${adjectives('verbogen|gebogen|krumm|verzogen|durchgebogen|durchgehangen')}|knick|dreht sich von selbst|dreht sich von allein|dreht sich von alleine|dreht sich immer in die gleiche lage|dreht sich immer in dieselbe lage|rollt immer auf die gleiche seite|rollt immer auf dieselbe seite|eiert|eiern|schlag drin|hat einen schlag|hat schlag|leicht verbogen|leicht krumm|minimal krumm|minimal verbogen|etwas krumm|etwas verbogen|leicht gebogen|minimal gebogen|leichte biegung|leichte krümmung|nicht ganz gerade|nicht mehr ganz gerade|nicht gerade|nicht mehr gerade|hängt durch|läuft nicht rund|unwucht|verkrümmt|banane`,
    'bent',
    'straight',
  ),
  condition(
    'gerade|kerzengerade|schnurgerade|absolut gerade|ganz gerade|ist gerade|perfekt gerade|noch gerade|läuft rund|rundlauf|läuft gerade|vollkommen gerade|schön gerade|topgerade|pfeilgerade|100 gerade|nicht krumm|nicht verbogen|eiert nicht|nichts verbogen|nichts krumm|hängt nicht durch',
    'straight',
    'bent',
  ),
  // "gerade" is "just now" as well.
  [
    'gerade erst|gerade mal|gerade noch|gerade nicht|gerade umgezogen|gerade für|gerade so|gerade eben|ich gerade|gerade in|gerade im|gerade keine|gerade kein|gerade dabei|gerade bei',
    { code: 'z' },
  ],
  condition(
    'dreht nicht|dreht sich nicht|dreht nicht mehr|dreht sich nicht mehr|drehen nicht|drehen sich nicht|drehen nicht mehr|drehen sich nicht mehr|dreht schwer|drehen schwer|dreht sich schwer|drehen sich schwer|dreht sich kaum|drehen sich kaum|festgefressen|festgerostet|schwergängig|hülse fest|hülsen fest|hülse sitzt fest|hülsen sitzen fest|sitzen fest|sitzt fest|klemmt|blockiert|hakt|dreht nur schwer|drehen nur schwer|drehen nicht richtig|dreht nicht richtig|fest gerostet|läuft schwer',
    'seized-sleeves',
    'spins',
  ),
  condition(
    'dreht|dreht sich|drehen|drehen sich|dreht sauber|drehen sauber|dreht frei|drehen frei|dreht sich frei|drehen sich frei|dreht gut|drehen gut|dreht leicht|drehen leicht|dreht sich leicht|drehen sich leicht|dreht einwandfrei|drehen einwandfrei|drehend|drehbar|drehbare|drehbaren|drehende|drehenden|leichtgängig|leichtgängige|läuft leicht|laufen leicht|dreht super|drehen super|drehen beide|dreht flüssig|drehen flüssig|kugelgelagert|kugelgelagerte|kugelgelagerten|nadelgelagert|nadelgelagerte|gleitgelagert|gelagert drehend|dreht wie neu',
    'spins',
    'seized-sleeves',
  ),
  condition(
    `${adjectives('gesprungen|gerissen|gebrochen|zerbrochen|kaputt|angebrochen')}|riss|risse|haarriss|haarrisse|sprung|bruch|durchgebrochen|abgebrochen|abgebrochene|defekt|defekte|defekten|bruchstelle|ausgebrochen|stück fehlt|ecke abgebrochen|einriss|ein riss|hat einen riss|hat nen riss|hat einen sprung|leichter riss|kleiner riss|risse im gummi|rissig|rissige`,
    'cracked',
  ),
  condition(
    'innenring lose|ring lose|ring locker|innenring locker|buchse lose|buchse locker|nabe lose|nabe locker|buchse herausgefallen|metallring lose|metallring locker|stahlring lose|stahlring locker|einsatz lose|einsatz locker|loser innenring|lose buchse',
    'split-hub',
  ),
  condition(
    `${adjectives('vermackt')}|abgeplatzt|abgeplatzte|abgeplatzter|abplatzer|abplatzung|abplatzungen|lackabplatzer|lackabplatzungen|lackschaden|macken|macke|kratzer|zerkratzt|verkratzt|kerben|schrammen|gebrauchsspuren am lack|farbe blättert|lack blättert|lack blättert ab|farbe blättert ab|lack ab|farbe ab|angeschlagen|angestoßen|kratzspuren|lack abgeplatzt|farbe abgeplatzt|ausgefranst|etwas abgeplatzt|dellen|delle`,
    'chipped',
  ),
  condition(
    'fehlt|fehlen|fehlend|fehlende|fehlenden|fehlt leider|unvollständig|nicht komplett|nicht vollständig|verloren gegangen|schraube fehlt|schrauben fehlen|ohne schrauben',
    'missing-parts',
  ),
  condition(
    `neu lackiert|neu lackierte|neulackiert|neu gestrichen|neu gespritzt|neu angemalt|frisch lackiert|frisch gestrichen|${adjectives('überlackiert|gestrichen|angemalt|überstrichen|nachlackiert|umlackiert')}|neu gepulvert|neu pulverbeschichtet|selbst lackiert|restauriert|restaurierte|aufgearbeitet|aufbereitet|aufbereitete|überholt|mit lack besprüht|angesprüht|neuer lack|neuer anstrich|neu besprüht`,
    'repainted',
  ),
  condition(
    'selbst gebaut|selbst gebaute|selbst gebauter|selbstgebaut|selbstgebaute|selbstgebauter|selbstgebautes|selber gebaut|eigenbau|selbstbau|selbst gemacht|selbstgemacht|selbst gegossen|selbstgegossen|selber gegossen|selber gemacht|handgefertigt|vom schlosser|diy|selbst konstruiert|hausgemacht|im eigenbau',
    'home-made',
  ),
  condition('selbstgeschweißt|selbstgeschweißte|selbstgeschweißter', 'home-made', undefined, 'welded-too'),
  condition(
    'draußen|im freien|draußen gelagert|im freien gelagert|draußen gestanden|draußen gelegen|im garten|im hof|auf dem balkon|auf der terrasse|unter dem carport|im carport|carport|unterm carport|unter dem vordach|im regen|der witterung ausgesetzt|verwittert|witterungsspuren|im schuppen|im gartenhaus|outdoor|lag draußen|lagen draußen|standen draußen|stand draußen|außen gelagert|überdacht gelagert|unter einer plane|unter plane|unter der plane',
    'stored-outdoors',
    'stored-indoors',
  ),
  condition(
    `in der scheune|trocken gelagert|trocken gelagerte|drinnen|innen gelagert|trocken gestanden|trocken gelegen|immer trocken|trocken und sauber gelagert|trocken aufbewahrt|im haus gelagert|im keller gelagert|in der garage gelagert|im trockenen|in trockenem keller|im beheizten raum|in der wohnung gelagert|indoor|im keller gestanden|stand im keller|standen im keller|immer im keller|im hobbyraum|nur im keller|immer im haus|nur innen`,
    'stored-indoors',
  ),
  condition('wackelig|wackelige|wackeliges|wacklig|wackelt|wackeln|instabil|kippelig|kippelt', 'wobbly'),
  [
    'wackelt nicht|wackeln nicht|wackelt gar nicht|wackelt kein bisschen|wackelfrei|kippelt nicht|reißt nicht|bricht nicht|klemmt nicht|hakt nicht|fehlt nichts|es fehlt nichts|nichts fehlt|nichts kaputt|nichts defekt|nichts gebrochen|blättert nicht',
    { code: 'z' },
  ],
  condition(
    `${adjectives('geschweißt|verschweißt')}|schweißnaht|schweißnähte|schweißkonstruktion|zusammengeschweißt|fest verschweißt|schweißarbeit`,
    'welded',
  ),
  condition(`${adjectives('verschraubt|geschraubt')}|zum schrauben|schraubbar|zusammengeschraubt`, 'bolted'),
  condition(
    `${adjectives('eingerissen|zerrissen|aufgerissen')}|riss im polster|risse im polster|riss im bezug|risse im bezug|riss im kunstleder|risse im kunstleder|polster gerissen|bezug gerissen|polster rissig|polster kaputt|polster eingerissen|bezug eingerissen|loch im polster|polster beschädigt|bezug beschädigt|polster defekt|panzertape|aufgeplatzt|polster aufgeplatzt|polster abgenutzt|riss im leder`,
    'torn',
  ),
  ['ohne risse|keine risse|keinerlei risse|keine risse im polster|ohne risse im polster|rissfrei|kein riss', { code: 'z' }],
  condition(
    'einzelstück|ohne gegenstück|ohne partner|ohne pendant|nur eine davon|ungerade anzahl|einzelne scheibe|einzelscheibe|nur noch einzeln|kein paar|zweite ist weg|zweite fehlt|die zweite fehlt',
    'odd',
  ),
]);
