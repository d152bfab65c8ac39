/** German conditions told by how ordinary words go together, over the words of a sentence parted by single spaces and folded (ss for ß, a for ä). Common practice, no source. */
import type { Condition } from '../../../listing/reading.ts';

const way = (condition: Condition, ...says: string[]): { condition: Condition; says: RegExp } => ({
  condition,
  says: new RegExp(`\\b(?:${says.join('|')})\\b`, 'g'),
});
const FEW = '(?:[\\w-]+ ){0,3}';
const MADE = '(?:gebaut|(?:zusammen)?geschweisst|gezimmert|gegossen|gebastelt|gefertigt)';

export const WAYS = [
  way(
    'home-made',
    `(?:vo[nm] ${FEW}|selbst |selber |in eigenarbeit |zu hause |(?:habe? ich|haben wir|hat (?:mein|ein|unser)\\w*|aus) ${FEW})${MADE}`,
  ),
  way(
    'odd',
    `(?:der|die|das) (?:zweite|andere) ${FEW}(?:weg|verloren|verschwunden|fehlt|hat|behalte|behalten)`,
    '(?:zweite|zweiter|zweites|gegenstuck|partner) fehlt|ohne (?:gegenstuck|partner|zweite)',
  ),
] as const;
