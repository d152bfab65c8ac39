import { type Condition, doubtfulBow, type Item } from '../listing/reading.ts';

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
};

/** A bar of which nobody can say that it is straight: good for pulls and squats at most. An assumption. */
const DOUBTFUL_BOW = 0.5;

/** Product of the factors of all stated faults and of a doubtful bow: 1 for a sound piece, never above 1. */
export const conditionFactor = (item: Item): number =>
  [...new Set(item.conditions.map((fact) => fact.value))].reduce(
    (factor, word) => factor * (FACTORS[word] ?? 1),
    doubtfulBow(item) === null ? 1 : DOUBTFUL_BOW,
  );
