/** A whole number from the command line, or the usual one. Throws for anything else: what did nothing must not pass for what found nothing. */
export function wholeNumber(text: string | undefined, usual: number, least = 0): number {
  const value = text === undefined ? usual : /^\d{1,15}$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least) return value;
  throw new Error(`"${text}" is no whole number from ${least} on`);
}
