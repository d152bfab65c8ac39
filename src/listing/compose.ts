import type { PageListing } from './page-listing.ts';

/** The text that is read, and by how much the spans of `listing.text` are shifted in it. */
export interface Composed {
  readonly text: string;
  readonly shift: number;
}

const squeeze = (value: string): string => value.replace(/\s+/g, ' ').trim().toLowerCase();

/** Title line and body as one text. The title is left out when the body already begins with it. */
export function composeText(listing: PageListing): Composed {
  const title = listing.title.trim();
  if (title === '' || squeeze(listing.text.slice(0, title.length * 2 + 200)).startsWith(squeeze(title))) {
    return { text: listing.text, shift: 0 };
  }
  return { text: `${title}\n${listing.text}`, shift: title.length + 1 };
}
