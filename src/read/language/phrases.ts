/** Each of the phrases, parted by "|", before each of the others. */
export const each = (first: string, second: string): string =>
  first
    .split('|')
    .flatMap((one) => second.split('|').map((other) => `${one} ${other}`))
    .join('|');
