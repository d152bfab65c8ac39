/** German words that tell what an ad is about and nothing else: of the gym, of equipment, and of any ad. What no dictionary knows tells of something else. */
import type { Entry } from '../../text/terms.ts';
import { adjectives, spelt } from './spelling.ts';

const topic = (sense: string, words: string): Entry => [words, { code: 'z', sense }];

export const TOPICS: readonly Entry[] = spelt([
  topic(
    'weights-set',
    'hantelset|hantel set|hantelsatz|langhantelset|langhantel set|langhantelsatz|kurzhantelset|gewichteset|gewichtsset|hantelsets|scheibenset|hantelscheibenset',
  ),
  topic(
    'gym',
    'krafttraining|kraftsport|kraftraum|kraftgeräte|kraftgerät|fitness|fitnessgerät|fitnessgeräte|fitnessraum|fitnessstudio|homegym|home gym|heimstudio|studioauflösung|gym|studio|training|trainiert|trainieren|trainiere|hanteltraining|powerlifting|kraftdreikampf|gewichtheben|bodybuilding|muskelaufbau|sportgeräte|sportgerät|sportraum|hantelbereich|homegymauflösung|klimmzüge|dips|bankdrücken|kniebeugen|kreuzheben|langhanteltraining',
  ),
  topic(
    'hint',
    'bohrung|loch|lochdurchmesser|innendurchmesser|gummiert|gusseisen|guss|verstellbar|höhenverstellbar|klappbar|rückenlehne|sitzfläche|polster|bezug|kunstleder|verschraubt|geschweißt|hülsen|hülse|rändelung|griffig|ablage|ablagen|sicherheitsablagen|sicherheitsablage|keller|garage|kilo|verschlüsse|gewindestange|belastbar|belastbarkeit',
  ),
  topic('swap', 'tausch|tausche|tauschen|tausch gegen|tausche gegen|im tausch'),
  topic(
    'plain',
    `aber|aktuell|alle|allem|allen|aller|alles|als|also|anbieten|andere|anderen|anders|anfrage|anfragen|angaben|anrufen|anschauen|ansehen|antworten|anzeige|anzeigen|auch|auflösung|aufgrund|auto|baujahr|beim|beiden|benutzt|benutzung|bereits|besichtigen|besichtigung|besser|besteht|bestehend|bezahlung|biete|bilder|bildern|bitte|bisher|bleibt|brauche|brauchen|braucht|dabei|dafür|damit|dank|danke|dann|daran|darauf|dass|davon|dazu|deshalb|doch|dort|dritten|durch|eben|eigentlich|einfach|einige|einigen|einmal|erhalten|erst|etwas|euch|euer|fahrt|falls|fehler|fotos|foto|fragen|frage|freue|freuen|freunde|funktioniert|ganze|ganzen|garantie|gebrauchsspuren|gebraucht|gehen|geht|gekauft|gerade|gern|gerne|gesamte|gesundheitlichen|gewährleistung|gibt|ging|größe|größen|gründen|gute|guten|guter|haben|habe|hallo|hatte|haus|haushalt|heute|hier|hinten|ihnen|ihre|immer|irgendwie|jahre|jahren|jeder|jederzeit|jemand|jetzt|käufer|kann|kaufen|keine|keinen|keller|kinder|kommen|kommt|können|könnt|könnte|länger|lange|lassen|laut|leider|letzten|liegen|liegt|macht|machen|mehr|mehrere|meine|meinen|meiner|melden|meldet|mindestens|mitnehmen|möglich|möglichkeit|müssen|muss|nach|nachricht|nachrichten|natürlich|nehmen|neben|nehme|nichtraucher|nichtraucherhaushalt|nichts|niemand|noch|normale|nummer|nutzen|nutze|nutzung|oben|oder|ohne|platz|platzgründen|platzmangel|platzmangels|privat|privatverkauf|problem|probleme|qualität|raum|rechnung|rücknahme|sachen|samstag|schnell|schon|sehen|sehr|sein|seine|seit|selber|selbst|selbstabholer|selbstabholung|siehe|sind|sofort|solange|sollte|sonntag|sonst|sowie|später|stand|steht|stehen|super|tage|teile|telefon|text|transport|tragen|treffen|trotzdem|typisch|über|überall|übergabe|überweisung|uhrzeit|umgebung|umtausch|umzug|umzugs|unten|unter|unterschiedlich|verfügung|vereinbarung|vereinbaren|verkauf|verkaufe|verkaufen|verkauft|verschiedene|verschiedenen|vielen|viele|vielleicht|voll|völlig|vollständig|vorbei|vorhanden|vorne|wäre|wegen|weil|weiter|weitere|welche|wenig|weniger|wenn|werden|werde|wieder|will|wird|wirklich|woche|wochen|wohnung|wollen|wurde|wurden|wünsche|würde|zeit|zeigen|ziemlich|zustand|zweck|zwecke|zwischen|abholen|abholer|abholung|abgeben|abgabe|abgegeben|abzugeben|abzuholen|abend|abends|angeboten|artikel|ausgeschlossen|beschreibung|dachboden|dinge|ehemalige|ehemaliger|ersten|erste|familie|frei|freitag|gelegen|gelagert|genutzt|gemacht|hilfe|hobby|interesse|bedarf|jahrelang|jugendliche|kleine|kurzfristig|lagen|lag|letzte|löse|marke|mann|meinem|mein|montag|nachbar|opa|papa|sohn|sohnes|tochter|vater|bruder|neuer|nutzer|person|persönlich|platz|privater|raus|reicht|restliche|richtig|runter|schade|schlechter|schreibt|schreiben|schwer|sauber|stark|stelle|termin|täglich|teil|tragehilfe|trennen|trenne|umständen|umgezogen|unbedingt|untergestellt|unverändert|versenden|vorher|wenige|wenigen|zahlung|zuletzt|zuschlagen|zusammenbauen|zusammengebaut|zerlegt|zerlegbar|aufgebaut|aufbauen|abbau|abgebaut|auseinander|anleitung|schrauben|schraube|${adjectives('schwarz|neu|alt|groß|klein|toll|schön|stabil|massiv|robust|hochwertig|komplett|einzeln|gebraucht|gut')}`
      .split('|')
      .filter((word, index, words) => words.indexOf(word) === index)
      .filter((word) => !['fitness', 'keller'].includes(word))
      .join('|'),
  ),
]);
