/** What the plates of a line weighed on the buyer's own scale. */

import { withPoints } from '../../src/kit/weighings.ts';
import type { Item } from '../../src/listing/reading.ts';
import { parseWeights } from '../../src/read/correction-values.ts';
import type { MassUnit } from '../../src/units/mass.ts';
import { weightsWritten } from '../components/figures.ts';
import { ListField } from '../components/list-field.tsx';
import { useWords } from '../components/speech.ts';
import { useEdits } from './edits.ts';

export function WeighedField({ item, unit: own }: { readonly item: Item; readonly unit: MassUnit }) {
  const { say, t } = useWords();
  const { set, putBack } = useEdits();
  const path = `${item.id}.weighed`;
  // A kilogram plate is weighed in kilograms, as the number on it; what was weighed keeps its unit.
  const unit = item.weighed?.value[0]?.unit ?? item.unitWeight?.value.unit ?? own;
  const correction = (text: string) => ({ path, value: withPoints(text, say.decimal), unit, basis: 'measured' as const });
  return (
    <ListField
      path={path}
      label={t('bundle_weighed', { unit })}
      value={item.weighed ? weightsWritten(say, item.weighed.value) : ''}
      isGood={(text) => parseWeights(correction(text)) !== null}
      onText={(text) => set(correction(text))}
      onEmpty={() => putBack(path)}
      complaint={t('bundle_bad_weighed')}
      hint={t('bundle_weighed_how')}
    />
  );
}
