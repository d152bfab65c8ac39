/**
 * What is written to a seller, in German: an ad is answered in its own language, whatever the language of the extension is. The keys are
 * those of message.json and of the questions, with the same places; the tests hold the two against each other.
 */

import { type Speaker, type Strings, speaker } from '../words/say.ts';
import { ENGLISH } from './english.ts';

export const GERMAN: Strings = {
  message_greeting: 'Guten Tag,',
  message_interest: 'ich interessiere mich für Ihre Anzeige „{title}“. Ist alles noch da?',
  message_interest_untitled: 'ich interessiere mich für Ihre Anzeige. Ist alles noch da?',
  message_ask: 'Bevor ich losfahre, habe ich {n} Fragen:',
  message_ask_one: 'Bevor ich losfahre, habe ich eine Frage:',
  message_offer: 'Wenn alles passt, könnte ich {open} anbieten: {because}.',
  message_because_work: 'es ist noch etwas daran zu tun',
  message_because_drive: 'ich hätte {distance} Weg dorthin und ebenso viel zurück',
  message_because_rate: 'gebraucht werden solche Scheiben meist für etwa {rate} verkauft',
  message_because_cash: 'ich zahle bar und nehme alles auf einmal mit',
  message_price_fine: 'Mit {price} bin ich einverstanden, wenn alles so ist wie beschrieben.',
  message_pickup:
    'Ich könnte abends oder am Wochenende kommen, bar zahlen und selbst einladen. Wann würde es Ihnen passen, und wohin soll ich kommen?',
  message_closing: 'Vielen Dank und freundliche Grüße',
  message_refuse_thanks: 'Vielen Dank fürs Zeigen!',
  message_refuse_bent: 'Die Stange ist leider nicht mehr gerade, und damit kann ich nicht sicher trainieren.',
  message_refuse_shaft: 'Die Stange ist für meine Hände leider zu dick.',
  message_refuse_bar_size: 'Die Stange passt leider nicht zu meinen Scheiben und meinem Rack.',
  message_refuse_holes: 'Die Löcher der Scheiben passen leider nicht zu meiner Stange.',
  message_refuse_cracked: 'Daran ist leider ein Riss, und das möchte ich nicht belasten.',
  message_refuse_cement: 'Ich suche leider Scheiben aus Eisen, nicht mit Zementfüllung.',
  message_refuse_stands: 'Einzelne Ständer sind mir zum Drücken leider nicht sicher genug.',
  message_refuse_height: 'Es ist leider zu hoch für meinen Raum.',
  message_refuse_other: 'Es ist leider doch nicht das, was ich brauche.',
  message_refuse_price: 'So, wie es ist, könnte ich {most} dafür geben und es gleich mitnehmen.',
  message_refuse_no_price: 'So, wie es ist, lohnt es sich für mich leider nicht.',
  message_refuse_closing: 'Sonst lasse ich es lieber stehen und wünsche Ihnen viel Erfolg beim Verkauf.',
  question_price: 'Was möchten Sie für alles zusammen haben?',
  question_weights: 'Wie viele Scheiben sind es, und welches Gewicht steht jeweils darauf?',
  question_bore: 'Wie groß ist das Loch in den Scheiben? (Es muss auf {sleeve} passen.)',
  question_straightness: 'Wenn Sie die Stange über ebenen Boden rollen: läuft sie rund, oder hüpft die Mitte?',
  question_shaft: 'Wie dick ist die Stange an der Griffstelle? (In mm, oder einen Papierstreifen herumlegen und den messen.)',
  question_count: 'Wie viele Scheiben mit {weight} sind dabei?',
};

/** Who speaks to the seller of an ad in a language: the extension's own strings where they are in it, for they know the region; else a table. */
export function sellerSpeaker(language: 'en' | 'de', own: Speaker): Speaker {
  if (new Intl.Locale(own.locale).language === language) return own;
  return language === 'de' ? speaker(GERMAN, 'de') : speaker(ENGLISH, 'en');
}
