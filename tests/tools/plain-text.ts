/** Markdown as fields of a form want it, which show text as it is: one line for each paragraph and each entry of a list, and no marks. */

const unmarked = (text: string): string => text.replaceAll(/\*\*|`/g, '');
/** The lines of one block as one; an entry of a list begins its own. */
const joined = (block: string): string => block.replaceAll(/\n(?!- |\d+\. )\s*/g, ' ');

/** Code between fences stays as it is, without them. Headings keep their sign: they say which field what follows is for. */
export function plainText(markdown: string): string {
  const parts = markdown.split(/^```\w*\n([\s\S]*?)^```$/m);
  return parts
    .map((part, at) =>
      at % 2 === 1
        ? part.trimEnd()
        : unmarked(
            part
              .trim()
              .split(/\n{2,}/)
              .map(joined)
              .join('\n\n'),
          ),
    )
    .filter((part) => part !== '')
    .join('\n\n');
}
