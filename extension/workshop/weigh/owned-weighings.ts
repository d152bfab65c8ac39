/** Weighings of the plates in the kit: as text to work on, and from the bench back into the kit. */
import type { Weighing } from '../../../src/kit/weighings.ts';
import { isPlate } from '../../../src/listing/reading.ts';
import { inPounds, type Weight } from '../../../src/units/mass.ts';
import type { Figures } from '../../../src/words/write-figures.ts';
import type { Outcome, Owned, Store } from '../../store/index.ts';

type Writing = Pick<Figures, 'number' | 'decimal'>;

// The sign of the unit, not the locale's word for it: this is read again.
const written = ({ number }: Writing, { value, unit }: Weight): string => `${number(value)} ${unit}`;

type Plates = Pick<Owned, 'kind' | 'weight'> & { readonly weighed: readonly Weight[] };

/** "45 lb: 46.2 lb, 44.8 lb", a line for each entry of the kit that has been weighed; empty when none has. */
export const ownedAsText = (owned: readonly Plates[], writing: Writing): string =>
  platesOf(owned)
    .flatMap(({ weight, weighed }) =>
      weight && weighed.length > 0
        ? [
            `${written(writing, weight)}: ${weighed.map((one) => written(writing, one)).join(writing.decimal === ',' ? '; ' : ', ')}`,
          ]
        : [],
    )
    .join('\n');

const platesOf = <T extends Pick<Owned, 'kind'>>(owned: readonly T[]): readonly T[] =>
  owned.filter(({ kind }) => kind !== 'platform' && isPlate(kind));

const sameFace = (a: Weight, b: Weight): boolean => Math.abs(inPounds(a) - inPounds(b)) < 0.01;

type Entry = Omit<Owned, 'changedAt'>;

/**
 * The entries of the kit that these weighings change. Plates of one face value are dealt out over the entries that have it, as many to
 * each as it has pieces; what is over joins the last, which then has more pieces; where there is none a new entry is made.
 */
export function entriesFor(owned: readonly Owned[], weighings: readonly Weighing[], newId: () => string): Entry[] {
  const faces: Weight[] = [];
  for (const { face } of weighings) if (face && !faces.some((one) => sameFace(one, face))) faces.push(face);
  return faces.flatMap((face): Entry[] => {
    const rest = weighings.flatMap((one) => (one.face && sameFace(one.face, face) ? [one.weight] : []));
    const there = platesOf(owned).filter(({ weight, pieces }) => weight && pieces > 0 && sameFace(weight, face));
    if (there.length === 0) return [fresh(newId(), face, rest)];
    const dealt = there.map(({ changedAt: _, ...entry }) => ({ ...entry, weighed: rest.splice(0, entry.pieces) }));
    const last = dealt.at(-1);
    if (last) Object.assign(last, { weighed: [...last.weighed, ...rest], pieces: last.pieces + rest.length });
    return dealt;
  });
}

const fresh = (id: string, weight: Weight, weighed: Weight[]): Entry => ({
  id,
  kind: 'plate',
  pieces: weighed.length,
  weight,
  weighed,
  boreMm: null,
  shaftMm: null,
  sleeveMm: null,
  lengthMm: null,
  note: '',
});

/** Puts the weighings into the kit; gives how many entries changed. */
export async function keepWeighings(store: Store, weighings: readonly Weighing[], now: number): Promise<Outcome<number>> {
  const owned = await store.kit.owned.all();
  if (!owned.ok) return owned;
  const entries = entriesFor(owned.value, weighings, () => crypto.randomUUID());
  // All of it or nothing: dealt out in part, plates would be counted twice the next time.
  const put = await store.kit.owned.change(entries, [], now);
  return put.ok ? { ok: true, value: entries.length } : put;
}
