/** An evaluation in the few figures that a list shows. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import { observedPrices } from '../price/observed.ts';
import type { Money } from '../units/money.ts';
import type { Summary } from './record.ts';

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
  };
}

/** The price that goes into the history: that of the lot, never a stand-in such as $1. */
export const askingOf = ({ asking }: Reading): Money | null =>
  asking.placeholder || asking.amount === null ? null : asking.amount.value;
