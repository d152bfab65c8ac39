/** An evaluation in the few figures that a list shows. */

import { offersOf } from '../kit/fills.ts';
import type { Evaluation } from '../listing/evaluation.ts';
import { observedPrices } from '../price/observed.ts';
import { MOST_OFFERS, type Summary } from './record.ts';

/** Money in minor units, weight in pounds. */
export function summarise(evaluation: Evaluation): Summary {
  const { call, worth, reading, trip } = evaluation;
  const { allIn, perUsablePound, usable } = worth;
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
    saving: worth.saving,
    kinds: [...new Set(reading.items.map(({ kind }) => kind.value))],
    place: reading.place?.value.slice(0, 500) ?? null,
    distance: trip?.distance ?? reading.distance?.value ?? null,
    observed: observedPrices(evaluation),
    offers: offersOf(evaluation).slice(0, MOST_OFFERS),
  };
}
