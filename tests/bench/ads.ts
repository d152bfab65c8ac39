/** Ads of any length for timing: an invented one, and that one grown by more of the same. */

const OPENING = `Home gym for sale, moving at the end of the month

Olympic plates, all with 2 inch holes, dry basement, no rust to speak of:
`;

const PROSE = [
  'Everything was bought new some years ago and has been used by one careful lifter ever since.',
  'You will need a truck or a van for the rack, and a second pair of hands to carry it up the stairs.',
  'No holds without a deposit; first to come with the money takes it home. Please no questions about splitting.',
  'The bar is 7 ft long with a 28.5 mm shaft, rolls true on the floor, and both sleeves spin well.',
  'I can show it on weekday evenings after 6 and on most Saturdays. Text works better than calling.',
];

/** About 2 kB, the length of a talkative ad. */
export const ORDINARY_AD = `${OPENING}- 4x45 lb
- 2 x 35 lb
- (2) 25s
- four 10 lb plates
- pair of 5s
- 2 - 2.5 lb

Also a 20 kg bar, a power rack with pins and hooks, and a flat bench. $850 obo for everything.

${[...PROSE, ...PROSE, ...PROSE, ...PROSE].join(' ')}
`;

/** One page of at least `bytes` ASCII characters: the ordinary ad with lines of plates and prose going on. */
export function grownAd(bytes: number): string {
  const parts = [ORDINARY_AD];
  let length = ORDINARY_AD.length;
  for (let n = 0; length < bytes; n++) {
    const part = n % 4 === 0 ? `- ${(n % 6) + 2}x${[45, 35, 25, 10, 5][n % 5]} lb\n` : `${PROSE[n % PROSE.length]}\n`;
    parts.push(part);
    length += part.length;
  }
  return parts.join('').slice(0, bytes);
}
