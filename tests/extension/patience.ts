/** A condition is waited for as long as a busy machine may need; vitest itself gives up after a second. */
import { vi } from 'vitest';

const LEAST = 20_000;
const waitFor = vi.waitFor;

vi.waitFor = (look, options) => {
  const asked = typeof options === 'number' ? { timeout: options } : options;
  return waitFor(look, { ...asked, timeout: Math.max(asked?.timeout ?? 0, LEAST) });
};
