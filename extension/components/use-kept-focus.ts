/**
 * Many buttons go away with what they did: "Keep", "Remove", "Undo". Browsers then put the focus at the top of the page, and whoever works
 * with keys or a screen reader has lost the place. Here it goes to what stands there instead: what has come into the same part of the
 * page since, else the nearest control of that part, else the part itself.
 */
import { useEffect } from 'preact/hooks';

const CONTROLS = ':is(a[href], button, input, select, textarea, summary):not([tabindex="-1"])';
/** In ms. Whoever knows better where the focus goes has moved it by then, and what comes late is there. */
const LATER = 60;

const controlsIn = (root: ParentNode): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(CONTROLS)];
const isOff = (one: Element): boolean => !one.isConnected || one.matches(':disabled');

export function useKeptFocus(): void {
  useEffect(() => {
    let focused: HTMLElement | null = null;
    /** All controls when it took the focus, and what is around it, from the inside. */
    let controls: HTMLElement[] = [];
    let around: HTMLElement[] = [];
    let waits = false;
    const settle = () => {
      waits = false;
      if (!focused || !isOff(focused)) return;
      const { activeElement, body } = focused.ownerDocument;
      if (activeElement !== body && activeElement !== focused) return;
      const still = around.filter(({ isConnected }) => isConnected);
      const part = still.findIndex((one) => one.matches('section, main'));
      const end = still[part];
      if (!end) return;
      const at = controls.indexOf(focused);
      const came = controlsIn(end).filter((one) => !controls.includes(one));
      const place = [came, [...controls.slice(at), ...controls.slice(0, at).reverse()]]
        .flatMap((ones) => still.slice(0, part + 1).flatMap((level) => ones.filter((one) => level.contains(one))))
        .find((one) => !isOff(one));
      if (!place) end.tabIndex = -1;
      (place ?? end).focus();
    };
    const watch = new MutationObserver(() => {
      if (waits || !focused || !isOff(focused)) return;
      waits = true;
      setTimeout(settle, LATER);
    });
    const onFocus = ({ target }: Event) => {
      focused = target as HTMLElement;
      controls = controlsIn(document);
      around = [];
      for (let one = focused.parentElement; one; one = one.parentElement) around.push(one);
      // Of a list that scrolls only the rows in sight are drawn: one that is gone was scrolled away.
      if (focused.closest('.find-rows')) focused = null;
    };
    // Left on purpose, as by a click on the empty page; browsers also say so of what is being taken away.
    const onBlur = ({ target }: Event) =>
      queueMicrotask(() => {
        if (focused === target && !isOff(target as Element)) focused = null;
      });
    document.addEventListener('focusin', onFocus);
    document.addEventListener('focusout', onBlur);
    watch.observe(document.body, { subtree: true, childList: true, attributeFilter: ['disabled'] });
    return () => {
      watch.disconnect();
      document.removeEventListener('focusin', onFocus);
      document.removeEventListener('focusout', onBlur);
    };
  }, []);
}
