/** What the plates of a line weigh, one after the other, in any unit. */
import { readWeighings } from '../../../src/kit/weighings.ts';
import type { Item } from '../../../src/listing/reading.ts';
import { convert, type MassUnit } from '../../../src/units/mass.ts';
import { weightsWritten } from '../../components/figures.ts';
import { ListField } from '../../components/list-field.tsx';
import { useWords } from '../../components/speech.ts';
import { useEdits } from '../../panel/edits.ts';

export interface WeighedProps {
  readonly item: Item;
  readonly name: string;
  /** Unit of a bare number where the plate has none of its own. */
  readonly unit: MassUnit;
}

export function Weighed({ item, name, unit: own }: WeighedProps) {
  const { say, t } = useWords();
  const { set, putBack } = useEdits();
  const path = `${item.id}.weighed`;
  const face = item.unitWeight?.value ?? null;
  const unit = item.weighed?.value[0]?.unit ?? face?.unit ?? own;
  const parsed = (text: string): string | null => {
    const { read, misread } = readWeighings(text, face, unit, say.decimal);
    if (misread.length > 0 || read.length === 0) return null;
    return read.map(({ weight }) => Math.round(convert(weight, unit).value * 100) / 100).join(', ');
  };
  return (
    <ListField
      path={path}
      label={t('pickup_weighed', { item: name, unit })}
      value={item.weighed ? weightsWritten(say, item.weighed.value) : ''}
      isGood={(text) => parsed(text) !== null}
      onText={(text) => set({ path, value: parsed(text), unit, basis: 'measured' })}
      onEmpty={() => putBack(path)}
      complaint={t('pickup_bad_weighed')}
      hint={t('pickup_weighed_how')}
    />
  );
}
