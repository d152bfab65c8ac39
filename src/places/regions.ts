/** States and provinces: GeoNames' code, how it is written behind a place, and its names. Postal and licence-plate-like short forms. */
import { foldName } from './fold.ts';

export interface Region {
  /** As it is written behind a place: "IL", "Bayern". */
  readonly short: string;
  readonly names: readonly string[];
}

/** Name by the code that is also its short form: the US Postal Service's abbreviations (Publication 28, appendix B), and Switzerland's. */
const byCode = (table: string): Readonly<Record<string, Region>> =>
  Object.fromEntries(
    table
      .trim()
      .split(/\s*\n\s*/)
      .map((line) => {
        const [code = '', short = code, ...names] = line.split('|');
        return [code, { short: short || code, names }];
      }),
  );

const US = byCode(`AL||Alabama
AK||Alaska
AZ||Arizona
AR||Arkansas
CA||California|Calif
CO||Colorado
CT||Connecticut|Conn
DE||Delaware
DC||District of Columbia|D C
FL||Florida|Fla
GA||Georgia
HI||Hawaii
ID||Idaho
IL||Illinois|Ill
IN||Indiana
IA||Iowa
KS||Kansas
KY||Kentucky
LA||Louisiana
ME||Maine
MD||Maryland
MA||Massachusetts|Mass
MI||Michigan|Mich
MN||Minnesota|Minn
MS||Mississippi
MO||Missouri
MT||Montana
NE||Nebraska
NV||Nevada
NH||New Hampshire
NJ||New Jersey
NM||New Mexico
NY||New York
NC||North Carolina
ND||North Dakota
OH||Ohio
OK||Oklahoma
OR||Oregon
PA||Pennsylvania|Penn
RI||Rhode Island
SC||South Carolina
SD||South Dakota
TN||Tennessee|Tenn
TX||Texas|Tex
UT||Utah
VT||Vermont
VA||Virginia
WA||Washington
WV||West Virginia
WI||Wisconsin|Wis
WY||Wyoming`);

/** Abbreviations as in Germany's ISO 3166-2 codes, and a few that papers use. */
const DE = byCode(`01|Baden-Württemberg|BW|BaWü
02|Bayern|BY|Bavaria
03|Bremen|HB
04|Hamburg|HH
05|Hessen|HE|Hesse
06|Niedersachsen|NI|NDS|Lower Saxony
07|Nordrhein-Westfalen|NW|NRW|North Rhine-Westphalia
08|Rheinland-Pfalz|RP|RLP|Rhineland-Palatinate
09|Saarland|SL
10|Schleswig-Holstein|SH
11|Brandenburg|BB
12|Mecklenburg-Vorpommern|MV|MeckPomm
13|Sachsen|SN|Saxony
14|Sachsen-Anhalt|ST|LSA|Saxony-Anhalt
15|Thüringen|TH|Thuringia
16|Berlin|BE`);

const GB = byCode(`ENG|England
SCT|Scotland
WLS|Wales
NIR|Northern Ireland|NI`);

const CA = byCode(`01|AB|Alberta
02|BC|British Columbia
03|MB|Manitoba
04|NB|New Brunswick
05|NL|Newfoundland and Labrador|Newfoundland
07|NS|Nova Scotia
08|ON|Ontario|Ont
09|PE|Prince Edward Island|PEI
10|QC|Quebec|PQ
11|SK|Saskatchewan|Sask
12|YT|Yukon
13|NT|Northwest Territories
14|NU|Nunavut`);

const AU = byCode(`01|ACT|Australian Capital Territory
02|NSW|New South Wales
03|NT|Northern Territory
04|QLD|Queensland
05|SA|South Australia
06|TAS|Tasmania
07|VIC|Victoria
08|WA|Western Australia`);

const AT = byCode(`01|Burgenland
02|Kärnten|Carinthia
03|Niederösterreich|NÖ|Lower Austria
04|Oberösterreich|OÖ|Upper Austria
05|Salzburg
06|Steiermark|Styria
07|Tirol|Tyrol
08|Vorarlberg
09|Wien|Vienna`);

const CH = byCode('AG AI AR BE BL BS FR GE GL GR JU LU NE NW OW SG SH SO SZ TG TI UR VD VS ZG ZH'.replaceAll(' ', '\n'));

/** Regions of Ireland and New Zealand are in nobody's ads: their places are told apart by what is near. */
const REGIONS: Readonly<Record<string, Readonly<Record<string, Region>>>> = { US, DE, GB, CA, AU, AT, CH };

const COUNTRY_NAMES: Readonly<Record<string, readonly string[]>> = {
  US: ['USA', 'U.S.A.', 'United States'],
  DE: ['Germany', 'Deutschland'],
  GB: ['UK', 'GB', 'United Kingdom', 'Great Britain'],
  CA: ['Canada'],
  AU: ['Australia'],
  AT: ['Austria', 'Österreich'],
  CH: ['Switzerland', 'Schweiz'],
  IE: ['Ireland'],
  NZ: ['New Zealand', 'NZ'],
};

/** The region as it is written behind a place; null when there is none to write. */
export const regionShort = (country: string, code: string): string | null => REGIONS[country]?.[code]?.short ?? null;

/** Which places a word behind a name means: those of a region, or of a whole country. */
export interface Within {
  readonly country: string;
  /** Null for the whole country. */
  readonly region: string | null;
}

/** Folded names of regions and countries, for these countries. One name may mean several. */
export function regionNames(countries: readonly string[]): ReadonlyMap<string, readonly Within[]> {
  const found = new Map<string, Within[]>();
  const add = (name: string, within: Within) => {
    const key = foldName(name);
    const known = found.get(key) ?? [];
    if (!known.some((one) => one.country === within.country && one.region === within.region)) found.set(key, [...known, within]);
  };
  for (const country of countries) {
    for (const [code, { short, names }] of Object.entries(REGIONS[country] ?? {})) {
      for (const name of [short, ...names]) add(name, { country, region: code });
    }
    for (const name of COUNTRY_NAMES[country] ?? []) add(name, { country, region: null });
  }
  return found;
}
