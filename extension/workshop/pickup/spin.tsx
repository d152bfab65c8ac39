/** Whether the sleeves of a bar turn. */
import { useId } from 'preact/hooks';
import type { Item } from '../../../src/listing/reading.ts';
import { useWords } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';
import type { OpenFind } from '../finds/use-find.ts';

const TURNS = ['spins', 'seized-sleeves'] as const;

export interface SpinProps {
  readonly item: Item;
  readonly name: string;
  readonly record: OpenFind['record'];
}

export function Spin({ item, name, record }: SpinProps) {
  const { t } = useWords();
  const group = useId();
  const tried = TURNS.find((turn) => item.conditions.some(({ value, basis }) => value === turn && basis === 'measured'));
  const pathOf = (turn: string) => `${item.id}.condition.${turn}`;
  return (
    <fieldset class="ticks">
      <legend>{name}</legend>
      {(['untried', ...TURNS] as const).map((turn) => (
        <label key={turn} class="tick">
          <input
            type="radio"
            name={group}
            data-path={`${item.id}.sleeves.${turn}`}
            checked={turn === (tried ?? 'untried')}
            onChange={() =>
              record(TURNS.map(pathOf), turn === 'untried' ? [] : [{ path: pathOf(turn), value: true, basis: 'measured' }])
            }
          />
          {t(`pickup_sleeves_${keyTail(turn)}`)}
        </label>
      ))}
    </fieldset>
  );
}
