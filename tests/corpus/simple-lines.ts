/** Lines of an ad that speak for themselves: "4x45 lb plates", "• 2 x 20 kg", "(2) 25s - $20". Such lines may stand in any order, and one may go. */

export interface Line {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export function linesOf(text: string): Line[] {
  let start = 0;
  return text.split('\n').map((line) => {
    const place = { text: line, start, end: start + line.length };
    start += line.length + 1;
    return place;
  });
}

const LONGEST = 70;
const COUNT_AND_WEIGHT = /\d ?(?:x|-|×|×) ?\d|\(\d+\)|\d+ ?(?:lbs?|kg|#|s)\b/i;
/** Words that point to other lines: "both", "the rest", "same as above", "each of these"; and two goods in one line. */
const POINTS_ELSEWHERE =
  /\b(?:all|both|rest|same|above|below|these|those|them|total|sold|gone|each of|plus|also|everything|set)\b|:$|\?/i;

const isSimple = ({ text }: Line): boolean =>
  text.length <= LONGEST && /^\W{0,4}\d/.test(text) && COUNT_AND_WEIGHT.test(text) && !POINTS_ELSEWHERE.test(text);

/** Runs of two or more simple lines right under each other, all with a price or all without. */
export function simpleRuns(text: string): Line[][] {
  const runs: Line[][] = [];
  let run: Line[] = [];
  const priced = ({ text: line }: Line): boolean => /[$£€]/.test(line);
  for (const line of linesOf(text)) {
    const [first] = run;
    if (isSimple(line) && (!first || priced(first) === priced(line))) run.push(line);
    else {
      if (run.length > 1) runs.push(run);
      run = isSimple(line) ? [line] : [];
    }
  }
  if (run.length > 1) runs.push(run);
  return runs;
}
