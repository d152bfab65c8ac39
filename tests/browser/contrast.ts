/** Contrast of words with what they stand on (WCAG 2.2, 1.4.3): for drawings, of which axe-core can't tell the ground. */
import type { Page } from 'puppeteer-core';

/** Contrast of two opaque colours (WCAG 2.2, "contrast ratio" and "relative luminance"). */
export function contrast(one: string, other: string): number {
  const luminance = (color: string): number => {
    const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? [])
      .map((part) => Number(part) / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** Marks what axe-core was not sure of; see `violations`. */
export const UNSURE = 'data-unsure';

/** Words in drawings, and those that are marked, whose contrast is below 4.5, or whose ground can't be told. */
export async function pale(page: Page): Promise<readonly string[]> {
  const found = await page.evaluate((mark) => {
    const opaque = (color: string): boolean => /^rgb\(/.test(color);
    /** The halo around the letters, else the last shape that was drawn under their middle, else the colour behind the whole. */
    const groundOf = (one: Element): string => {
      const drawing = one.closest('svg');
      const own = getComputedStyle(one);
      if (own.paintOrder.startsWith('stroke') && Number.parseFloat(own.strokeWidth) >= 2) return own.stroke;
      if (drawing) {
        const { left, top, width, height } = one.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        const under = [...drawing.querySelectorAll('rect, circle, path, polygon')].filter((shape) => {
          const place = shape.getBoundingClientRect();
          const covers = place.left <= x && x <= place.right && place.top <= y && y <= place.bottom;
          const before = shape.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING;
          return covers && before && getComputedStyle(shape).fill !== 'none';
        });
        const last = under.at(-1);
        if (last) return getComputedStyle(last).fill;
      }
      for (let at: Element | null = drawing ?? one; at; at = at.parentElement) {
        const { backgroundColor, backgroundImage } = getComputedStyle(at);
        if (backgroundImage !== 'none') return backgroundImage;
        if (!/^rgba.*, 0\)$/.test(backgroundColor)) return backgroundColor;
      }
      return 'nothing';
    };
    const faded = (one: Element | null): boolean =>
      one !== null && (getComputedStyle(one).opacity !== '1' || faded(one.parentElement));
    return [...document.querySelectorAll(`svg text, svg tspan, [${mark}]`)]
      .filter((one) => [...one.childNodes].some((node) => node instanceof Text && node.data.trim()) && one.checkVisibility())
      .map((one) => {
        const { fill, color } = getComputedStyle(one);
        const [ink, ground] = [one instanceof SVGElement ? fill : color, groundOf(one)];
        one.removeAttribute(mark);
        return { ink, ground, sure: opaque(ink) && opaque(ground) && !faded(one), html: one.outerHTML.slice(0, 120) };
      });
  }, UNSURE);
  return found
    .filter(({ ink, ground, sure }) => !sure || contrast(ink, ground) < 4.5)
    .map(({ ink, ground, sure, html }) => `${sure ? contrast(ink, ground).toFixed(2) : 'unsure'}: ${ink} on ${ground}: ${html}`);
}
