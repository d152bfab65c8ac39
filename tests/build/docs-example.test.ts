/** The README's example, its figures, and what it says of the JSON, against what the program says today. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MOST_ADS } from '../../extension/capture/sweep/gather.ts';
import { toContract } from '../../src/contract.ts';
import { evaluate } from '../../src/evaluate.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { errorOf } from '../../src/price/true-weight.ts';
import { roadKm } from '../../src/trip/great-circle.ts';
import { MAX_BYTES } from '../tools/evaluate/input.ts';
import { settingsFrom } from '../tools/evaluate/settings.ts';
import { english } from '../tools/evaluate/strings.ts';
import { OLDEST } from './bundles.mjs';
import { COUNTRIES } from './place-lists.mjs';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const fenced = (language: string): string => README.split(`\`\`\`${language}\n`)[1]?.split('```')[0] ?? '';

const ad = fenced('text');
const settings = settingsFrom(/`settings\.json` holds `([^`]+)`/.exec(README)?.[1] ?? '', 'settings.json');
const printed = toContract(evaluate(listingFromText(ad), settings), english());

describe('the example', () => {
  it('is what `evaluate` prints', () => {
    const shown = JSON.parse(fenced('json'));
    expect(Object.keys(shown.worth).length).toBeGreaterThan(5);
    expect(printed).toMatchObject(shown);
  });

  it('is told in words without a figure that is in neither the ad nor the answer', () => {
    const words = README.split('\nIn words: ')[1]?.split('\n\n')[0] ?? '';
    const figures = words.match(/\d+(?:\.\d+)?/g) ?? [];
    expect(figures.length).toBeGreaterThan(4);
    const known = new Set(`${ad} ${JSON.stringify([printed.worth, printed.call])}`.match(/\d+(?:\.\d+)?/g));
    expect(figures.filter((figure) => !known.has(figure))).toEqual([]);
    expect(README).toContain(`lives ${printed.trip?.distance.value} miles away`);
    expect(words).toContain(`of ${/ of the (\d+) lb on offer/.exec(printed.call.because.join(' '))?.[1]} lb on offer`);
    expect(words).toContain(`so ${printed.worth.usable.likely} lb count`);
    expect(words).toContain(`up to $${printed.worth.walkAway},`);
  });
});

it('tells every part of the JSON', () => {
  const parts = README.split('JSON has these parts')[1]?.split('\nSettings')[0] ?? '';
  const { reading, worth, flags, call, trip } = printed;
  expect(flags.length).toBeGreaterThan(0);
  const names = [printed, reading, worth, flags[0] ?? {}, call, trip ?? {}].flatMap((part) => Object.keys(part));
  expect(names.filter((name) => !parts.includes(`\`${name}\``))).toEqual([]);
});

/** Words of the README around a figure, and the figure as the code has it. */
const FIGURES: readonly (readonly [RegExp, number | string])[] = [
  [/Node (\d+\.\d+) or newer/g, JSON.parse(readFileSync('package.json', 'utf8')).engines.node.replace('>=', '')],
  [/Chrome, Chromium, Edge\*\* \((\d+) or newer/g, OLDEST.chrome],
  [/Firefox\*\* \((\d+) or newer/g, Number.parseInt(OLDEST.firefox, 10)],
  [/up to (\d+) ads/g, MOST_ADS],
  [/over (\d+) MB/g, MAX_BYTES / 1e6],
  [/your margin \((\d+) %\)/g, 100 * DEFAULT_SETTINGS.margin],
  [/fits your sleeve \((\d+) mm unless/g, DEFAULT_SETTINGS.sleeveMm],
  [/their centre is about (\d+\.\d+) % above/g, 100 * errorOf('cast', 45).mean],
  [/great circle times (\d\.\d) to/g, factorOver(10)],
  [/great circle times \d\.\d to (\d\.\d)/g, factorOver(0.01)],
  [/They cover (\w+) countries/g, ['seven', 'eight', 'nine', 'ten'][COUNTRIES.length - 7] ?? '?'],
];

/** Road over straight line between places so many degrees apart on the equator (111.2 km each on a sphere of 6371 km). */
function factorOver(degrees: number): string {
  const at = (lon: number) => ({ lat: 0, lon });
  return (roadKm(at(0), at(degrees)).likely / ((degrees * Math.PI * 6371.0088) / 180)).toFixed(1);
}

it.each(FIGURES)('says %s as it is', (words, figure) => {
  const told = [...README.matchAll(words)].map(([, one]) => one);
  expect(told.length).toBeGreaterThan(0);
  expect(new Set(told)).toEqual(new Set([typeof figure === 'number' ? String(Number(figure.toFixed(4))) : figure]));
});
