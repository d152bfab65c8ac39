/** The one live region: says a text once it has stood still, and only when it is news. */
import { useEffect, useState } from 'preact/hooks';

export const SETTLE_MS = 700;

export function Announcer({ text }: { readonly text: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(text), SETTLE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="unseen" role="status" aria-live="polite">
      {said}
    </p>
  );
}
