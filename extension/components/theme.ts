/** Dark or light, for the whole page: styles/base.css goes by the attribute, and by the browser where there is none. */
import type { Settings } from '../../src/listing/settings.ts';

export function applyTheme(theme: Settings['theme']): void {
  const { dataset } = document.documentElement;
  if (theme === 'system') delete dataset.theme;
  else dataset.theme = theme;
}
