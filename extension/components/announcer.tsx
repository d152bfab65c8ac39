/** A live region: says a text once it has stood still, and only when it is news. For all that changes while one types or waits. */
import { useEffect, useRef, useState } from 'preact/hooks';

export const SETTLE_MS = 700;

export interface AnnouncerProps {
  readonly text: string;
  /** What stands there when the screen opens is read with the screen, and not said as well. */
  readonly onlyChanges?: boolean;
}

export function Announcer({ text, onlyChanges = false }: AnnouncerProps) {
  const [said, setSaid] = useState('');
  const opened = useRef(onlyChanges ? text : null);
  useEffect(() => {
    if (text === opened.current) return;
    opened.current = null;
    const timer = setTimeout(() => setSaid(text), SETTLE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="unseen" role="status" aria-live="polite">
      {said}
    </p>
  );
}
