/** The table: categories down, used, new and shipping across. */
import { RATE_CATEGORIES } from '../../../src/listing/settings.ts';
import { useWords } from '../../components/speech.ts';
import { Cell } from './cell.tsx';
import { nameOf, perWords } from './figures.ts';
import type { Column, Rates } from './use-rates.ts';

export const COLUMNS: readonly Column[] = ['used', 'new', 'shipping'];

export function RateTable({ rates }: { readonly rates: Rates }) {
  const words = useWords();
  const { t } = words;
  return (
    <section aria-labelledby="rates-table">
      <h2 id="rates-table">{t('rates_table')}</h2>
      <div class="rates-box">
        <table class="rates-table">
          <thead>
            <tr>
              <th scope="col">{t('rates_category')}</th>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {t(`rates_column_${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {RATE_CATEGORIES.map((category) => (
              <tr key={category} data-category={category}>
                <th scope="row">
                  {nameOf(words, category)} <span class="quiet">{perWords(words, category, rates.settings)}</span>
                </th>
                {COLUMNS.map((column) => (
                  <Cell key={column} rates={rates} category={category} column={column} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
