/**
 * Builds the text of a listing: words joined by single spaces, "\n" between lines (at most one empty line), "\t" between cells.
 * Keeps, for every stretch of text, the node and offset that it came from, so that spans can be shown in the page.
 */
import type { Keeps } from './sight.ts';

export interface Stretch {
  /** Offsets in the built text. */
  readonly start: number;
  readonly end: number;
  readonly node: Text;
  /** Offset in the node's data that `start` stands for. */
  readonly offset: number;
}

/** Not seen on a page: soft hyphen, zero-width space, word joiner, byte order mark. */
const UNSEEN = '\u00ad\u200b\u2060\ufeff';
const BLANK = ' \t\n\r\f\u00a0\u2007\u202f\u3000';
const OTHER_BLANKS = /[\t\r\f\u00a0\u2007\u202f\u3000]/g;

export class TextBuilder {
  readonly #limit: number;
  readonly #parts: string[] = [];
  readonly #stretches: Stretch[] = [];
  #length = 0;
  #pending = '';
  #bullet = '';
  #cut = false;

  constructor(limit: number) {
    this.#limit = limit;
  }

  get length(): number {
    return this.#length;
  }

  get text(): string {
    return this.#parts.join('');
  }

  get stretches(): readonly Stretch[] {
    return this.#stretches;
  }

  /** The text was longer than the limit: its end is missing. */
  get cut(): boolean {
    return this.#cut;
  }

  /** The last piece of the text, when nothing separates it from what comes next. */
  get tail(): string {
    return this.#pending === '' ? (this.#parts.at(-1) ?? '') : '';
  }

  space(): void {
    if (this.#pending === '') this.#pending = ' ';
  }

  /** A new line, unless one begins here anyway. */
  line(): void {
    this.#pending = this.#pending.includes('\n\n') ? '\n\n' : '\n';
  }

  /** A line break of the writer's: two of them leave an empty line. */
  lineBreak(): void {
    this.#pending = this.#pending.includes('\n') ? '\n\n' : '\n';
  }

  tab(): void {
    this.#pending = `${this.#pending.replace(/ $/, '')}\t`;
  }

  /** Takes back line breaks that stand at the end of a cell. */
  endCell(): void {
    this.#pending = this.#pending.replace(/[\n ]/g, '');
  }

  /** A bullet before the next words; none when the item turns out to be empty. */
  bullet(wanted: boolean): void {
    this.#bullet = wanted ? '• ' : '';
  }

  /** A character that the page shows by position only. */
  mark(text: string): void {
    this.#flush();
    this.#push(text);
  }

  /** The characters of a text node from `from` to `to`. */
  words(node: Text, from: number, to: number, keeps: Keeps): void {
    let at = from;
    while (at < to && !this.#cut) {
      const char = node.data.charAt(at);
      if (keeps !== 'nothing' && char === '\n') this.lineBreak();
      else if (keeps === 'all' && char === '\t') this.tab();
      else if (BLANK.includes(char) && keeps !== 'all') this.space();
      else if (!UNSEEN.includes(char)) {
        at = this.#run(node, at, to, keeps);
        continue;
      }
      at += 1;
    }
  }

  /** Takes what can be copied as it stands: words with single blanks between them. Gives where it ended. */
  #run(node: Text, from: number, to: number, keeps: Keeps): number {
    const data = node.data;
    const breaks = (index: number): boolean => index >= to || UNSEEN.includes(data.charAt(index));
    const kept = (char: string): boolean => (keeps !== 'nothing' && char === '\n') || (keeps === 'all' && char === '\t');
    let end = from;
    for (; !breaks(end); end += 1) {
      const char = data.charAt(end);
      if (kept(char)) break;
      const blank = keeps !== 'all' && BLANK.includes(char);
      if (blank && (breaks(end + 1) || BLANK.includes(data.charAt(end + 1)))) break;
    }
    this.#flush();
    const start = this.#length;
    const piece = data.slice(from, end).replace(OTHER_BLANKS, ' ');
    this.#push(keeps === 'all' ? piece : piece.replaceAll('\n', ' '));
    if (this.#length > start) this.#stretches.push({ start, end: this.#length, node, offset: from });
    return end;
  }

  #flush(): void {
    if (this.#length > 0) this.#push(this.#pending);
    if (this.#bullet !== '') this.#push(this.#bullet);
    this.#pending = '';
    this.#bullet = '';
  }

  #push(text: string): void {
    let fits = text.slice(0, this.#limit - this.#length);
    if (fits.length < text.length) {
      this.#cut = true;
      if (/[\ud800-\udbff]$/.test(fits)) fits = fits.slice(0, -1); // Not half of a character.
    }
    if (fits === '') return;
    this.#parts.push(fits);
    this.#length += fits.length;
  }
}
