/** All words that a screen shows or has read out, and which are no string of ours: for a made language, in which ours stand in brackets. */
import type { Page } from 'puppeteer-core';

/**
 * By text node, and in what names a thing or is its tip. What can be chosen counts where the choice is seen. Names of places come out of a
 * list, names of currencies out of the browser, and what is marked as being in a language is the ad's, or for its seller.
 * `except`: what else is left out.
 */
export const words = (page: Page, except = 'script'): Promise<string[]> =>
  page.evaluate((more) => {
    const NOT_OURS = `style, textarea, body [lang], [data-place], [data-path="currency"], [data-path="exchange.add"], ${more}`;
    const isSeen = (one: Element): boolean => (one.closest('select') ?? one).checkVisibility() && !one.closest(NOT_OURS);
    const seen: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement: around, textContent: text } = walker.currentNode;
      if (around && isSeen(around)) seen.push(text ?? '');
    }
    for (const one of document.body.querySelectorAll('*')) {
      if (!isSeen(one)) continue;
      for (const name of ['aria-label', 'aria-valuetext', 'aria-roledescription', 'placeholder', 'title', 'alt', 'label'])
        if (one.getAttribute(name)) seen.push(one.getAttribute(name) ?? '');
    }
    return [...seen, document.title];
  }, except);

/** Units, codes and names that are the same everywhere, and the words of the tests' own ads. */
const COMMON =
  /\b(?:Ironsift|lb|lbs|kg|mm|cm|in|ft|mi|km|mph|kmh|h|MPa|psi|[A-Z]{3}|JSON|CSV|IRS|AAA|HMRC|BRKG|Alt|Shift|Umschalt|Esc|Enter|Elmwick)\b/g;
/** Months, which Intl writes. */
const MONTHS = /\b(?:janv|févr|mars|avr|mai|juin|juil|août|sept|oct|nov|déc)\b\.?/g;
const ORDERS = /[\u202a-\u202e\u2066-\u2069]/g;

/** Without the words of these ads, whole or cut short by an ellipsis. */
export const ours = (text: string, ads: readonly string[]): string => {
  let rest = text.replace(ORDERS, '');
  for (const ad of ads.map((one) => one.replace(ORDERS, ''))) {
    rest = rest.replaceAll(ad, ' ');
    const cut = rest.indexOf('…');
    if (cut > 0 && ad.startsWith(rest.slice(0, cut))) rest = rest.slice(cut + 1);
  }
  return rest;
};

/** Words of three letters and more that stand in no brackets, and in no ad. */
export const bare = (text: string, ads: readonly string[]): string[] => {
  let rest = ours(text, ads);
  for (let before = ''; before !== rest; ) {
    before = rest;
    rest = rest.replace(/\[[^[\]]*\]/g, ' ');
  }
  return (
    rest
      .replace(COMMON, ' ')
      .replace(MONTHS, ' ')
      .match(/\p{L}{3,}/gu) ?? []
  );
};
