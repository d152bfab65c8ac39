/** Ads made by a small grammar of what sellers write, in and out of order, with noise. */
import fc from 'fast-check';

const oneOf = (words: string): fc.Arbitrary<string> => fc.constantFrom(...words.split('|'));
const joined = (...parts: fc.Arbitrary<string>[]): fc.Arbitrary<string> => fc.tuple(...parts).map((words) => words.join(''));
const maybe = (part: fc.Arbitrary<string>): fc.Arbitrary<string> => fc.oneof(fc.constant(''), part);

const count = fc.oneof(
  fc.integer({ min: 0, max: 120 }).map(String),
  oneOf('two|a pair of|half a dozen|a|zwei|ein Paar|je 2|2 each of|both|(4)|(2x)|qty 3|x4|dozens of|0|00|007|-3|1e3'),
);
const size = fc.oneof(
  oneOf('45|25|10|5|2.5|2 1/2|1¼|35|100|20|15|1.25|2,5|45s|tens|fünfundzwanziger|1.000|0.5|0|999999|1/0|3/4'),
  fc.double({ min: 0, max: 1e6, noNaN: true }).map((value) => value.toString()),
);
const unit = oneOf(" lb| lbs|lb|#|kg| kg| kilos|'s|s|-lb| pounders| Pfund|er||mm|\"|'| in| ft| psi");
const link = oneOf(' x | - |x|×| @ |: | (|) |/|, | and | + | je | à | of |\t| = | to |  |');
const noun = oneOf(
  'plates|plate|iron plates|bumpers|olympic bar|barbell|power rack|squat stands|bench|EZ curl bar|hex bar|collars|dumbbells|kettlebell|Hantelscheiben|Langhantel|Set|weights|plate tree|tractor weights|bar stool|set',
);
const price = joined(
  oneOf('$|£|€|CA$|A$|asking |VB |was |retail |only |free |$ |'),
  fc.oneof(fc.nat({ max: 2_000_000 }).map(String), oneOf('0|1|123|1234|.99|1,200|1.200,50|17.99|9e9|00|-5|120,-')),
  oneOf(' obo| firm|/lb| each| a pair| for all| EUR| bucks|¢| per kg|-200|k| je Stück| or best offer|'),
);
const fact = oneOf(
  '2 inch hole|bore 50.4 mm|28 mm shaft|7 ft long|7\' 2"|rated 1000 lb|190,000 psi|no rust|not bent|slightly bent|one is cracked|sold|45s are gone|not included|retail $480|delivery $20|300 lb total|call 555-0123|since 2009|room is 10x12|bench press 225|pick up in Eastwick|no trades|50er Bohrung|leichter Rost|wanted|ISO',
);
const noise = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.string({ unit: 'grapheme', maxLength: 6 }),
  oneOf('\u200b|\u202e|\u0301|\ufeff|•|***|----|......|((((|))))|[|]|\0|\ud83d|\udc00|<b>|&nbsp;|😀|，|٣|５'),
);

const line = fc
  .array(
    fc.oneof(
      { weight: 6, arbitrary: joined(count, link, size, unit, link, noun) },
      { weight: 2, arbitrary: joined(size, unit, link, count) },
      { weight: 2, arbitrary: joined(noun, link, price) },
      { weight: 3, arbitrary: price },
      { weight: 3, arbitrary: fact },
      { weight: 2, arbitrary: noun },
      { weight: 1, arbitrary: noise },
    ),
    { minLength: 1, maxLength: 5 },
  )
  .chain((parts) => oneOf(' |, |. |; |\t| - |').map((gap) => parts.join(gap)));

/** Up to some 20 lines, with ends of all kinds. */
export const grammarAd: fc.Arbitrary<string> = fc
  .array(joined(maybe(oneOf('• |- |* |1. |\t|  ')), line), { minLength: 1, maxLength: 20 })
  .chain((lines) => fc.constantFrom('\n', '\r\n', '\n\n', '\u2028').map((end) => lines.join(end)));
