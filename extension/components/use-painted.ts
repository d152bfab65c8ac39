/** Whether what has this name was painted: false in the frame that first shows it, so that what is not in sight yet can wait for the next. */
import { useEffect, useState } from 'preact/hooks';

/** True for nothing. A page in the background has no frames, and nobody looks: there nothing waits. */
export function usePainted(name: string | null): boolean {
  const [painted, setPainted] = useState<string | null>(null);
  // Effects run behind the frame that they belong to.
  useEffect(() => setPainted(name), [name]);
  return name === null || painted === name || document.hidden;
}
