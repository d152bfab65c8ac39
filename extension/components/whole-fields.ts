/**
 * A field of several lines that the keyboard leads to comes into sight whole, where the window has room for it: browsers bring only the line with the
 * caret. Not after the pointer: what one presses must not move away under it. For the page's entry, once.
 */
export function showWholeFields(): void {
  let byKey = false;
  addEventListener('keydown', () => {
    byKey = true;
  });
  addEventListener('pointerdown', () => {
    byKey = false;
  });
  addEventListener('focusin', ({ target }) => {
    if (!byKey || !(target instanceof HTMLTextAreaElement) || target.offsetHeight > innerHeight) return;
    target.scrollIntoView({ block: 'nearest' });
  });
}
