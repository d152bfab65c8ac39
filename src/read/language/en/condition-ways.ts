/**
 * English conditions told by how ordinary words go together, over the words of a sentence parted by single spaces; marks stand as words. Common
 * practice, no source.
 */
import type { Condition } from '../../../listing/reading.ts';

const WORD = "(?:[\\w'-]+ )";
const FEW = `${WORD}{0,3}`;
const KIN =
  '(?:d?dad|father|husband|brother|uncle|grandpa|grandfather|son|buddy|friend|mate|neighbou?r|cousin|nephew|law|parent|class|teacher|owner|guy|previous owner)';
const HE = `(?:i|we|he|she|${KIN})`;
const MAKE = '(?:built|made|welded|fabricated|fabbed|poured|cast|machined|turned|cobbled|knocked (?:up|together))';
const PAINTED = '(?:re)?(?:painted|sprayed|enameled|primed|finished|powder coated)';
/** Parts that a frame, a bench or a bar is put together with. */
const PARTS =
  '(?:bolts?|screws?|(?:\\w+ )?nuts?|washers?|(?:\\w+ )?pins?|j ?-? ?(?:hook|cup)s?|hooks|safet(?:y|ies)|(?:safety|spotter) (?:bar|arm|strap)s?|(?:end ?)?caps?|\\w+ rings?|knobs?|feet|hardware|brackets?|rollers?|back ?rest|seat|pads?|cushions?)';
/** What is only wished for: "could use a coat of paint". */
const WISH = `(?<!\\b(?:needs?|could|should|can|wants?|to|would|be|clean up) ${FEW})`;

const way = (condition: Condition, ...says: string[]): { condition: Condition; says: RegExp } => ({
  condition,
  says: new RegExp(`(?<![\\w'])(?:${says.join('|')})(?![\\w'])`, 'g'),
});

export const WAYS = [
  way(
    'home-made',
    `${MAKE} (?:it )?(?:up )?(?:by (?!(?:a )?(?:certified|pro) )${WORD}{0,2}(?:${KIN}|me|us|hand)|myself|himself|ourselves|from scratch|in (?:my|our|a|his|the) (?:garage|shed|shop|basement|barn))`,
    `${MAKE} (?:up )?(?:out of|from) (?!(?:the|a) (?:factory|maker|store|shop|company))\\w+`,
    `${MAKE} (?:of|with) ${WORD}?(?:[24] ?x ?[46]\\w*|lumber|plywood|pallets?|scrap)`,
    `(?:had|got) ${FEW}(?:weld|build|make|fabricate)`,
    `${HE} ${WORD}?(?:welded|fabricated|fabbed|poured|cast|machined|cobbled|knocked (?:up|together)|turned down)`,
    `(?:he|${KIN}) (?:built|made) (?!room|space|sure|up|an? (?:mess|deal|offer)|me )\\w+`,
    '(?:i|we) (?:built|made) (?:this|these|them|both|it|the|from|out)(?! (?:up|to|gym|house|mistake|most))',
    '(?:home|shop|farm|carpenter|backyard) ?-? ?(?:poured|cast|welded|fabricated|fabbed|made|built)',
  ),
  way(
    'repainted',
    `${WISH}(?:cleaned|sanded|stripped|\\w*blasted|brushed|treated|scraped|derusted|wheel|primed)(?: [\\w'-]+){0,4}(?: ,)? (?:and|then|&) ${WORD}{0,2}${PAINTED}`,
    `${WISH}(?:fresh|new|nice|second|got|has|had|gave|given|put|with) ${FEW}(?:coats?|layer) of ${FEW}(?:paint|enamel|primer)`,
    `${WISH}(?:fresh|new) ${WORD}?paint`,
    `(?:painted|sprayed|powder coated) ${WORD}{0,4}(?:by (?:me|my|us|hand|a|some\\w+)|myself|ourselves)`,
    `(?:(?:i|we|he|owner|some(?:one|body)) ${WORD}?(?:spray )?|(?:had|got) ${WORD}{0,2})(?:painted|sprayed|powder coated)`,
    '(?:have|has|had|been|were|got) (?:all |both |just |recently |since |been )?(?:repainted|resprayed|spray painted|painted over)',
  ),
  way(
    'missing-parts',
    `(?:missing|lacks|lacking|without|minus|short|lost|misplaced) (?:(?:an?|one|two|the|some|its|of|couple|few|my|both|\\d) )*${WORD}?${PARTS}`,
    '(?:needs) (?:(?:an?|one|two|some|new|couple|of) )*(?:bolts?|nuts?|screws?|pins?|knobs?|washers?|hardware)',
    `${PARTS} ${FEW}(?:missing|lost|absent|misplaced)`,
    `(?:bolts?|nuts?|screws?|knobs?|pins?|caps?|rings?|springs?|feet) (?:(?:is|are|has|have|long) ){0,2}gone`,
    `(?:everything|all|complete) ${FEW}(?:except|but|minus|save for) (?:for )?${FEW}${PARTS}`,
  ),
] as const;
