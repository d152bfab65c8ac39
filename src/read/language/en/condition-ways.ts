/**
 * English conditions told by how ordinary words go together, over the words of a sentence parted by single spaces; marks stand as words. Common
 * practice, no source.
 */
import type { Condition } from '../../../listing/reading.ts';

const SOMEONE =
  '(?:i|we|he|she|me|my|myself|ourselves|himself|hand|us|dad|father|husband|wife|brother|uncle|grandpa|grandfather|son|buddy|friend|mate|neighbou?r|cousin|boyfriend|nephew|guy|welder|carpenter|machinist|owner|somebody|someone|teacher|class|law)';
const MAKE = '(?:built|made|welded|fabricated|fabbed|poured|cast|constructed|machined|cobbled|crafted|knocked (?:up|together))';
const FEW = "(?:[\\w'-]+ ){0,3}";
const ONE = "(?:[\\w'-]+ )?";
const PAINTED = '(?:re)?(?:painted|sprayed|enameled|primed|finished|powder coated)';
/** Parts that a frame, a bench or a bar is put together with. */
const PARTS =
  '(?:bolts?|screws?|(?:wing |lock |threaded |star )?nuts?|washers?|(?:pop |hitch |safety )?pins?|(?:j|j -)[ -]?(?:hooks?|cups?)|hooks|safet(?:y|ies)|safety (?:bars?|arms?|straps?)|spott?er (?:bars?|arms?)|(?:end ?)?caps?|endcaps?|snap rings?|circlips?|retaining rings?|knobs?|levers?|feet|foot pads?|rubber feet|hardware|brackets?|rollers?|pull ?up bar|back ?rest|seat|pads?|cushions?)';

/** What is only wished for: "could use a coat of paint". */
const WISH = "(?<!\\b(?:needs?|could|should|can|want|wants|to|would|be|clean up) (?:[\\w'-]+ ){0,3})";

const way = (condition: Condition, says: string): { condition: Condition; says: RegExp } => ({
  condition,
  says: new RegExp(`(?<![\\w'])(?:${says})(?![\\w'])`, 'g'),
});

export const WAYS = [
  way(
    'home-made',
    `${MAKE} (?:up )?(?:by (?!(?:a )?(?:certified|professional|pro|licensed) )(?:${ONE}${ONE}(?:${SOMEONE}))|myself|ourselves|at home|from scratch|in (?:my|our|a|his) (?:garage|shed|basement|workshop|barn))` +
      `|${MAKE} (?:up )?(?:out of|from) (?!(?:the|a) (?:factory|maker|store|shop|company))${ONE}\\w+` +
      `|${MAKE} (?:of|with) ${ONE}(?:[24] ?x ?[46]\\w*|[24] x [46] s?|lumber|plywood|pallets?|scrap)` +
      `|(?:had|got) ${FEW}(?:${SOMEONE}) (?:weld|build|make|fabricate)` +
      `|${SOMEONE} ${ONE}(?:welded|fabricated|fabbed|poured|cast|machined|cobbled|knocked (?:up|together))` +
      `|(?:dad|father|husband|brother|uncle|grandpa|grandfather|son|buddy|friend|mate|neighbou?r|cousin|nephew|law) (?:built|made) (?!room|space|sure|an? (?:mess|deal|offer)|me )\\w+` +
      '|(?:home|hand|shop|farm|carpenter|backyard) ?-? ?(?:poured|cast|welded|fabricated|fabbed|made|built)',
  ),
  way(
    'repainted',
    `${WISH}(?:cleaned|sanded|stripped|blasted|sandblasted|brushed|treated|scraped|derusted|wheel|wheeled|primed)(?: [\\w'-]+){0,4}(?: ,)? (?:and|then|&) ${ONE}${ONE}${PAINTED}` +
      `|${WISH}(?:fresh|new|nice|second|got|has|had|gave|given|put|with) ${FEW}(?:coats?|layer|lick) of ${FEW}(?:paint|enamel|primer)` +
      `|${WISH}(?:fresh|new) ${ONE}paint` +
      `|(?:painted|sprayed|spray painted|powder coated) ${FEW}${ONE}(?:by (?:me|my|us|hand|a|some\\w+)|myself|ourselves)` +
      `|(?:(?:i|we|he|owner|someone|somebody) ${ONE}(?:spray )?|(?:had|got) ${ONE}${ONE})(?:painted|sprayed|powder coated)` +
      '|(?:have|has|had|been|were|got) (?:all |both |just |recently |since |been )?(?:repainted|resprayed|spray painted|painted over|rattle canned)',
  ),
  way(
    'missing-parts',
    `(?:missing|lacks|lacking|without|minus|short|lost|misplaced) (?:a |an |one |two |the |some |its |of |couple |few |my |both |\\d )*${ONE}${PARTS}` +
      '|needs (?:an? |one |two |some |new |couple |of )*(?:bolts?|nuts?|screws?|pins?|knobs?|washers?|hardware)' +
      `|${PARTS} ${FEW}(?:missing|lost|absent|misplaced)` +
      `|(?:bolts?|nuts?|screws?|knobs?|pins?|caps?|rings?|springs?|feet) (?:(?:is|are|has|have|long) ){0,2}gone` +
      `|(?:everything|all|complete) ${FEW}(?:except|but|minus|save for) (?:for )?${FEW}${PARTS}`,
  ),
  way(
    'split-hub',
    "(?:delaminat\\w+|separat(?:ing|ed)|coming (?:apart|away|loose|off)|(?:pulled|pulling|split|splitting) (?:away|off|out|loose|at|by|near|around)) (?:[\\w'-]+ ){0,3}(?:hub|insert|(?:center|centre|steel|metal) ring|bushing)s?",
  ),
] as const;
