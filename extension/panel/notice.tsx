/** What stands where an answer would stand when there is none: why, and what to do. */
import { useWords } from '../components/speech.ts';

export interface NoticeProps {
  readonly title: string;
  readonly text?: string;
}

export function Notice({ title, text }: NoticeProps) {
  return (
    <header class="notice">
      <h1>{title}</h1>
      {text && <p>{text}</p>}
    </header>
  );
}

const KNOWN_REASONS: Readonly<Record<'refused' | 'failed', readonly string[]>> = {
  refused: ['browser-page', 'store', 'pdf', 'no-access', 'no-tab'],
  failed: ['empty', 'disturbed', 'bad-input', 'full', 'unexpected'],
};

/** A page that could not be read. Reasons that are not known are worded as the general case. */
export function Unread({ state, reason }: { readonly state: 'refused' | 'failed'; readonly reason: string }) {
  const { t } = useWords();
  const known = KNOWN_REASONS[state].includes(reason) ? reason : state === 'refused' ? 'no-access' : 'unexpected';
  return <Notice title={t(`panel_${state}`)} text={t(`panel_${state}_${known.replaceAll('-', '_')}`)} />;
}
