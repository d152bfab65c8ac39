/** German words of price, terms, measures and noise, by the class that recognisers ask for. `told`: a bare number behind it is a price. */
import type { Entry } from '../../text/terms.ts';
import { spelt } from './spelling.ts';

export const PRICES: readonly Entry[] = spelt([
  ['pro|per', { code: 'r' }],
  [
    'preis|preise|preis ist|preis beträgt|preisvorstellung|preisvorstellung ist|preisidee|wunschpreis|verkaufspreis|verkaufs preis|vk|vk preis|vkp|mein preis|unser preis|neuer preis|kosten|kostet|kostenpunkt|abgabe für|abgabe zu|abzugeben für|abgeben für|abzugeben um|verkaufe für|verkaufe um|verkaufen für|verkauft für|für nur|hätte gern|hätte gerne|will ich|will dafür|möchte ich|möchte dafür|möchte noch|sofortpreis|sofortkauf|gesenkt auf|reduziert auf|runtergesetzt auf|preissenkung|preisreduzierung|aufrufpreis|abholpreis|selbstabholerpreis|schnäppchenpreis|sonderpreis|bargeldpreis|dachte an|vorstellung|forderung',
    { code: 'A', sense: 'told' },
  ],
  // "Tausch gegen eine Kettlebell": for goods as for money.
  ['gegen', { code: 'A', sense: 'toward' }],
  ['jetzt|nun|jetzt nur|jetzt nur noch|jetzt noch|nur noch|nur|neu nur', { code: 'A' }],
  ['kilopreis', { code: 'A', sense: 'told', unit: 'kg' }],
  [
    'neupreis|np|neu preis|neuwert|neupreis war|neupreis lag|neupreis lag bei|neupreis ca|np war|uvp|uvp war|statt|anstatt|anstelle von|gekauft für|gekauft um|ehemals|ehemaliger preis|damals|damaliger preis|früher|ursprünglich|ursprünglicher preis|originalpreis|original preis|ladenpreis|listenpreis|alter preis|bisher|vorher|vormals|gekostet|hat gekostet|haben gekostet|neu gekostet|kosteten|kostete|kosten neu|kostet neu|neu kosten|neu kostet|kostet sonst|kosten sonst|bezahlt|habe bezahlt|gezahlt|dafür bezahlt|im laden|im handel|im geschäft|im internet|regulär|regulärer preis|normalpreis|normaler preis|normalerweise|wert|warenwert|gesamtwert|wert von|wert ca|anschaffungspreis|anschaffungskosten|anschaffungswert|einkaufspreis|ek|ek preis|kaufpreis war|damaliger kaufpreis|verkaufspreis war|zeitwert|wiederbeschaffungswert|investiert|hingelegt|ladenneupreis|online|im onlineshop|heute neu|neu aktuell|aktueller neupreis|np heute|np über|neupreis über|neupreis heute|neupreis aktuell',
    { code: 'F' },
  ],
  // "für 199 € gekauft"; alone it tells no price ("2019 gekauft, 50 €").
  ['gekauft|neu gekauft|damals gekauft|angeschafft|erworben|neu bezahlt', { code: 'b' }],
  ['gespart|spart|sparen|ersparnis|rabatt|ermäßigung|sie sparen|du sparst|preisnachlass', { code: 'V' }],
  [
    'versand|versand kostet|versand kosten|versandkosten|versandkosten von|versandkostenpauschale|versandpauschale|versende|versenden|versendet|verschicke|verschicken|verschickt|porto|portokosten|lieferung|lieferkosten|liefern|liefere|geliefert|liefer|anlieferung|zustellung|zusendung|paketversand|paketkosten|spedition|speditionskosten|transport|transportkosten|bringe|bringen|vorbeibringen|vorbei bringen|nachsendung|zuschicken|zugeschickt|fracht|frachtkosten|spritgeld|fahrtkosten',
    { code: 'D' },
  ],
  [
    'versand möglich|versand mögl|versand gerne|versand geht|lieferung möglich|spedition möglich|transport möglich|versand machbar',
    { code: 'D', sense: 'possible' },
  ],
  ['anzahlung|kaution|reservierungsgebühr|pfand|anzahlung von|gegen anzahlung|reservierung gegen|vorauszahlung', { code: 'H' }],
  [
    'zusammen|alles zusammen|alle zusammen|beides zusammen|beide zusammen|komplett|komplett für|insgesamt|gesamt|gesamtgewicht|gesamt gewicht|gewicht gesamt|gesamtmasse|alles|für alles|für alle|alles für|alle für|zusammen für|gesamt für|insgesamt für|im set|als set|im paket|als paket|im komplettpaket|im ganzen|total|summe|in summe|bei abnahme von allem|bei komplettabnahme|bei gesamtabnahme|komplettabnahme|gesamtabnahme|bei abnahme|fürs set|macht|macht zusammen|macht insgesamt|macht gesamt|macht also|ergibt|ergibt zusammen|sind zusammen|sind insgesamt|in gesamt|pauschal|gesamtpaket|komplettpaket|alles komplett|komplett zusammen|zusammen also|gesamthaft|gesamtsumme|in total|das ganze paket|alles auf einmal|am stück|im bündel',
    { code: 'L' },
  ],
  ['für beide|für beides|beides für|beide für', { code: 'L', value: 2 }],
  ['alle drei für', { code: 'L', value: 3 }],
  ['alle 4 für', { code: 'L', value: 4 }],
  ['alle fünf für|alle 5 für|für alle fünf|für alle 5', { code: 'L', value: 5 }],
  ['alle sechs für|alle 6 für|für alle sechs|für alle 6', { code: 'L', value: 6 }],
  [
    'gesamtpreis|gesamt preis|komplettpreis|komplett preis|paketpreis|paket preis|setpreis|set preis|pauschalpreis|preis gesamt|preis komplett|preis zusammen|preis insgesamt',
    { code: 'L', sense: 'told' },
  ],
  [
    'vb|v b|vhb|vhs|vs|vhb.|verhandlungsbasis|auf verhandlungsbasis|verhandelbar|preis verhandelbar|preise verhandelbar|preis vb|preis vhb|verhandlungssache|vb preis|preisvorschlag|preisvorschläge|preisvorschlag möglich|preisvorschläge möglich|preisvorschläge willkommen|preis vorschlag|preis vorschläge|bitte preisvorschlag|angebote|angebote bitte|gebote|gebot|anbot|a anbot|macht mir ein angebot|angebot machen|bitte angebot|um angebot|gegen angebot|gegen gebot|gegengebot|angebot abgeben|faires angebot|faire angebote|realistische angebote|angemessenes angebot|gegen höchstgebot|höchstgebot|meistbietend|meistbietenden|bieten sie|einfach anbieten|handeln möglich|noch verhandelbar|auch weniger|oder gebot|oder angebot|oder preisvorschlag|tausch möglich|vorschläge|preisverhandlung möglich|am preis lässt sich noch was machen|etwas spielraum|spielraum ist da|spielraum vorhanden|kleiner spielraum|spielraum|verhandlungsspielraum|etwas verhandlungsspielraum|nachlass möglich|bisschen verhandelbar',
    { code: 'O', sense: 'told' },
  ],
  [
    'nicht verhandeln|nicht handeln|nicht verhandelt|kein handeln|festpreis|fest preis|fester preis|festpreise|fixpreis|fix preis|fixer preis|fix|fp|letzter preis|letzte preis|letztpreis|preis ist fest|preis fest|preis fix|nicht verhandelbar|nicht verhandlungsfähig|nicht vb|nicht vhb|kein vb|keine vb|kein vhb|keine verhandlung|keine verhandlungen|keine preisverhandlung|keine preisverhandlungen|keine preisvorschläge|keine angebote|keine preisdiskussion|keine preisdiskussionen|keine preisanfragen|kein handeln|kein feilschen|kein verhandeln|ohne verhandlung|ohne verhandeln|verhandlung ausgeschlossen|verhandlungen ausgeschlossen|handeln zwecklos|verhandeln zwecklos|feilschen zwecklos|unverhandelbar|keine verhandlungsbasis|nicht weniger|preise fix|keine gegenangebote|kein gegenangebot|kein handel|kein spielraum|kein verhandlungsspielraum|ohne spielraum|preis steht|preise stehen|preis bleibt|nicht unter|kein nachlass',
    { code: 'R', sense: 'told' },
  ],
  ['was ist letzte preis|was letzte preis', { code: 'z' }],
  ['bar|nur bar|in bar|barzahlung|barzahler|bargeld|cash|bar bei abholung|gegen bar', { code: '£' }],
  [
    'zu verschenken|verschenke|verschenken|verschenkt|verschenkung|wird verschenkt|werden verschenkt|geschenkt|kostenlos|gratis|umsonst|für lau|kostenfrei|für umme|für umsonst|gegen abholung|gegen selbstabholung',
    { code: 'Z' },
  ],
  [
    'versand kostenlos|kostenloser versand|versandkostenfrei|gratis versand|kostenlose lieferung|versand gratis|gratis dazu|gratis dabei|geschenkt dazu|kostenlos dazu|umsonst dazu|dazu geschenkt',
    { code: 'z' },
  ],
]);

export const RELATIONS: readonly Entry[] = spelt([
  ['ich zahle|wir zahlen|zahle|ankauf für|ankaufspreis', { code: 'z', sense: 'pays' }],
  ['oder mehr|und mehr|aufwärts', { code: 'z', sense: 'and-up' }],
  [
    'kein|keine|keinen|keinem|keiner|keines|keinerlei|nicht|nich|nie|niemals|ohne|weder|nichts|null|ned|noch nie|absolut kein|gar nicht|gar kein|gar keine|überhaupt nicht|frei von',
    { code: 'N' },
  ],
  [
    'nicht dabei|nicht enthalten|nicht inklusive|nicht inbegriffen|nicht inkludiert|außer|ausgenommen|bis auf|behalte ich|behalten wir|bleibt hier|bleiben hier|nicht mitverkauft|separate anzeige|separater anzeige|andere anzeige|anderen anzeigen|andere anzeigen|extra anzeige|nur deko|separat erhältlich',
    { code: 'Q' },
  ],
  [
    'verkauft|bereits verkauft|schon verkauft|leider verkauft|sind verkauft|ist verkauft|wurde verkauft|wurden verkauft|ist weg|sind weg|schon weg|bereits weg|sind schon weg|leider weg|reserviert|ist reserviert|sind reserviert|bereits reserviert|vorgemerkt|vergeben|schon vergeben|bereits vergeben|abgeholt|wurde abgeholt|wurden abgeholt|ausverkauft|sold',
    { code: 'Y' },
  ],
  ['meist|meistens|hauptsächlich|überwiegend|größtenteils|vorwiegend|vor allem', { code: 'z', sense: 'mostly' }],
  [
    'verkauft wird|verkauft werden|wird verkauft|werden verkauft|verkauft sich|wird nur zusammen verkauft|nur zusammen verkauft|zusammen verkauft|komplett verkauft|einzeln verkauft|zu verkaufen|zum verkauf|verkaufe|verkaufen|biete|da verkauft|nicht reserviert|keine reservierung',
    { code: 'z' },
  ],
  [
    'suche|such|suchen|gesucht|gesuch|kaufe|ankauf|kaufgesuch|sucht|wir suchen|ich suche|suche dringend|wer verkauft|wer hat|wer hätte|gesucht wird|gesucht werden|hat jemand',
    { code: 'W', sense: 'wanted' },
  ],
  ['sucht neuen besitzer|suche käufer|suche nachmieter', { code: 'z' }],
  [
    'passend für|passend zu|passend auf|passt auf|passen auf|passt für|passen für|passt an|passen an|passt zu|passen zu|passt in|passend in|für jede|für jeden|geeignet für|kompatibel mit|kompatibel zu|gedacht für|gemacht für|verwendbar für|verwendbar mit|nutzbar für|benötigt|man braucht|braucht man|sie brauchen|du brauchst|für eure|für deine|für ihre|ideal für|perfekt für|verwenden mit|nutzen mit|halterung für|halter für|ablage für|ablagen für|aufnahme für|aufnahmen für|vorrichtung für',
    { code: 'X' },
  ],
  ['für|um|fürs', { code: 'w' }],
  [
    'ca|circa|zirka|cirka|etwa|ungefähr|rund|fast|knapp|über|mindestens|mind|min|weniger als|mehr als|ab|grob|um die|nahezu|annähernd|schätzungsweise|geschätzt|geschätzte|maximal|etwas über|etwas unter|plusminus',
    { code: 'U' },
  ],
  ['bis', { code: 'z', sense: 'to' }],
  ['tausch|tausche|tauschen|eintauschen|zum tausch|tauschbar', { code: 'z', sense: 'trade' }],
  ['umstieg auf|umgestiegen auf|wechsle zu|wechseln zu|gewechselt zu', { code: 'z', sense: 'turn-to' }],
  ['art von|art', { code: 'z', sense: 'kind-of' }],
  ['gehört so|bauartbedingt|konstruktionsbedingt|so gewollt|so gedacht|so gebaut', { code: 'z', sense: 'by-design' }],
  ['station|stationen', { code: 'z', sense: 'bundle' }],
  ['auf|am|an|vom|unter|neben|hinter|ans|zum|zur|beim|bei|in|im|ins|an der|von der|aus der', { code: 'z', sense: 'place' }],
  ['je nach|je nachdem', { code: 'z' }],
  ['zwischen', { code: 'z', sense: 'between' }],
  [
    'update|updates|edit|nachtrag|aktualisierung|aktualisiert|preisupdate|preis update|preisänderung|neuer stand',
    { code: 'z', sense: 'update' },
  ],
  [
    'nein halt|halt nein|ach nein|nein warte|warte nein|nein sorry|nee|nee halt|quatsch|korrektur|berichtigung|korrigiere|korrigiert|verzählt|falsch gezählt|vertippt|tippfehler|schreibfehler|ich meine|ich meinte|meine natürlich|meinte natürlich|gemeint sind|gemeint ist|gemeint waren|muss heißen|soll heißen|sollte heißen',
    { code: 'z', sense: 'retract' },
  ],
  ['allein|alleine', { code: 'z', sense: 'only' }],
  ['sorry|äh|ähm|falsch', { code: 'z', sense: 'retract-maybe' }],
  [
    'fragen ob|fragt ob|frage ob|gefragt ob|nachfragen ob|fragen nach|fragt nach|anfragen zu|fragen wegen',
    { code: 'z', sense: 'asks-whether' },
  ],
  ['plus minus', { code: 'z', sense: 'tolerance' }],
  ['rest|der rest|den rest|rest nur|rest für|rest zusammen', { code: 'z', sense: 'rest' }],
  ['wenn weg|bis weg|wenn verkauft|muss weg|müssen weg|soll weg|sollen weg', { code: 'z' }],
  [
    'wiegt|wiegen|wiegt ca|gewicht|eigengewicht|gewicht ca|gewicht beträgt|hat|stangengewicht|gewicht stange|leergewicht|ist',
    { code: 'z', sense: 'weighs' },
  ],
  [
    'glaube ich|ich glaube|glaub|glaube|glaub ich|vermutlich|wahrscheinlich|denke|denke ich|ich denke|müsste|müssten|sollte|sollten|müsste sein|angeblich|weiß nicht|weiß ich nicht|nicht sicher|schätze|schätze ich|ich schätze|evtl|eventuell|vielleicht|meines wissens|scheint|scheinen|wohl|vermute|ich vermute|ohne gewähr|laut verkäufer|soll|sollen|keine ahnung',
    { code: 'y' },
  ],
]);

export const MEASURES: readonly Entry[] = spelt([
  [
    'bohrung|bohrungen|loch|löcher|lochung|lochdurchmesser|loch durchmesser|bohrungsdurchmesser|bohrdurchmesser|bohrloch|bohrlöcher|innendurchmesser|innen durchmesser|durchmesser innen|innenmaß|lochmaß|lochgröße|lochweite|lochbohrung|mittelloch|mittelbohrung|öffnung|öffnungen|durchmesser loch|durchmesser bohrung|loch innen|innenloch|scheibenloch|scheibenbohrung|zentralbohrung|lochkreisdurchmesser|innenring|bohrungen von|bohrung von|nabe|bohrmaß',
    { code: 'B' },
  ],
  [
    'griffstärke|griffdurchmesser|griff durchmesser|griffbereich|griffdicke|griff dicke|griff stärke|griffstück|stangendurchmesser|stangenstärke|stangendicke|stangen durchmesser|durchmesser stange|durchmesser griff|schaft|schaftdurchmesser|stärke|dicke|dick|stark|greifdurchmesser|rohrdurchmesser|durchm|durchmesser griffbereich',
    { code: 'S' },
  ],
  ['griff', { code: 'S', sense: 'handle' }],
  ['griffe', { code: 'z', sense: 'handle' }],
  ['durchmesser|durchmesser ca|durchmesser von|ø|⌀|dm', { code: 'S', sense: 'fit' }],
  [
    'hülse|hülsen|außendurchmesser|hülsendurchmesser|hülsen durchmesser|ende|enden|stangenende|stangenenden|hantelhülse|hantelhülsen|rotationshülsen|durchmesser hülsen',
    { code: 'T' },
  ],
  [
    'aufnahme|aufnahmen|hantelaufnahme|scheibenaufnahme|scheibenaufnahmen|gewichtsaufnahme|gewichteaufnahme|gewichtsaufnahmen|hantelscheibenaufnahme|aufnahmedurchmesser|hülsenaufnahme|aufnahme durchmesser|durchmesser aufnahme|steckmaß|aufnahmemaß|system',
    { code: 'T', sense: 'fit' },
  ],
  [
    'lang|länge|gesamtlänge|länge gesamt|länge ca|stangenlänge|breit|breite|hoch|höhe|gesamthöhe|tief|tiefe|maß|maße|abmessung|abmessungen|länge von',
    { code: 'G' },
  ],
  [
    'belastbar|belastbar bis|belastbar mit|bis zu|belastbarkeit|max belastbarkeit|maximale belastbarkeit|maximal belastbar|maximalbelastung|maximale belastung|max belastung|max gewicht|max|tragkraft|traglast|tragfähigkeit|hält|hält bis|trägt|trägt bis|maximallast|max last|benutzergewicht|max benutzergewicht|nutzergewicht|hantelablage bis|ausgelegt für|ausgelegt bis|zugelassen bis|geprüft bis|auflast',
    { code: 'K' },
  ],
  ['psi|zugfestigkeit|psi zugfestigkeit', { code: 'I' }],
  [
    'kreuzheben|kniebeuge|kniebeugen|bankdrücken|bankgedrückt|bankgedrückte|gedrückt|gehoben|gebeugt|bestleistung|bestleistungen|maximalkraft|wiederholungen|wdh|körpergewicht|ich wiege|wiege|jahre alt|abgenommen|zugenommen|reißen|stoßen|maximum|mein max|mein rekord|rekord',
    { code: 'P' },
  ],
  [
    'jahr|jahre|jahren|jahres|er jahre|er jahren|er jahr|monat|monate|monaten|woche|wochen|tag|tage|tagen|stunde|stunden|std|minute|minuten|uhr|h|km|kilometer|person|personen|leute|prozent|%|stock|stockwerk|etage|og|ug|stufen|stufe|stufig|fach|facher|positionen|plätze|zimmer|kinder|gänge|gang|qm|m2|quadratmeter|teilig|teiliges|teilige|tlg|g|gr|gramm|watt|w|volt|v|ps|ccm|liter|l|gb|zoller|sorten|kartons|treppen|sitze|autos|mann|euro schein',
    { code: 'J' },
  ],
]);
