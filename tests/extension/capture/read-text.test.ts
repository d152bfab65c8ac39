import { describe, expect, it } from 'vitest';
import { readText } from '../../../extension/capture/readers/read-text.ts';
import { computedSight } from '../../../extension/capture/readers/sight.ts';
import { seen, show, textOf } from './page.ts';

describe('lines', () => {
  it.each([
    ['blocks stand on lines of their own', '<p>Bar</p><p>Plates</p><div><div>Rack</div></div>', 'Bar\nPlates\nRack'],
    ['inline elements do not break a line', '4 <b>x</b> <i>45</i><span> lb</span>', '4 x 45 lb'],
    ['a break is a line, two leave an empty one', 'Bar<br>Plates<br><br><br>Rack', 'Bar\nPlates\n\nRack'],
    ['a break at the end of a block adds nothing', '<p>Bar<br></p><p>Plates</p>', 'Bar\nPlates'],
    ['blanks and line ends of the source are one blank', '<p>  4 \n\t x   45&nbsp; lb </p>', '4 x 45 lb'],
    ['preformatted lines stay', '<pre>45 lb  4\n25 lb  2</pre>', '45 lb  4\n25 lb  2'],
    ['pre-line keeps lines and not blanks', '<p style="white-space: pre-line">45   x 4\n25 x 2</p>', '45 x 4\n25 x 2'],
    ['kept lines are inherited', '<pre><code>45 x 4\n25 x 2</code></pre>', '45 x 4\n25 x 2'],
    ['soft hyphens and zero-width blanks go', 'bum&shy;per pla&#8203;tes', 'bumper plates'],
  ])('%s', (_, html, text) => expect(textOf(html)).toBe(text));
});

describe('lists and tables', () => {
  it.each([
    ['items carry a bullet', '<ul><li>4 x 45</li><li>2 x 25</li></ul>', '• 4 x 45\n• 2 x 25'],
    ['paragraphs in items stay behind their bullet', '<ul><li><p>4 x 45</p><p>rusty</p></li></ul>', '• 4 x 45\nrusty'],
    ['an empty item leaves nothing', '<ul><li></li><li> </li></ul><p>Bar</p>', 'Bar'],
    ['lists in lists', '<ul><li>Plates<ol><li>45s</li></ol></li></ul>', '• Plates\n• 45s'],
    [
      'cells are set apart by tabs',
      '<table><tr><th>Count</th><th>Weight</th></tr><tr><td>4</td><td>45 lb</td></tr></table>',
      'Count\tWeight\n4\t45 lb',
    ],
    ['an empty cell keeps its column', '<table><tr><td>45</td><td></td><td>4</td></tr></table>', '45\t\t4'],
    ['blocks in cells do not break the row', '<table><tr><td><p>45</p></td><td><div>4<br></div></td></tr></table>', '45\t4'],
    ['a whole page in a cell keeps its lines', '<table><tr><td><p>Bar</p><p>Plates</p></td></tr></table>', 'Bar\nPlates'],
    [
      'terms and what they mean share a line',
      '<dl><dt>Bore</dt><dd>50 mm</dd><dt>Rust</dt><dd>none</dd></dl>',
      'Bore\t50 mm\nRust\tnone',
    ],
    [
      'short pieces set across share a line',
      '<div style="display:flex"><span>Weight</span><span>45 lb</span></div><p>Bar</p>',
      'Weight\t45 lb\nBar',
    ],
    [
      'columns set across do not',
      `<div style="display:flex"><div><p>Four plates</p><p>and a bar</p></div><div><p>Seller</p></div></div>`,
      'Four plates\nand a bar\nSeller',
    ],
  ])('%s', (_, html, text) => expect(textOf(html)).toBe(text));
});

describe('figures', () => {
  it.each([
    ['raised cents', '<b>$120<sup>00</sup></b>', '$120.00'],
    ['a raised half', '1<sup>1</sup>/<sub>2</sub> in', '1 1/2 in'],
    ['a square foot', '40 ft<sup>2</sup>', '40 ft2'],
    ['kept apart by their style alone', '<b>$110</b><span>0.4 miles</span>', '$110 0.4 miles'],
    ['a price behind words', '<a>Plates 45 lb<i>$75</i></a><span>$80</span>', 'Plates 45 lb$75 $80'],
    ['set one by one', '<b>4</b><b>5</b> lb', '45 lb'],
    ['a number in two elements', '<b>$1</b><b>,200</b>', '$1,200'],
    ['a price in two elements', '<b>$1</b><b>90</b>', '$190'],
  ])('%s', (_, html, text) => expect(textOf(html)).toBe(text));
});

describe('hidden text', () => {
  it.each([
    ['display none', '<p style="display:none">12 x 100</p>'],
    ['display none by a style sheet', '<p class="gone">12 x 100</p>'],
    ['the hidden attribute', '<p hidden>12 x 100</p>'],
    ['visibility hidden', '<p style="visibility:hidden">12 <b>x 100</b></p>'],
    ['scripts and styles', '<script>12</script><style>p{}</style><noscript>12</noscript><template>12</template>'],
    ['controls', '<input value="12"><textarea>12</textarea><select><option>12</option></select>'],
    ['text for screen readers only', '<span style="position:absolute;clip:rect(0,0,0,0)">12 x 100</span>'],
    ['moved off the page', '<span style="position:absolute;left:-9999px">12 x 100</span>'],
    ['opacity 0', '<p style="opacity:0">12 x 100</p>'],
    ['icon fonts', '<i aria-hidden="true" style="font-family:Town Icons">star_border</i>'],
  ])('%s is left out', (_, html) => expect(textOf(`<p>Bar</p>${html}`, '<style>.gone{display:none}</style>')).toBe('Bar'));

  it('keeps what is made visible inside what is not', () =>
    expect(textOf('<div style="visibility:hidden">no<b style="visibility:visible">4 x 45</b></div>')).toBe('4 x 45'));
  it('keeps closed details, which are one click away', () =>
    expect(textOf('<details><summary>Weights</summary>4 x 45</details>')).toContain('4 x 45'));
  it('keeps what only screen readers leave out', () => expect(textOf('<span aria-hidden="true">$120</span>')).toBe('$120'));
});

describe('struck text', () => {
  const struckOf = (html: string, head = '') => {
    const { text, struck } = seen(html, head);
    return struck.map(({ start, end }) => text.slice(start, end));
  };
  // jsdom spells no shorthand out; tests/browser/capture.test.ts has it.
  it.each([
    ['del', '<p>Bar <del>$200</del> $120</p>'],
    ['s', '<p>Bar <s>$200</s> $120</p>'],
    ['style', '<p>Bar <span style="text-decoration-line:line-through">$200</span> $120</p>'],
    ['style sheet', '<p>Bar <span class="was">$200</span> $120</p>'],
    ['parts of one', '<p>Bar <del><b>$</b><i>200</i></del> $120</p>'],
  ])('by %s', (_, html) => expect(struckOf(html, '<style>.was{text-decoration-line:line-through}</style>')).toEqual(['$200']));
  it('by an element around the block that is read', () => {
    show('<del><span id="inner">$200</span></del>');
    const inner = document.getElementById('inner');
    expect(inner && readText(inner, { sight: computedSight() }).struck).toEqual([{ start: 0, end: 4 }]);
  });
  it('is empty where nothing is struck', () => expect(struckOf('<p>Bar <ins>$200</ins></p>')).toEqual([]));
});

describe('shadow roots and frames', () => {
  it('reads a shadow tree with what is slotted into it, and not what is not', () => {
    show('<div id="host"><b slot="price">$120</b><i>nowhere</i></div>');
    const shadow = document.getElementById('host')?.attachShadow({ mode: 'open' });
    if (shadow) shadow.innerHTML = '<p>Plates 4 x 45</p><p><slot name="price"></slot></p>';
    expect(readText(document.body, { sight: computedSight() }).text).toBe('Plates 4 x 45\n$120');
  });
  it('reads a closed shadow root that is shown to it', () => {
    show('<div id="host"></div>');
    const shadow = document.getElementById('host')?.attachShadow({ mode: 'closed' }) ?? null;
    if (shadow) shadow.innerHTML = '4 x 45';
    expect(readText(document.body, { sight: computedSight() }).text).toBe('');
    expect(readText(document.body, { sight: computedSight((element) => (element.id === 'host' ? shadow : null)) }).text).toBe(
      '4 x 45',
    );
  });
  it('reads a frame of the same origin on lines of its own', () => {
    show('<p>Plates</p><iframe></iframe><p>Call me</p>');
    const inside = document.querySelector('iframe')?.contentDocument;
    if (inside) inside.body.innerHTML = '<p>4 x 45</p>';
    expect(readText(document.body, { sight: computedSight() }).text).toBe('Plates\n4 x 45\nCall me');
  });
});

describe('size', () => {
  it('cuts at the limit, not within a character, and says so', () => {
    show('<p>ab</p><p>😀😀</p>');
    expect(readText(document.body, { sight: computedSight(), limit: 4 })).toMatchObject({ text: 'ab\n', cut: true });
    expect(readText(document.body, { sight: computedSight(), limit: 7 })).toMatchObject({ text: 'ab\n😀😀', cut: false });
  });
  it('reads elements nested 5,000 deep', () => {
    let at = document.createElement('div');
    at.textContent = '4 x 45';
    for (let depth = 0; depth < 5000; depth += 1) {
      const around = document.createElement('div');
      around.append(at);
      at = around;
    }
    const plain = {
      ...computedSight(),
      lookOf: () => ({ hidden: false, invisible: false, flow: 'block', lays: 'flow', struck: false, keeps: null }) as const,
    };
    expect(readText(at, { sight: plain }).text).toBe('4 x 45');
  });
});
