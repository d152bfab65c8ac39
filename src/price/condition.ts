import type { Condition, Item } from '../listing/reading.ts';

/** What a fault takes off the worth of a sound piece, as a factor. Assumptions; faults that make a piece useless are deal-breaker flags. */
const FACTORS: Readonly<Partial<Record<Condition, number>>> = {
  'rust-light': 0.95,
  rust: 0.85,
  'rust-heavy': 0.6,
  chipped: 0.9,
  repainted: 0.92,
  'stored-outdoors': 0.9,
  'missing-parts': 0.7,
  'missing-catches': 0.7,
  wobbly: 0.6,
  'home-made': 0.4,
  mismatched: 0.95,
  torn: 0.85,
  'seized-sleeves': 0.4,
  'split-hub': 0.5,
};

/** Product of the factors of all stated faults: 1 for a sound piece, never above 1. */
export const conditionFactor = (item: Item): number =>
  [...new Set(item.conditions.map((fact) => fact.value))].reduce((factor, word) => factor * (FACTORS[word] ?? 1), 1);
