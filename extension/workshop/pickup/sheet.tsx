/** The sheet for one pickup, in the order of the day: what to bring, what to ask and check, what to pay, how to load. */
import { loadingCautions, pickupSteps, toolsFor } from '../../../src/pickup/steps.ts';
import { useWords } from '../../components/speech.ts';
import { Editing } from '../../panel/edits.ts';
import { SellerMessage } from '../../panel/seller-message.tsx';
import { Bought } from '../bought-form.tsx';
import { type OpenFind, useFind } from '../finds/use-find.ts';
import type { WorkshopHost } from '../host.ts';
import { addressOf } from '../route.ts';
import { Taking, useTaking } from '../taking.tsx';
import { Leave } from './leave.tsx';
import { PriceNow } from './price-now.tsx';
import { Step } from './step.tsx';

export interface SheetProps {
  readonly host: WorkshopHost;
  readonly id: string;
  /** The goods of it that are meant, where the address says so. */
  readonly only?: readonly string[] | null | undefined;
}

export function Sheet({ host, id, only = null }: SheetProps) {
  const { say, t } = useWords();
  const { open, failed } = useFind(host, id);
  return (
    <>
      <p class="pickup-others no-print">
        <a href={addressOf('pickup')}>{t('pickup_others')}</a>
      </p>
      {failed && <p role="alert">{say(failed)}</p>}
      {open ? <Opened host={host} whole={open} only={only} /> : !failed && <p class="quiet">{t('workshop_opening')}</p>}
    </>
  );
}

function Opened({ host, whole, only }: Pick<SheetProps, 'host' | 'only'> & { readonly whole: OpenFind }) {
  const { say, t } = useWords();
  const taking = useTaking(host, whole, only);
  const { open } = taking;
  const { find, evaluation, edits, settings, record } = open;
  const { reading, questions, cautions } = evaluation;
  const steps = pickupSteps(reading);
  return (
    <div class="pickup">
      <h2 class="pickup-title">
        <a href={addressOf('finds', find.id)}>
          <bdi>{find.title || t('finds_untitled')}</bdi>
        </a>
        {reading.place && <span class="quiet"> {reading.place.value}</span>}
      </h2>
      <Taking {...taking} />
      <PriceNow open={open} />
      <p class="no-print">
        <button type="button" data-print onClick={() => print()}>
          {t('pickup_print')}
        </button>
      </p>
      <section aria-labelledby="bring-heading" class="bring">
        <h2 id="bring-heading">{t('pickup_bring')}</h2>
        <ul class="ticks">
          {toolsFor(steps).map((tool) => (
            <li key={tool}>
              <label class="tick">
                <input type="checkbox" data-tool={tool} /> {t(`pickup_tool_${tool}`)}
              </label>
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="ask-heading">
        <h2 id="ask-heading">{t('pickup_ask')}</h2>
        {questions.length === 0 ? (
          <p>{t('pickup_ask_none')}</p>
        ) : (
          <ul class="plain-list">
            {questions.map((question) => (
              <li key={question.id}>{say(question.says)}</li>
            ))}
          </ul>
        )}
        <SellerMessage evaluation={evaluation} title={find.title} only={taking.taken} />
      </section>
      <section aria-labelledby="check-heading">
        <h2 id="check-heading">{t('pickup_check')}</h2>
        <Editing.Provider value={edits}>
          <ol class="pickup-steps">
            {steps.map((step) => (
              <Step key={step.id} step={step} find={find.id} unit={settings.unit} record={record} />
            ))}
          </ol>
        </Editing.Provider>
      </section>
      <Leave evaluation={evaluation} />
      <section aria-labelledby="load-heading" class="loading">
        <h2 id="load-heading">{t('caution_heading')}</h2>
        <ul class="plain-list">
          {cautions.map(({ kind, says }) => (
            <li key={kind}>{say(says)}</li>
          ))}
          {loadingCautions(reading).map((one) => (
            <li key={one}>{t(`pickup_load_${one}`)}</li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="bought-heading" class="no-print">
        <h2 id="bought-heading">{t('pickup_bought')}</h2>
        <Bought host={host} open={open} />
      </section>
    </div>
  );
}
