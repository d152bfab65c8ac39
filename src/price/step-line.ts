/** One line of the calculation, its label by its id: "used-rate:iron" is said by `step_used_rate`. */
import type { Step } from '../listing/evaluation.ts';
import type { Range } from '../units/range.ts';
import { type Message, message } from '../words/message.ts';

export const line = (
  id: string,
  result: Range,
  unit: Step['unit'],
  basis: Step['basis'],
  source: Message | null = null,
  params?: Message['params'],
): Step => ({ id, label: message(`step_${id.split(':')[0]?.replaceAll('-', '_')}`, params), result, unit, basis, source });
