/** A corpus case: the ad and what a careful human reader takes from it. See README.md for the rules of labels. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PageListing } from '../../src/listing/page-listing.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import type { Kind } from '../../src/listing/reading.ts';
import type { Weight } from '../../src/units/mass.ts';

export interface LabelItem {
  kind: Kind;
  count?: number | null;
  unitWeight?: string | null;
  totalWeight?: string | null;
  fits?: string | null;
  boreMm?: number | null;
  shaftMm?: number | null;
  lengthMm?: number | null;
  material?: string | null;
  condition?: string[];
  ownPrice?: number | null;
  implied?: boolean;
}

export interface Label {
  aboutThisTrade?: boolean;
  wanted?: boolean;
  asking?: {
    amount?: number | null;
    currency?: string | null;
    basis?: string;
    unitAmount?: number | null;
    firm?: boolean;
    openToOffers?: boolean;
  };
  items?: LabelItem[];
  statedTotal?: string | null;
  doubtful?: string[];
  lang?: string;
}

export interface Case {
  readonly name: string;
  readonly text: string;
  readonly html: boolean;
  readonly label: Label;
}

/** A weight as labels write it: "45 lb", "2.5 kg". Throws on anything else. */
export function weightOf(written: string | null | undefined): Weight | null {
  if (written === null || written === undefined) return null;
  const [value = '', unit] = written.split(' ');
  if (!Number.isFinite(Number(value)) || (unit !== 'lb' && unit !== 'kg')) throw new Error(`label: "${written}" is no weight`);
  return { value: Number(value), unit };
}

export function loadCases(root: string): Case[] {
  const cases: Case[] = [];
  for (const set of readdirSync(root).sort()) {
    for (const file of readdirSync(join(root, set)).sort()) {
      const content = readFileSync(join(root, set, file), 'utf8');
      const at = content.lastIndexOf('\n=====');
      if (at === -1) throw new Error(`${set}/${file}: no line of =====`);
      const label = JSON.parse(content.slice(content.indexOf('\n', at + 1) + 1)) as Label;
      cases.push({ name: `${set}/${file}`, text: content.slice(0, at), html: file.endsWith('.html'), label });
    }
  }
  return cases;
}

/** The listing of a case; HTML goes through the same readers as a page in the browser. */
export async function listingOf(one: Case): Promise<PageListing> {
  if (!one.html) return listingFromText(one.text, 'file');
  const { JSDOM } = await import('jsdom');
  const { readDocument } = await import('../../extension/capture/readers/index.ts');
  return readDocument(new JSDOM(one.text).window.document, { origin: 'file' }).listing;
}
