import { describe, expect, it } from 'vitest';
import { readElement, readRanges } from '../../../extension/capture/readers/index.ts';
import { rangesOf } from '../../../extension/capture/span-ranges.ts';
import { show } from './page.ts';

const node = (selector: string): Node => {
  const found = document.querySelector(selector)?.firstChild;
  if (!found) throw new Error(`no ${selector}`);
  return found;
};
const range = (from: Node, start: number, to: Node, end: number): Range => {
  const made = document.createRange();
  made.setStart(from, start);
  made.setEnd(to, end);
  return made;
};

describe('a selection', () => {
  it('is read from its first to its last character, with its lines', () => {
    show('<h1>Set</h1><ul><li id="a">4 x 45 lb</li><li id="b">2 x 25 lb</li></ul><p>$900</p>');
    const captured = readRanges([range(node('#a'), 2, node('#b'), 6)], { origin: 'selection' });
    expect(captured?.listing.text).toBe('• x 45 lb\n• 2 x 25');
    expect(captured?.listing).toMatchObject({ title: 'Set', priceText: '$900', origin: 'selection' });
  });
  it('knows what is struck around it', () => {
    show('<del><p id="p">gone 45s</p></del>');
    expect(readRanges([range(node('#p'), 0, node('#p'), 4)], { origin: 'selection' })?.listing.struck).toEqual([
      { start: 0, end: 4 },
    ]);
  });
  it('may be several ranges, as Firefox has them for cells', () => {
    show('<table><tr><td id="a">4</td><td id="x">no</td></tr><tr><td id="b">2</td><td id="y">no</td></tr></table>');
    const cells = ['#b', '#a'].map((cell) => range(node(cell), 0, node(cell), 1));
    expect(readRanges(cells, { origin: 'selection' })?.listing.text).toBe('4\n2');
  });
  it('is null when there is none', () => expect(readRanges([], { origin: 'selection' })).toBeNull());
});

describe('spans of the text', () => {
  it('lead back to the words in the page, over blanks, bullets and elements', () => {
    show('<main><p>Cast   iron\n plates</p><ul><li>4 x <b>45</b> lb</li></ul></main>');
    const captured = readElement(document.body, { origin: 'pick' });
    const words = (text: string): string[] => {
      const start = captured.listing.text.indexOf(text);
      return rangesOf(captured, { start, end: start + text.length }).map(String);
    };
    expect(captured.listing.text).toBe('Cast iron plates\n• 4 x 45 lb');
    expect(words('iron')).toEqual(['iron']);
    expect(words('Cast iron plates')).toEqual(['Cast', 'iron', 'plates']);
    expect(words('• 4 x 45 lb')).toEqual(['4 x', '45', 'lb']);
    expect(words('5')).toEqual(['5']);
  });
  it('lead nowhere when the page has changed', () => {
    show('<p id="p">4 x 45 lb</p><p id="q">2 x 25</p>');
    const captured = readElement(document.body, { origin: 'pick' });
    (node('#p') as Text).data = '9 x 99 lb';
    document.querySelector('#q')?.remove();
    expect(rangesOf(captured, { start: 0, end: captured.listing.text.length })).toEqual([]);
  });
});
