/** One ad's answer, in the order in which it is needed. */
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import { CopyButton } from '../components/copy-button.tsx';
import { useWords } from '../components/speech.ts';
import { CallHeader } from './call.tsx';
import { Cautions } from './cautions.tsx';
import { Cost } from './cost.tsx';
import { Doubts } from './doubts.tsx';
import { Drive, type DriveProps } from './drive.tsx';
import { Flags } from './flags.tsx';
import { Keep } from './keep.tsx';
import type { KeepHost } from './keep-host.ts';
import { KeepPrice } from './keep-price.tsx';
import { Load } from './load.tsx';
import type { Turning } from './panel.tsx';
import { Questions } from './questions.tsx';
import { Reading } from './reading.tsx';
import { Reasons } from './reasons.tsx';
import { summary } from './summary.ts';
import { Turns } from './turns.tsx';
import { Working } from './working.tsx';

export interface AnswerProps extends Omit<DriveProps, 'trip' | 'prospect' | 'place'> {
  readonly evaluation: Evaluation;
  readonly listing: PageListing;
  readonly turnsOf: Turning | null;
  /** Null where the ad is open as a find already. */
  readonly keeping: KeepHost | null;
  /** False while only what is in sight first is wanted: the rest, most of it folded away, is drawn once that is painted. */
  readonly whole?: boolean;
}

export function Answer({ evaluation, listing, settings, turnsOf, keeping, whole = true, ...drive }: AnswerProps) {
  const { reading, worth, flags } = evaluation;
  return (
    <>
      <CallHeader evaluation={evaluation} />
      {keeping && <Keep host={keeping} listing={listing} evaluation={evaluation} />}
      {keeping && <KeepPrice host={keeping} listing={listing} evaluation={evaluation} />}
      <Cost worth={worth} items={reading.items} unit={settings.unit} />
      <Reasons because={evaluation.call.because} flags={flags} />
      {turnsOf && <Turns evaluation={evaluation} settings={settings} turnsOf={turnsOf} />}
      <Flags flags={flags} items={reading.items} />
      <Doubts doubts={reading.doubts} />
      {whole && <Rest evaluation={evaluation} listing={listing} settings={settings} {...drive} />}
    </>
  );
}

function Rest({ evaluation, listing, settings, ...drive }: Omit<AnswerProps, 'turnsOf' | 'keeping' | 'whole'>) {
  const words = useWords();
  const { reading, worth } = evaluation;
  const unit = settings.unit;
  return (
    <>
      <Questions evaluation={evaluation} title={listing.title} />
      <Reading reading={reading} currency={reading.asking.currency?.value ?? worth.currency} unit={unit} />
      <Drive
        trip={evaluation.trip}
        prospect={evaluation.prospect}
        place={reading.place?.value ?? null}
        settings={settings}
        {...drive}
      />
      <Cautions cautions={evaluation.cautions} settings={settings} onSettings={drive.onSettings} />
      <Load estimates={evaluation.estimates} items={reading.items} settings={settings} onSettings={drive.onSettings} />
      <Working
        evaluation={evaluation}
        settings={settings}
        distanceUnit={evaluation.trip?.distance.unit ?? drive.unit}
        onSettings={drive.onSettings}
      />
      <CopyButton name="summary" words={words.t('panel_copy_summary')} text={() => summary(words, evaluation, listing, unit)} />
    </>
  );
}
