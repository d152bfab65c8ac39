/** What was typed, kept while the page is open, so that looking at another screen loses no weighing. */
const NAME = 'weighings';

export function loadDraft(): string {
  try {
    return sessionStorage.getItem(NAME) ?? '';
  } catch {
    // Storage may be shut off: then only this screen remembers.
    return '';
  }
}

export function saveDraft(text: string): void {
  try {
    sessionStorage.setItem(NAME, text);
  } catch {
    // As above.
  }
}
