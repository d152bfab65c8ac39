/** How the list is sorted and filtered. */
import { useId } from 'preact/hooks';
import { KINDS } from '../../../src/listing/reading.ts';
import { ChoiceField } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { keyTail } from '../item-words.ts';
import { type Filter, kindsIn, ORDERS, type Order, VERDICTS } from './arrange.ts';
import type { Row } from './rows.ts';

export interface SweepToolsProps {
  readonly rows: readonly Row[];
  readonly order: Order;
  readonly filter: Filter;
  readonly onOrder: (order: Order) => void;
  readonly onFilter: (filter: Filter) => void;
}

export function SweepTools({ rows, order, filter, onOrder, onFilter }: SweepToolsProps) {
  const { t } = useWords();
  const id = useId();
  const choose = <T extends string>(values: readonly T[], value: string): T | undefined => values.find((one) => one === value);
  const kinds = ['all', ...kindsIn(rows, KINDS)] as const;
  const verdicts = ['all', ...VERDICTS.filter((one) => rows.some(({ verdict }) => verdict === one))] as const;
  return (
    <div class="sweep-tools">
      <ChoiceField
        path="sweep.order"
        label={t('sweep_order')}
        labelShown
        value={order}
        options={ORDERS.map((value) => ({ value, words: t(`sweep_order_${value}`) }))}
        onChoice={(value) => onOrder(choose(ORDERS, value) ?? order)}
      />
      <span class="field">
        <label for={id} class="field-label">
          {t('sweep_filter')}
        </label>
        <input
          id={id}
          type="search"
          size={14}
          data-path="sweep.text"
          value={filter.text}
          onInput={(event) => onFilter({ ...filter, text: event.currentTarget.value })}
        />
      </span>
      <ChoiceField
        path="sweep.verdict"
        label={t('sweep_filter_call')}
        labelShown
        value={filter.verdict}
        options={verdicts.map((value) => ({ value, words: t(`sweep_call_${value}`) }))}
        onChoice={(value) => onFilter({ ...filter, verdict: choose(verdicts, value) ?? 'all' })}
      />
      <ChoiceField
        path="sweep.kind"
        label={t('sweep_filter_kind')}
        labelShown
        value={filter.kind}
        options={kinds.map((value) => ({
          value,
          words: value === 'all' ? t('sweep_call_all') : t(`panel_kind_${keyTail(value)}`),
        }))}
        onChoice={(value) => onFilter({ ...filter, kind: choose(kinds, value) ?? 'all' })}
      />
    </div>
  );
}
