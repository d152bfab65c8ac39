import { describe, expect, it } from 'vitest';
import { beside, blockAround, choose, narrow, widen } from '../../../extension/capture/pick/steps.ts';
import { computedSight } from '../../../extension/capture/readers/sight.ts';
import { show } from './page.ts';

const sight = computedSight();
const by = (id: string): Element => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const page = `<main id="main"><div id="same"><article id="ad"><p id="one">4 x <b id="bold">45</b></p><p id="gone" hidden>x</p><p id="two">2 x 25 lb, rusty</p>
  </article></div><p id="after">Call me</p></main>`;

describe('picking', () => {
  it('begins with a block, not with a word in it', () => {
    show(page);
    expect(blockAround(by('bold'), sight).id).toBe('one');
  });
  it('widens to what holds more, and narrows back the same way', () => {
    show(page);
    const wider = widen(choose(by('one')), sight);
    expect(wider.block.id).toBe('ad');
    const widest = widen(wider, sight);
    expect(widest.block.id).toBe('main');
    expect(narrow(widest, sight).block.id).toBe('ad');
    expect(narrow(narrow(widest, sight), sight).block.id).toBe('one');
  });
  it('stops at the page', () => {
    show(page);
    expect(widen(choose(document.body), sight).block).toBe(document.body);
  });
  it('narrows to the part with the most words', () => {
    show(page);
    expect(narrow(choose(by('same')), sight).block.id).toBe('two');
    expect(narrow(choose(by('two')), sight).block.id).toBe('two');
  });
  it('goes to the neighbours that can be seen', () => {
    show(page);
    expect(beside(choose(by('one')), 1, sight).block.id).toBe('two');
    expect(beside(choose(by('two')), -1, sight).block.id).toBe('one');
    expect(beside(choose(by('two')), 1, sight).block.id).toBe('after');
    expect(beside(choose(by('after')), 1, sight).block.id).toBe('after');
  });
  it('leaves a frame and a shadow root by widening', () => {
    show('<div id="out"><p>Town</p><iframe></iframe><div id="host"></div></div>');
    const inside = document.querySelector('iframe')?.contentDocument;
    if (inside) inside.body.textContent = '4 x 45';
    const shadow = by('host').attachShadow({ mode: 'open' });
    const line = shadow.appendChild(document.createElement('p'));
    line.textContent = '2 x 25';
    expect(inside && widen(choose(inside.body), sight).block.id).toBe('out');
    expect(widen(choose(line), sight).block.id).toBe('out');
  });
});
