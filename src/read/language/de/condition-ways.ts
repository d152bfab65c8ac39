/** German conditions told by how ordinary words go together, over the words of a sentence parted by single spaces. Common practice, no source. */
import type { Condition } from '../../../listing/reading.ts';

const way = (condition: Condition, says: string): { condition: Condition; says: RegExp } => ({
  condition,
  says: new RegExp(`(?<![\\wäöüß])(?:${says})(?![\\wäöüß])`, 'g'),
});
const FEW = '(?:[\\wäöüß-]+ ){0,3}';

export const WAYS = [
  way(
    'home-made',
    `(?:vo[nm] ${FEW}|selbst |selber |in eigenarbeit |zu hause )(?:gebaut|geschweißt|geschweisst|gezimmert|gegossen|gebastelt|gefertigt|zusammengeschweißt)` +
      `|(?:habe? ich|haben wir) ${FEW}(?:gebaut|geschweißt|gezimmert|gegossen)` +
      `|hat (?:mein|ein|unser)\\w* ${FEW}(?:gebaut|geschweißt|gezimmert|gegossen)` +
      `|aus ${FEW}(?:gebaut|gezimmert|zusammengebaut|zusammengeschweißt)`,
  ),
  way(
    'repainted',
    `(?:abgeschliffen|entrostet|gestrahlt|sandgestrahlt|gebürstet|grundiert) (?:, )?(?:und |dann )${FEW}(?:lackiert|gestrichen|gesprüht|bemalt)`,
  ),
  way(
    'odd',
    `(?:der|die|das) (?:zweite|andere) ${FEW}(?:weg|verloren|verschwunden|fehlt|hat|behalte|behalten)|(?:zweite|zweiter|zweites|gegenstück|partner|pendant) fehlt|ohne (?:gegenstück|partner|pendant|zweite)`,
  ),
] as const;
