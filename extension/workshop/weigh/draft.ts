const NAME = 'weighings';

/**
 * What was typed, kept while the page is open, so that looking at another screen loses no weighing. `of`: whose plates they are, and what was
 * known of them when the typing began; empty for those that are written down here alone.
 */
const nameOf = (of: string): string => `${NAME} ${of}`;

/** Empty where nothing stands there. */
export function loadDraft(of: string): string {
  try {
    return sessionStorage.getItem(nameOf(of)) ?? '';
  } catch {
    // Storage may be shut off: then only this screen remembers.
    return '';
  }
}

export function saveDraft(of: string, text: string): void {
  try {
    sessionStorage.setItem(nameOf(of), text);
  } catch {
    // As above.
  }
}
