/**
 * Names in the language of the country, of the few places that GeoNames' short lists have under their English name only. It belongs to
 * the gazetteer's data, but no package has it: GeoNames' table of other names is a hundred times as large as all that is used here.
 */
const OTHER: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  DE: { munich: ['munchen', 'muenchen'], koln: ['cologne'], nurnberg: ['nuremberg'], hannover: ['hanover'] },
  AT: { vienna: ['wien'] },
  CH: { geneva: ['geneve', 'genf'], luzern: ['lucerne'] },
};

/** Hamlets may have such a name too; only the city has the other. */
const CITY = 50_000;

/** Folded; mostly none. */
export const otherNames = (country: string, folded: string, people: number): readonly string[] =>
  people < CITY ? [] : (OTHER[country]?.[folded] ?? []);
