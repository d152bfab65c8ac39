/** Paper can't be clicked: while the page is printed everything that folds stands open. */
import { useEffect } from 'preact/hooks';

export function useOpenForPrint(): void {
  useEffect(() => {
    let opened: HTMLDetailsElement[] = [];
    const open = () => {
      opened = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
      for (const details of opened) details.open = true;
    };
    const close = () => {
      for (const details of opened) details.open = false;
      opened = [];
    };
    addEventListener('beforeprint', open);
    addEventListener('afterprint', close);
    return () => {
      removeEventListener('beforeprint', open);
      removeEventListener('afterprint', close);
    };
  }, []);
}
