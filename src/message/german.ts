/**
 * What is written to a seller, in German: an ad is answered in its own language, whatever the language of the extension is. The keys are
 * those of message.json and of the questions, with the same places; the tests hold the two against each other.
 */

import { type Speaker, type Strings, speaker } from '../words/say.ts';
import { ENGLISH } from './english.ts';

export const GERMAN: Strings = {
  message_greeting: 'Guten Tag,',
  message_interest: 'ich interessiere mich für Ihre Anzeige „{title}“.',
  message_interest_untitled: 'ich interessiere mich für Ihre Anzeige.',
  message_only: 'Davon würde ich nur dies nehmen: {goods}.',
  message_all_there: 'Ist alles noch da?',
  message_there: 'Ist es noch zu haben?',
  message_ask: 'Bevor ich losfahre, habe ich {n} Fragen:',
  message_ask_one: 'Bevor ich losfahre, habe ich eine Frage:',
  message_offer: 'Wenn alles passt, könnte ich {open} anbieten: {because}.',
  message_because_work: 'es ist noch etwas daran zu tun',
  message_because_drive: 'ich hätte {distance} Weg dorthin und ebenso viel zurück',
  message_because_rate: 'ich sehe solche Scheiben gebraucht für etwa {rate} angeboten',
  message_because_cash: 'ich zahle bar und nehme alles auf einmal mit',
  message_because_cash_for_it: 'ich zahle bar und nehme es gleich mit',
  message_price_fine: 'Mit {price} bin ich einverstanden, wenn alles so ist wie beschrieben.',
  message_pickup:
    'Ich könnte abends oder am Wochenende kommen, bar zahlen und selbst einladen. Wann würde es Ihnen passen, und wohin soll ich kommen?',
  message_closing: 'Vielen Dank und freundliche Grüße',
  message_refuse_thanks: 'Vielen Dank fürs Zeigen!',
  message_refuse_bent: 'Die Stange ist leider nicht mehr gerade, und damit kann ich nicht sicher trainieren.',
  message_refuse_shaft: 'Die Stange ist für meine Hände leider zu dick.',
  message_refuse_bar_size: 'Die Stange passt leider nicht zu meinen Scheiben und meinem Rack.',
  message_refuse_holes: 'Die Scheiben passen leider nicht auf meine Stange.',
  message_refuse_cracked: 'Daran ist leider ein Riss, und das möchte ich nicht belasten.',
  message_refuse_cement: 'Ich suche leider Scheiben aus Eisen, nicht mit Zementfüllung.',
  message_refuse_stands: 'Einzelne Ständer sind mir zum Drücken leider nicht sicher genug.',
  message_refuse_height: 'Es ist leider zu hoch für meinen Raum.',
  message_refuse_other: 'Es ist leider doch nicht das, was ich brauche.',
  message_refuse_price: 'So, wie es ist, könnte ich {most} dafür geben und es gleich mitnehmen.',
  message_refuse_no_price: 'So, wie es ist, lohnt es sich für mich leider nicht.',
  message_refuse_frame_cracked: 'Im Rahmen ist leider ein Riss, und damit kann ich nicht sicher trainieren.',
  message_refuse_frame_bent: 'Der Rahmen ist leider verbogen, und damit kann ich nicht sicher trainieren.',
  message_refuse_bar_cracked: 'In der Stange ist leider ein Riss, und damit kann ich nicht sicher trainieren.',
  message_refuse_handle_bent: 'Der Griff ist leider verbogen, und das möchte ich nicht heben.',
  message_refuse_hub: 'Die Nabe ist leider lose, und das möchte ich nicht belasten.',
  message_refuse_head: 'Ein Kopf sitzt leider lose auf dem Griff, und das möchte ich nicht heben.',
  message_refuse_collars: 'Die Verschlüsse halten leider nicht.',
  message_refuse_catches:
    'Die Ablagen oder Haken fehlen leider oder sind beschädigt, und ohne sie kann ich nicht sicher trainieren.',
  message_refuse_parts: 'Es fehlen leider Teile.',
  message_refuse_part_broken: 'Daran ist leider etwas verbogen oder gebrochen.',
  message_refuse_wobbly: 'Es steht mir leider nicht fest genug.',
  message_refuse_home_made: 'Es ist selbst gebaut, und ich weiß leider nicht, was es hält.',
  message_refuse_sleeves: 'Die Hülsen drehen leider nicht, wie sie sollten.',
  message_refuse_bow: 'Die Stange ist leider nicht ganz gerade, und ich kann mich nicht auf sie verlassen.',
  message_refuse_rust: 'Es ist leider mehr Rost daran, als ich behandeln kann.',
  message_refuse_worn: 'Es ist leider stärker abgenutzt, als ich gehofft hatte.',
  message_refuse_torn: 'Der Bezug ist leider gerissen.',
  message_refuse_bench_size: 'Die Bank hat leider nicht das richtige Maß für mich.',
  message_refuse_shaft_thin: 'Die Stange ist leider dünner, als ich suche.',
  message_refuse_bumper_size: 'Die Scheiben sind leider kleiner, als ich brauche.',
  message_refuse_floor: 'Es müsste an Wand oder Boden befestigt werden, und dafür habe ich leider keinen Platz.',
  message_refuse_rating: 'Es ist leider für weniger zugelassen, als ich brauche.',
  message_refuse_rest: 'Für den Rest könnte ich {most} geben und ihn gleich mitnehmen.',
  message_refuse_goodbye: 'Deshalb lasse ich es lieber stehen und wünsche Ihnen viel Erfolg beim Verkauf.',
  message_refuse_closing: 'Sonst lasse ich es lieber stehen und wünsche Ihnen viel Erfolg beim Verkauf.',
  question_price: 'Was möchten Sie für alles zusammen haben?',
  question_price_of_it: 'Was möchten Sie dafür haben?',
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
