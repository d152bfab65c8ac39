/** What is said of one of two and not of the other, of a make, and of parts. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { readText } from './goods.ts';

const said = (text: string): string =>
  readText(text)
    .items.map(({ kind, conditions, material }) =>
      [kind.value, ...conditions.map(({ value }) => value), ...(material ? [material.value] : [])].join(' '),
    )
    .join(', ');

it.each([
  ['Two olympic bars, one straight, the other bent. $150', 'bar straight, bar bent'],
  ['Two olympic barbells, one with a slight bend, the other perfectly straight. $100', 'bar bent, bar straight'],
  ['Two olympic barbells, one with a bend, the other is rusty. $100', 'bar bent, bar rust'],
  ['2 olympic bars one bent one straight $100', 'bar bent, bar straight'],
  ['Two olympic bars, the 7 ft one straight, the 5 ft one bent. $100', 'bar straight, bar bent'],
  ['Two bars: one 7ft 45 lb straight, other one bent. Olympic. $150', 'bar straight, bar bent'],
  ['7 ft olympic barbell straight, 6 ft olympic barbell bent. $150', 'bar straight, bar bent'],
  ['Two olympic bars, both straight. $100', 'bar straight'],
  ['7 ft olympic barbell, straight. Bar is 86 inches long. $150', 'bar straight'],
  ['Olympic bent curl bar (made that way). $40', 'curl-bar'],
  ["Curl bar, bent (it's supposed to be like that). Olympic. $40", 'curl-bar'],
  ['EZ curl bar, the bent kind. Olympic. $40', 'curl-bar'],
  ['SZ-Stange 50 mm, gebogen (gehört so), 40 €', 'curl-bar'],
  ['Olympic bar, bent, I did not do it on purpose. $40', 'bar bent'],
  ['Olympic bar 45 lb, slightly bent. $40', 'bar bent'],
  ['Olympic plates 4x45 lb, hooks are rubber coated. $300', 'plate'],
  ['Olympic plates 4x45 lb with rubber coated handles. $200', 'plate'],
  ['Rubber coated olympic plates 4x45 lb. $200', 'plate rubber'],
  ['Olympic plates 4x45 lb, all are rubber coated. $200', 'plate rubber'],
])('%s', (text, list) => expect(said(text)).toBe(list));
