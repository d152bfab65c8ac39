/** German words of price, terms, measures and noise, by the class that recognisers ask for. `told`: a bare number behind it is a price. */
import type { Entry } from '../../text/terms.ts';
import { spelt } from './spelling.ts';

export const PRICES: readonly Entry[] = spelt([
  ['pro|per', { code: 'r' }],
  [
    'preis|preise|preis ist|der preis ist|preis liegt bei|preis beträgt|preisvorstellung|preisvorstellung ist|preisvorstellung liegt bei|preisidee|wunschpreis|verkaufspreis|verkaufs preis|vk|vk preis|vkp|mein preis|unser preis|zum preis von|neuer preis|kosten|kostet|kostenpunkt|abgabe für|abgabe zu|abzugeben für|abgeben für|gebe ab für|abzugeben um|verkaufe für|verkaufe um|verkaufe sie für|verkaufe es für|verkaufen für|zu verkaufen für|verkauft für|für nur|hätte gern|hätte gerne|hätte ich gern|hätte ich gerne|will ich|will dafür|möchte ich|möchte dafür|möchte noch|sofortpreis|sofortkauf|gesenkt auf|reduziert auf|preis gesenkt auf|runtergesetzt auf|preissenkung|preisreduzierung|aufrufpreis|abholpreis|selbstabholerpreis|schnäppchenpreis|sonderpreis|bargeldpreis|ich dachte an|dachte an|dachte so an|stelle mir vor|stelle ich mir vor|vorstellung|forderung',
    { code: 'A', sense: 'told' },
  ],
  // "Tausch gegen eine Kettlebell": for goods as for money.
  ['gegen', { code: 'A', sense: 'toward' }],
  ['jetzt|nun|jetzt nur|jetzt nur noch|jetzt noch|nur noch|nur|neu nur', { code: 'A' }],
  [
    'kilopreis|preis pro kg|preis je kg|preis pro kilo|preis je kilo|preis für ein kilo|preis fürs kilo',
    { code: 'A', sense: 'told', unit: 'kg' },
  ],
  [
    'neupreis|np|neu preis|neuwert|neupreis war|neupreis lag|neupreis lag bei|neupreis liegt bei|neupreis ca|np war|np lag bei|uvp|uvp war|statt|anstatt|anstelle von|gekauft für|gekauft um|gekauft haben wir es für|ehemals|ehemaliger preis|damals|damaliger preis|früher|ursprünglich|ursprünglicher preis|originalpreis|original preis|ladenpreis|listenpreis|alter preis|bisher|vorher|vormals|gekostet|hat gekostet|haben gekostet|neu gekostet|kosteten|kostete|hat neu gekostet|haben neu gekostet|kosten neu|kostet neu|neu kosten|neu kostet|kostet im laden|kosten im laden|neu kosten die|neu kostet das|kostet sonst|kosten sonst|bezahlt|habe bezahlt|gezahlt|dafür bezahlt|im laden|im handel|im geschäft|im internet|regulär|regulärer preis|normalpreis|normaler preis|normalerweise|wert|warenwert|gesamtwert|im wert von|wert von|wert ca|anschaffungspreis|anschaffungskosten|anschaffungswert|einkaufspreis|ek|ek preis|kaufpreis war|kaufpreis lag bei|damaliger kaufpreis|verkaufspreis war|zeitwert|wiederbeschaffungswert|investiert|hingelegt|habe ich bezahlt|haben wir bezahlt|ladenneupreis|online|im onlineshop|heute neu|neu aktuell|aktueller neupreis|np heute|np über|neupreis über|neupreis heute|neupreis aktuell',
    { code: 'F' },
  ],
  // "für 199 € gekauft"; alone it tells no price ("2019 gekauft, 50 €").
  ['gekauft|neu gekauft|damals gekauft|angeschafft|erworben|neu bezahlt', { code: 'b' }],
  ['gespart|spart|sparen|ersparnis|rabatt|ermäßigung|sie sparen|du sparst|preisnachlass|günstiger als neu', { code: 'V' }],
  [
    'versand|versand kostet|versand kosten|versandkosten|versandkosten von|versandkostenpauschale|versandpauschale|versende|versenden|versendet|verschicke|verschicken|verschickt|porto|portokosten|lieferung|lieferkosten|liefern|liefere|geliefert|liefer|anlieferung|zustellung|zusendung|paketversand|paketkosten|spedition|speditionskosten|transport|transportkosten|bringe|bringen|vorbeibringen|vorbei bringen|nachsendung|zuschicken|zugeschickt|fracht|frachtkosten|spritgeld|fahrtkosten',
    { code: 'D' },
  ],
  [
    'versand möglich|versand mögl|versand ist möglich|versand auch möglich|versand gegen aufpreis|versand gerne|versand geht|lieferung möglich|spedition möglich|transport möglich|versand machbar',
    { code: 'D', sense: 'possible' },
  ],
  ['anzahlung|kaution|reservierungsgebühr|pfand|anzahlung von|gegen anzahlung|reservierung gegen|vorauszahlung', { code: 'H' }],
  [
    'zusammen|alles zusammen|alle zusammen|beides zusammen|beide zusammen|komplett|komplett für|insgesamt|gesamt|gesamtgewicht|gesamt gewicht|gewicht gesamt|gesamtmasse|alles|für alles|für alle|alles für|alle für|für alles zusammen|zusammen für|gesamt für|insgesamt für|im set|als set|im paket|als paket|im komplettpaket|im ganzen|total|summe|in summe|bei abnahme von allem|bei abnahme aller|bei komplettabnahme|bei gesamtabnahme|komplettabnahme|gesamtabnahme|bei abnahme|für das set|fürs set|für das ganze set|für den satz|für das komplette set|für das komplettset|für das ganze|macht|macht zusammen|macht insgesamt|macht gesamt|macht also|ergibt|ergibt zusammen|sind zusammen|sind insgesamt|in gesamt|pauschal|gesamtpaket|komplettpaket|alles in allem|für die ganze ausrüstung|für das komplette paket|für alle zusammen|alle scheiben zusammen|wer alles nimmt|alles komplett|für alles komplett|komplett zusammen|zusammen also|gesamthaft|gesamtsumme|in total|für den ganzen satz|der ganze haufen|das ganze zeug|das ganze set|der ganze satz|die ganze sammlung|das ganze paket|der ganze posten|das komplette paket|alles auf einmal|alles in einem|alles an einen|alle teile zusammen|wer alles nimmt zahlt|am stück|im bündel',
    { code: 'L' },
  ],
  ['für beide|für beides|beides für|beide für', { code: 'L', value: 2 }],
  ['alle drei für|alle 3 für|für alle drei|für alle 3|alle drei zusammen', { code: 'L', value: 3 }],
  ['alle vier für|alle 4 für|für alle vier|für alle 4|alle vier zusammen', { code: 'L', value: 4 }],
  ['alle fünf für|alle 5 für|für alle fünf|für alle 5', { code: 'L', value: 5 }],
  ['alle sechs für|alle 6 für|für alle sechs|für alle 6', { code: 'L', value: 6 }],
  [
    'gesamtpreis|gesamt preis|komplettpreis|komplett preis|paketpreis|paket preis|setpreis|set preis|pauschalpreis|preis gesamt|preis komplett|preis für alles|preis für alle|preis zusammen|preis insgesamt|gesamtpreis für alles|preis für das set|preis fürs set',
    { code: 'L', sense: 'told' },
  ],
  [
    'vb|v b|vhb|vhs|vs|v h b|vhb.|verhandlungsbasis|auf verhandlungsbasis|verhandelbar|preis verhandelbar|preis ist verhandelbar|preise verhandelbar|preis vb|preis vhb|verhandlungssache|vb preis|preisvorschlag|preisvorschläge|preisvorschlag möglich|preisvorschläge möglich|preisvorschläge willkommen|preis vorschlag|preis vorschläge|bitte preisvorschlag|angebote|angebote bitte|gebote|gebot|anbot|a anbot|macht mir ein angebot|mach mir ein angebot|macht ein angebot|mach ein angebot|machen sie ein angebot|machen sie mir ein angebot|angebot machen|bitte angebot machen|bitte angebot|bitte um angebot|um angebot|gegen angebot|gegen gebot|gegengebot|angebot abgeben|faires angebot|faire angebote|realistische angebote|angemessenes angebot|freue mich über angebote|gegen höchstgebot|höchstgebot|meistbietend|meistbietenden|bieten sie|einfach anbieten|über den preis kann man reden|über den preis lässt sich reden|über den preis können wir reden|über preis kann man reden|preis lässt sich reden|lässt sich reden|handeln möglich|preislich lässt sich was machen|noch verhandelbar|auch weniger|oder gebot|oder angebot|oder preisvorschlag|tausch möglich|tausch auch möglich|preis auf anfrage|vorschläge|preisverhandlung möglich|am preis lässt sich noch was machen|am preis lässt sich was machen|am preis lässt sich etwas machen|am preis kann man noch was machen|am preis geht noch was|preislich geht noch was|beim preis geht noch was|etwas spielraum|spielraum ist da|spielraum vorhanden|kleiner spielraum|spielraum|verhandlungsspielraum|etwas verhandlungsspielraum|nachlass möglich|macht einen vorschlag|mach einen vorschlag|ein bisschen was geht noch|bisschen verhandelbar|mit mir kann man reden|ich lasse mit mir reden|lasse mit mir reden|lasse mit mir handeln',
    { code: 'O', sense: 'told' },
  ],
  [
    'nicht verhandeln|nicht handeln|nicht mehr verhandeln|wird nicht verhandelt|nicht verhandelt|kein handeln|festpreis|fest preis|fester preis|festpreise|fixpreis|fix preis|fixer preis|fix|fp|letzter preis|letzte preis|letztpreis|preis ist fest|preis steht fest|preis fest|preis ist fix|preis fix|nicht verhandelbar|preis nicht verhandelbar|nicht verhandlungsfähig|nicht vb|nicht vhb|kein vb|keine vb|kein vhb|keine verhandlung|keine verhandlungen|keine preisverhandlung|keine preisverhandlungen|keine preisvorschläge|keine angebote|keine preisdiskussion|keine preisdiskussionen|keine preisanfragen|kein handeln|kein feilschen|kein verhandeln|ohne verhandlung|ohne verhandeln|verhandlung ausgeschlossen|verhandlungen ausgeschlossen|handeln zwecklos|verhandeln zwecklos|feilschen zwecklos|unverhandelbar|keine verhandlungsbasis|nicht weniger|preis ist nicht verhandelbar|preise nicht verhandelbar|preise sind fest|preise fix|preis ist final|keine gegenangebote|kein gegenangebot|kein handel|kein spielraum|kein verhandlungsspielraum|ohne spielraum|preis steht|der preis steht|preise stehen|preis bleibt|preise sind preise|nicht unter|keinen cent weniger|kein cent weniger|nichts zu verhandeln|kein nachlass|ich verhandle nicht|ich handle nicht|wird nicht verhandelt|wird nicht gehandelt',
    { code: 'R', sense: 'told' },
  ],
  [
    'was ist letzte preis|was letzte preis|was letzter preis|was ist letzter preis|was ist der letzte preis|letzter preis fragen|letzter preis anfragen|letzte preis fragen|nach dem letzten preis|letzten preis',
    { code: 'z', sense: 'lowest' },
  ],
  [
    'bar|nur bar|in bar|barzahlung|barzahler|bargeld|cash|bar bei abholung|barzahlung bei abholung|bar auf die hand|bar auf kralle|gegen bar',
    { code: '£' },
  ],
  [
    'zu verschenken|verschenke|verschenken|verschenkt|verschenkung|wird verschenkt|werden verschenkt|geschenkt|kostenlos|gratis|umsonst|für lau|kostenfrei|für umme|für umsonst|gegen abholung|gegen selbstabholung',
    { code: 'Z' },
  ],
  [
    'versand kostenlos|kostenloser versand|versandkostenfrei|gratis versand|kostenlose lieferung|versand gratis|gratis dazu|gratis dabei|geschenkt dazu|kostenlos dazu|umsonst dazu|schenke ich dazu|dazu geschenkt|gratis oben drauf',
    { code: 'z' },
  ],
]);

export const RELATIONS: readonly Entry[] = spelt([
  ['ich zahle|wir zahlen|zahle|kaufe an für|ankauf für|ankaufspreis', { code: 'z', sense: 'pays' }],
  ['oder mehr|und mehr|aufwärts', { code: 'z', sense: 'and-up' }],
  [
    'nirgends|nirgendwo|kein|keine|keinen|keinem|keiner|keines|keinerlei|nicht|nich|nie|niemals|ohne|weder|nichts|null|ned|noch nie|absolut kein|gar nicht|gar kein|gar keine|überhaupt nicht|frei von',
    { code: 'N' },
  ],
  [
    'nicht dabei|nicht mit dabei|nicht enthalten|nicht inklusive|nicht inbegriffen|nicht inkludiert|nicht im lieferumfang|nicht im preis|außer|ausgenommen|bis auf|nicht zu verkaufen|nicht zum verkauf|steht nicht zum verkauf|stehen nicht zum verkauf|behalte ich|behalten wir|bleibt hier|bleiben hier|bleibt bei mir|bleiben bei mir|wird nicht verkauft|werden nicht verkauft|nicht mitverkauft|nicht mit verkauft|gehört nicht dazu|gehören nicht dazu|gehört nicht zum angebot|gehören nicht zum angebot|separate anzeige|separater anzeige|andere anzeige|anderen anzeigen|andere anzeigen|meine anderen anzeigen|in anderen anzeigen|in meinen anderen anzeigen|siehe andere anzeigen|siehe meine anderen anzeigen|in meiner anderen anzeige|extra anzeige|nicht mehr vorhanden|nur deko|dient nur als deko|separat erhältlich|separat zu verkaufen',
    { code: 'Q' },
  ],
  [
    'verkauft|bereits verkauft|schon verkauft|leider verkauft|sind verkauft|ist verkauft|wurde verkauft|wurden verkauft|ist weg|sind weg|schon weg|bereits weg|ist schon weg|sind schon weg|ist bereits weg|sind bereits weg|leider weg|leider schon weg|sind leider schon weg|ist leider schon weg|reserviert|ist reserviert|sind reserviert|bereits reserviert|vorgemerkt|vergeben|schon vergeben|bereits vergeben|nicht mehr verfügbar|nicht mehr da|nicht mehr zu haben|abgeholt|wurde abgeholt|wurden abgeholt|ausverkauft|sold',
    { code: 'Y' },
  ],
  ['meist|meistens|hauptsächlich|überwiegend|größtenteils|vorwiegend|vor allem', { code: 'z', sense: 'mostly' }],
  [
    'verkauft wird|verkauft werden|wird verkauft|werden verkauft|verkauft sich|wird hier verkauft|werden hier verkauft|wird nur zusammen verkauft|werden nur zusammen verkauft|wird nur komplett verkauft|werden nur komplett verkauft|nur zusammen verkauft|nur komplett verkauft|zusammen verkauft|komplett verkauft|einzeln verkauft|als set verkauft|nur als set verkauft|im set verkauft|nur im set verkauft|wird privat verkauft|muss verkauft werden|müssen verkauft werden|soll verkauft werden|sollen verkauft werden|zu verkaufen|zum verkauf|verkaufe|verkaufen|biete|von privat verkauft|wegen umzug verkauft|wegen platzmangel verkauft|da verkauft|nicht reserviert|keine reservierung|wird nicht reserviert|ich reserviere nicht',
    { code: 'z' },
  ],
  [
    'suche|such|suchen|gesucht|gesuch|kaufe|ankauf|kaufgesuch|sucht|wir suchen|ich suche|suche dringend|wer verkauft|wer hat|wer hätte|auf der suche nach|gesucht wird|gesucht werden|bin auf der suche|sind auf der suche|zu kaufen gesucht|wer möchte verkaufen|hat jemand',
    { code: 'W', sense: 'wanted' },
  ],
  [
    'sucht ein neues zuhause|suchen ein neues zuhause|sucht neues zuhause|suchen neues zuhause|sucht einen neuen besitzer|suchen einen neuen besitzer|sucht neuen besitzer|suchen neuen besitzer|suchen neue besitzer|sucht neue besitzer|sucht neuen eigentümer|suche neuen besitzer|suche einen neuen besitzer|suche käufer|suche nachmieter|suche neues zuhause für|suche ein neues zuhause|gesucht und gefunden|sucht nen neuen besitzer|sucht ein neues heim|sucht einen abnehmer|zuhause gesucht|neues zuhause gesucht|neuer besitzer gesucht|neue besitzer gesucht|besitzer gesucht|käufer gesucht|abnehmer gesucht|abholer gesucht|selbstabholer gesucht',
    { code: 'z' },
  ],
  [
    'passend für|passend zu|passend auf|passt auf|passen auf|passt für|passen für|passt an|passen an|passen auch auf|passen nur auf|passt nur auf|passt zu|passen zu|passt in|passend in|für jede|für jeden|geeignet für|auch geeignet für|kompatibel mit|kompatibel zu|gedacht für|gemacht für|verwendbar für|verwendbar mit|nutzbar für|benötigt|man braucht|braucht man|sie brauchen|du brauchst|für die man|für eure|für deine|für ihre|ideal für|perfekt für|verwenden mit|nutzen mit|halterung für|halter für|ablage für|ablagen für|aufnahme für|aufnahmen für|vorrichtung für',
    { code: 'X' },
  ],
  ['für|um|fürs', { code: 'w' }],
  [
    'ca|circa|zirka|cirka|etwa|ungefähr|rund|fast|knapp|über|mindestens|mind|min|weniger als|mehr als|ab|bis zu ca|grob|um die|gut und gerne|so um die|nahezu|annähernd|schätzungsweise|geschätzt|geschätzte|maximal|etwas über|etwas unter|plusminus',
    { code: 'U' },
  ],
  ['bis', { code: 'z', sense: 'to' }],
  ['tausch|tausche|tauschen|eintauschen|zum tausch|tauschbar', { code: 'z', sense: 'trade' }],
  [
    'umstieg auf|umgestiegen auf|steige um auf|steigen um auf|wechsle zu|wechseln zu|gewechselt zu|trainiere nur noch mit|trainieren nur noch mit|nur noch mit',
    { code: 'z', sense: 'turn-to' },
  ],
  ['art von|art', { code: 'z', sense: 'kind-of' }],
  [
    'soll so sein|muss so sein|gehört so|bauartbedingt|konstruktionsbedingt|so gewollt|so gedacht|so gebaut',
    { code: 'z', sense: 'by-design' },
  ],
  ['station|stationen', { code: 'z', sense: 'bundle' }],
  ['auf|am|an|vom|unter|neben|hinter|ans|zum|zur|beim|bei|in|im|ins|an der|von der|aus der', { code: 'z', sense: 'place' }],
  ['je nach|je nachdem|je nach bedarf|je nach größe|je nach gewicht', { code: 'z' }],
  ['zwischen', { code: 'z', sense: 'between' }],
  [
    'update|updates|edit|nachtrag|aktualisierung|aktualisiert|preisupdate|preis update|preisänderung|neuer stand',
    { code: 'z', sense: 'update' },
  ],
  [
    'nein halt|halt nein|ach nein|nein warte|warte nein|nein sorry|nee|nee halt|quatsch|korrektur|berichtigung|korrigiere|korrigiert|verzählt|habe mich verzählt|hab mich verzählt|falsch gezählt|vertippt|hab mich vertippt|habe mich vertippt|tippfehler|schreibfehler|ich meine|ich meinte|meine natürlich|meinte natürlich|gemeint sind|gemeint ist|gemeint waren|muss heißen|soll heißen|sollte heißen',
    { code: 'z', sense: 'retract' },
  ],
  ['allein|alleine', { code: 'z', sense: 'only' }],
  ['sorry|äh|ähm|falsch', { code: 'z', sense: 'retract-maybe' }],
  [
    'fragen ob|fragt ob|frage ob|gefragt ob|nachfragen ob|fragen nach|fragt nach|anfragen zu|fragen wegen',
    { code: 'z', sense: 'asks-whether' },
  ],
  ['plus minus|mehr oder weniger', { code: 'z', sense: 'tolerance' }],
  ['rest|der rest|den rest|für den rest|rest nur|rest für|rest zusammen', { code: 'z', sense: 'rest' }],
  ['wenn weg|bis weg|wenn verkauft|muss weg|müssen weg|alles muss weg|soll weg|sollen weg', { code: 'z' }],
  [
    'wiegt|wiegen|wiegt ca|gewicht|eigengewicht|gewicht ca|gewicht beträgt|hat|gewicht der stange|stangengewicht|gewicht stange|leergewicht|ist',
    { code: 'z', sense: 'weighs' },
  ],
  [
    'glaube ich|ich glaube|glaub|glaube|glaub ich|vermutlich|wahrscheinlich|denke|denke ich|ich denke|müsste|müssten|sollte|sollten|müsste sein|angeblich|weiß nicht|weiß ich nicht|nicht sicher|soweit ich weiß|schätze|schätze ich|ich schätze|evtl|eventuell|vielleicht|meines wissens|scheint|scheinen|wohl|vermute|ich vermute|ohne gewähr|laut verkäufer|soll|sollen|keine ahnung',
    { code: 'y' },
  ],
]);

export const MEASURES: readonly Entry[] = spelt([
  [
    'bohrung|bohrungen|loch|löcher|lochung|lochdurchmesser|loch durchmesser|bohrungsdurchmesser|bohrdurchmesser|bohrloch|bohrlöcher|innendurchmesser|innen durchmesser|durchmesser innen|innenmaß|lochmaß|lochgröße|lochweite|lochbohrung|mittelloch|mittelbohrung|öffnung|öffnungen|durchmesser loch|durchmesser bohrung|durchmesser der bohrung|durchmesser des lochs|durchmesser des loches|durchmesser vom loch|loch innen|innenloch|scheibenloch|scheibenbohrung|zentralbohrung|lochkreisdurchmesser|innenring|bohrungen von|bohrung von|nabe|bohrmaß',
    { code: 'B' },
  ],
  [
    'griffstärke|griffdurchmesser|griff durchmesser|griffbereich|griffdicke|griff dicke|griff stärke|griffstück|stangendurchmesser|stangenstärke|stangendicke|stangen durchmesser|durchmesser stange|durchmesser der stange|durchmesser griff|schaft|schaftdurchmesser|stärke|dicke|dick|stark|greifdurchmesser|rohrdurchmesser|durchm|durchmesser griffbereich',
    { code: 'S' },
  ],
  ['griff', { code: 'S', sense: 'handle' }],
  ['griffe', { code: 'z', sense: 'handle' }],
  ['durchmesser|durchmesser ca|durchmesser von|ø|⌀|dm', { code: 'S', sense: 'fit' }],
  [
    'hülse|hülsen|außendurchmesser|hülsendurchmesser|hülsen durchmesser|ende|enden|stangenende|stangenenden|hantelhülse|hantelhülsen|rotationshülsen|durchmesser hülsen|durchmesser der hülsen',
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
    'belastbar|belastbar bis|belastbar bis zu|belastbar mit|bis zu|belastbarkeit|max belastbarkeit|maximale belastbarkeit|maximal belastbar|maximalbelastung|maximale belastung|max belastung|max gewicht|max|tragkraft|traglast|tragfähigkeit|hält|hält bis|hält bis zu|trägt|trägt bis|maximallast|max last|benutzergewicht|max benutzergewicht|nutzergewicht|hantelablage bis|ausgelegt für|ausgelegt bis|zugelassen bis|geprüft bis|auflast',
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
