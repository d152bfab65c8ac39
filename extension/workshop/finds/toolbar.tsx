/** Search, filters and order of the list. */
import { KINDS } from '../../../src/listing/reading.ts';
import { ChoiceField, type Option } from '../../components/choice-field.tsx';
import { useWords } from '../../components/speech.ts';
import { ORDERS, STATUSES } from '../../store/index.ts';
import { CALLS, inOrder, type Wanted } from './query.ts';

export interface ToolbarProps {
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
}

export function Toolbar({ wanted, onWanted }: ToolbarProps) {
  const { t } = useWords();
  const options = (values: readonly string[], key: string): Option[] =>
    values.map((value) => ({ value, words: t(`${key}${value.replaceAll('-', '_')}`) }));
  const filter = (path: 'status' | 'call' | 'kind', choices: readonly Option[]) => (
    <ChoiceField
      path={path}
      label={t(`finds_by_${path}`)}
      labelShown
      value={wanted[path]}
      options={[{ value: 'all', words: t('finds_all') }, ...choices]}
      onChoice={(value) => onWanted({ ...wanted, [path]: value })}
    />
  );
  return (
    <search class="toolbar">
      <label class="field">
        <span class="field-label">{t('finds_search')}</span>
        <input
          type="search"
          data-path="words"
          value={wanted.words}
          onInput={(event) => onWanted({ ...wanted, words: event.currentTarget.value })}
        />
      </label>
      {filter('status', options(STATUSES, 'finds_status_'))}
      {filter('call', options(CALLS, 'finds_call_'))}
      {filter('kind', options(KINDS, 'panel_kind_'))}
      <label class="tick">
        <input
          type="checkbox"
          data-path="fills-kit"
          checked={wanted.fillsKit}
          onChange={(event) => onWanted({ ...wanted, fillsKit: event.currentTarget.checked })}
        />
        {t('kit_fills_filter')}
      </label>
      <ChoiceField
        path="order"
        label={t('finds_by_order')}
        labelShown
        value={wanted.order}
        options={options(ORDERS, 'finds_order_')}
        onChoice={(value) => {
          const order = ORDERS.find((one) => one === value);
          if (order) onWanted(inOrder(wanted, order));
        }}
      />
      <button type="button" data-turn onClick={() => onWanted(inOrder(wanted, wanted.order))}>
        {t(wanted.descending ? 'finds_descending' : 'finds_ascending')}
      </button>
    </search>
  );
}
