/** An evaluation in the few figures that a list shows. */

import { offersOf } from '../kit/fills.ts';
import type { Evaluation } from '../listing/evaluation.ts';
import { observedPrices } from '../price/observed.ts';
import { MOST_OFFERS, type Summary } from './record.ts';

/** Money in minor units, weight in pounds; the saving is likely new delivered less likely all-in of the lot. */
export function summarise(evaluation: Evaluation): Summary {
  const { call, worth, reading, trip } = evaluation;
  const { newWorth, allIn, perUsablePound, usable } = worth;
  return {
    call: call.kind,
    perUsable: perUsablePound && {
      low: perUsablePound.low,
      likely: perUsablePound.likely,
      high: perUsablePound.high,
      currency: perUsablePound.currency,
      per: perUsablePound.per,
    },
    usable: { low: usable.low, likely: usable.likely, high: usable.high },
    allIn: allIn && { low: allIn.low, likely: allIn.likely, high: allIn.high, currency: allIn.currency },
    saving:
      newWorth && allIn && newWorth.currency === allIn.currency
        ? { minor: Math.round(newWorth.likely - allIn.likely), currency: allIn.currency }
        : null,
    kinds: [...new Set(reading.items.map(({ kind }) => kind.value))],
    place: reading.place?.value.slice(0, 500) ?? null,
    distance: trip?.distance ?? reading.distance?.value ?? null,
    observed: observedPrices(evaluation),
    offers: offersOf(evaluation).slice(0, MOST_OFFERS),
  };
}
