/**
 * What a general-purpose recogniser of numbers and units finds: @microsoft/recognizers-text-number and
 * @microsoft/recognizers-text-number-with-unit 1.3.1 (MIT), which know nothing of this trade. Of the libraries of the registry these
 * give value, unit and place of each finding; compromise 14.17.0 joins the members of a list ("£89.50, 1.5 kg") to one number.
 */
import { NumberRecognizer } from '@microsoft/recognizers-text-number';
import { Culture, NumberWithUnitRecognizer } from '@microsoft/recognizers-text-number-with-unit';
import type { Found, Sort } from './found.ts';

const units = new NumberWithUnitRecognizer(Culture.English);
const MODELS = {
  number: new NumberRecognizer(Culture.English).getNumberModel(),
  money: units.getCurrencyModel(),
  weight: units.getDimensionModel(),
};

/** Unit by the library's name for it, and what its value is multiplied by. Other names stay as they are. */
const MONEY: Readonly<Record<string, readonly [string, number]>> = {
  Dollar: ['dollar', 1],
  Cent: ['dollar', 0.01],
  Pound: ['GBP', 1],
  Penny: ['GBP', 0.01],
  Pence: ['GBP', 0.01],
  Euro: ['EUR', 1],
  'United States dollar': ['USD', 1],
  'Canadian dollar': ['CAD', 1],
  'Australian dollar': ['AUD', 1],
};
const WEIGHTS: Readonly<Record<string, readonly [string, number]>> = { Pound: ['lb', 1], Kilogram: ['kg', 1] };

function unitOf(sort: Sort, name: unknown): readonly [string | null, number] | null {
  if (sort === 'number') return [null, 1];
  if (typeof name !== 'string') return null;
  return sort === 'weight' ? (WEIGHTS[name] ?? null) : (MONEY[name] ?? [name, 1]);
}

/**
 * Its findings of one sort; weights in pounds and kilograms only, and no unit without a number ("per kg"). It gets a line at a time:
 * over line ends it joins "$50" and the "4" of the next line to 50.04, and it takes half as long.
 */
export function findWithLibrary(text: string, sort: Sort): Found[] {
  const found: Found[] = [];
  let begin = 0;
  for (const line of text.split('\n')) {
    for (const { start, end, resolution } of line.trim() === '' ? [] : MODELS[sort].parse(line)) {
      const unit = unitOf(sort, resolution.unit);
      const { value } = resolution;
      if (unit === null || value === null || value === undefined) continue;
      found.push({
        sort,
        start: begin + start,
        end: begin + end + 1,
        value: Number(value) * unit[1],
        unit: unit[0],
        how: 'library',
      });
    }
    begin += line.length + 1;
  }
  return found;
}
