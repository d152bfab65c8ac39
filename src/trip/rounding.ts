import type { MoneyRange } from '../listing/evaluation.ts';
import type { Money } from '../units/money.ts';

/** The likely value of a range as money, to the minor unit. */
export const round = (range: MoneyRange): Money => ({ minor: Math.round(range.likely), currency: range.currency });
