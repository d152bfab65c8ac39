/** Kit: what is needed and owned, the loads that it makes, and the platform to build. */
import { useEffect, useRef } from 'preact/hooks';
import { useWords } from '../../components/speech.ts';
import { failureMessage } from '../../store/index.ts';
import { Platform } from '../platform/index.tsx';
import { addressOf } from '../route.ts';
import type { ScreenProps } from '../screens.ts';
import { WithStore } from '../use-store.tsx';
import { Loads } from './loads/index.tsx';
import { Overview } from './overview.tsx';
import { useKit } from './use-kit.ts';

const PARTS = ['', 'loads', 'platform'] as const;

export default function Kit({ host, rest }: ScreenProps) {
  return (
    <WithStore host={host}>
      <Opened host={host} rest={rest} />
    </WithStore>
  );
}

function Opened({ host, rest }: ScreenProps) {
  const { say, t } = useWords();
  const kit = useKit(host);
  const part = PARTS.find((one) => one === rest) ?? '';
  const body = useRef<HTMLElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    // Another part that was asked for takes the focus, so that its name is read out.
    if (moved.current) body.current?.focus();
    moved.current = true;
  }, [part]);
  if (kit === null) return <p class="quiet">{t('workshop_opening')}</p>;
  return (
    <>
      <nav class="kit-parts no-print" aria-label={t('kit_parts')}>
        <ul>
          {PARTS.map((one) => (
            <li key={one}>
              <a href={addressOf('kit', one)} aria-current={one === part ? 'page' : undefined}>
                {t(`kit_part_${one || 'overview'}`)}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      {kit.failed && <p role="alert">{say(failureMessage(kit.failed))}</p>}
      <section
        class="kit"
        ref={body}
        tabIndex={-1}
        aria-label={t(`kit_part_${part || 'overview'}`)}
        data-part={part || 'overview'}
      >
        {part === '' && <Overview kit={kit} />}
        {part === 'loads' && <Loads host={host} kit={kit} />}
        {part === 'platform' && <Platform kit={kit} />}
      </section>
    </>
  );
}
