import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { onlyPart, partsOf } from '../../../src/kit/part.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { sellerMessage, written } from '../../../src/message/compose.ts';
import { sellerSpeaker } from '../../../src/message/german.ts';
import { speaker } from '../../../src/words/say.ts';
import { readStrings } from '../../tools/evaluate/strings.ts';

const LOT = listingFromText('4 x 45 lb olympic plates $120, olympic barbell 7 ft straight $150, flat bench $40');
const whole = evaluate(LOT, DEFAULT_SETTINGS);
const only = (...ids: string[]) => evaluate(LOT, DEFAULT_SETTINGS, onlyPart(whole.reading, ids, 'USD'));

describe('a part of an ad', () => {
  it('is what has a price of its own in that currency, beside something else', () => {
    expect(partsOf(whole.reading, 'USD').map(({ id }) => id)).toEqual(['plate-1', 'bar-1', 'bench-1']);
    expect(partsOf(whole.reading, 'EUR')).toEqual([]);
    const single = evaluate(listingFromText('4 x 45 lb olympic plates, $120'), DEFAULT_SETTINGS);
    expect(partsOf(single.reading, 'USD')).toEqual([]);
  });

  it('is judged as an ad of its own, for its own price', () => {
    const { reading, worth } = only('plate-1');
    expect(reading.items.map(({ id }) => id)).toEqual(['plate-1']);
    expect(reading.asking.amount?.value).toEqual({ minor: 12_000, currency: 'USD' });
    const alone = evaluate(listingFromText('4 x 45 lb olympic plates, $120'), DEFAULT_SETTINGS).worth;
    expect(worth.walkAway).toEqual(alone.walkAway);
    expect(worth.walkAway?.minor).toBeLessThan(whole.worth.walkAway?.minor ?? 0);
  });

  it('is several for their prices together, and the whole where no id is one', () => {
    const { reading } = only('bar-1', 'bench-1', 'nothing-1');
    expect(reading.items.map(({ id }) => id)).toEqual(['bar-1', 'bench-1']);
    expect(reading.asking.amount?.value.minor).toBe(19_000);
    expect(onlyPart(whole.reading, ['nothing-1'], 'USD')).toEqual([]);
  });

  it('does not weigh what the whole ad weighs', () => {
    const heavy = listingFromText('300 lb of olympic plates in all: 4 x 45 lb $120; 2 x 35 lb $50; 2 x 25 lb $30');
    const { reading } = evaluate(heavy, DEFAULT_SETTINGS);
    expect(reading.statedTotal?.value.value).toBe(300);
    const part = evaluate(heavy, DEFAULT_SETTINGS, onlyPart(reading, ['plate-3'], 'USD'));
    expect(part.reading.statedTotal).toBeNull();
    expect(part.worth.usable.likely).toBeCloseTo(50, 0);
  });

  it('is named to the seller in the ad’s words, in either language', () => {
    const part = only('plate-1');
    const english = speaker(readStrings(), 'en-US');
    const said = (language: 'en' | 'de', items = part.reading.items) =>
      written(sellerSpeaker(language, english), sellerMessage(part, 'Lot', undefined, items));
    expect(said('en')).toMatch(/“Lot”\. I would take only this: [^.]*plates/);
    expect(said('de')).toContain('Davon würde ich nur dies nehmen: ');
    expect(said('en', [])).not.toContain('take only');
  });
});
