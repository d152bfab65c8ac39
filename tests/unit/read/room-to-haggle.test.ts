/** What is an offer on the price or a firm one, and what only sounds so. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { asked } from './goods.ts';

it.each<[string, ...string[]]>([
  ['20 kg bar. Sleeves spin about 25 s from a firm flick. $310', 'lot 310 USD | price-sign-first | $310'],
  ['Olympic bar, sleeves wont budge. $10', 'lot 10 USD | price-sign-first | $10'],
  ['Bench, wont budge on the price $100', 'lot 100 USD | price-sign-first | $100', 'firm | firm | wont budge'],
  ['Rack $200, not interested in trades, I have no room thats the whole point.', 'lot 200 USD | price-sign-first | $200'],
  ['The district offers the following used items: half rack $200', 'lot 200 USD | price-sign-first | $200'],
  ['Rack $200, open to trades and offers', 'lot 200 USD | price-sign-first | $200', 'open to offers | open-to-offers | offers'],
  ['Bench $100, offers below will be blocked', 'lot 100 USD | price-sign-first | $100', 'firm | firm | offers'],
  ['Bench $100. I won’t be taking less', 'lot 100 USD | price-sign-first | $100', 'firm | firm | won’t be taking less'],
  [
    'Hantelbank 100 €. Keine "was letzte Preis" Anfragen',
    'lot 100 EUR | price-sign-behind | 100 €',
    'firm | firm | was letzte Preis',
  ],
  [
    'Bench $100. Price can be negotiated',
    'lot 100 USD | price-sign-first | $100',
    'open to offers | open-to-offers | can be negotiated',
  ],
  ['Bench $100, haggling welcome', 'lot 100 USD | price-sign-first | $100', 'open to offers | open-to-offers | haggling welcome'],
  ['Flat bench $100. We offer delivery', 'lot 100 USD | price-sign-first | $100'],
  ['Flat bench $100. Make offer on the mower', 'lot 100 USD | price-sign-first | $100'],
  ['Rack $200 obo. No trades', 'lot 200 USD | price-sign-first | $200', 'open to offers | open-to-offers | obo'],
  [
    'Squat rack $150\nBench $60\nScoreboard buzzer, works. Make an offer\nBar $75',
    'lot',
    'rack-1 150 USD | price-sign-first | $150',
    'bench-1 60 USD | price-sign-first | $60',
    'bar-1 75 USD | price-sign-first | $75',
  ],
  [
    'Rack $200\nBench $50\nOpen to offers',
    'lot 250 USD | worked-out | ',
    'open to offers | open-to-offers | Open to offers',
    'rack-1 200 USD | price-sign-first | $200',
    'bench-1 50 USD | price-sign-first | $50',
  ],
  [
    '4x45 plates 200 for all of it. I might take 180 if you come today',
    'lot 200 USD | price-for-all | 200',
    'open to offers | open-to-offers | 180',
  ],
  ['Weight set $1, msg me ur best offer', 'none placeholder', 'open to offers | open-to-offers | msg me ur best'],
  [
    '4x45 plates asking 60 but my mom says i can take less',
    'lot 60 USD | price-told | 60',
    'open to offers | open-to-offers | can take less',
  ],
  [
    'Olympic bar & 2 x 45, 2 x 10. Best offer over 100 by Sunday night gets it.',
    'lot 100 USD | price-told | 100',
    'open to offers | open-to-offers | Best offer',
  ],
  [
    'Rack and bench £550 the lot. Offers over 500 considered.',
    'lot 550 GBP | price-sign-first | £550',
    'open to offers | open-to-offers | Offers',
  ],
  [
    'Half Rack 180 €, Flachbank 40 €. Der Vorstand möchte ausdrücklich nicht verhandeln.',
    'lot 220 EUR | worked-out | ',
    'firm | firm | nicht verhandeln',
    'rack-1 180 EUR | price-sign-behind | 180 €',
    'bench-1 40 EUR | price-sign-behind | 40 €',
  ],
  [
    "Price: $123,456\nI got 3 bars. Message me with what you want and what you'd pay",
    'none placeholder',
    "open to offers | open-to-offers | and what you'd pay",
  ],
  ['Rack €180, haggle at your peril.', 'lot 180 EUR | price-sign-first | €180'],
])('%s', (text, ...said) => expect(asked(text)).toEqual(said));
