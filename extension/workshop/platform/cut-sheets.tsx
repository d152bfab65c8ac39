/** The cut list: each sheet to scale with its pieces, and the same in words. Sheets that are cut alike are drawn once. */
import type { PlatformPlan } from '../../../src/kit/platform.ts';
import type { CutPiece, CutSheet } from '../../../src/kit/platform-cuts.ts';
import { SHEETS } from '../../../src/kit/platform-sheets.ts';
import { millimetresToInches } from '../../../src/units/length.ts';
import { useWords, type Words } from '../../components/speech.ts';
import { keyTail } from '../../panel/item-words.ts';

/** Drawn size of a millimetre, in px of the drawing. */
const SCALE = 0.08;
const MARGIN = 1;
/** So many px of the drawing make the usual size of text. */
const REM = 16;

interface Alike {
  readonly sheet: CutSheet;
  count: number;
}

/** To the millimetre: halves of sheets differ in the last digits of their sums. */
const shapeOf = ({ sheet, pieces }: CutSheet): string =>
  [
    sheet,
    ...pieces.flatMap(({ acrossMm, alongMm, acrossSizeMm, alongSizeMm }) =>
      [acrossMm, alongMm, acrossSizeMm, alongSizeMm].map(Math.round),
    ),
  ].join();

/** Sheets cut alike together, in the order of the plan. */
function grouped(sheets: readonly CutSheet[]): Alike[] {
  const groups = new Map<string, Alike>();
  for (const sheet of sheets) {
    const shape = shapeOf(sheet);
    const known = groups.get(shape);
    if (known) known.count += 1;
    else groups.set(shape, { sheet, count: 1 });
  }
  return [...groups.values()];
}

/** Both ways in inches, as sheets are sold, and millimetres. */
const sizeWords = ({ say, t }: Words, piece: CutPiece): string =>
  t('kit_size', {
    a: say.number(millimetresToInches(piece.acrossSizeMm), 1),
    b: say.number(millimetresToInches(piece.alongSizeMm), 1),
    amm: say.number(piece.acrossSizeMm, 0),
    bmm: say.number(piece.alongSizeMm, 0),
  });

const isWhole = ({ sheet, pieces }: CutSheet): boolean => {
  const { material, shortMm, longMm } = SHEETS[sheet];
  const [first] = pieces;
  return (
    material !== 'mdf' &&
    pieces.length === 1 &&
    first !== undefined &&
    Math.abs(first.acrossSizeMm - shortMm) < 1 &&
    Math.abs(first.alongSizeMm - longMm) < 1
  );
};

export function CutSheets({ plan }: { readonly plan: PlatformPlan }) {
  const words = useWords();
  const { t } = words;
  return (
    <section aria-labelledby="platform-cuts">
      <h2 id="platform-cuts">{t('kit_cuts')}</h2>
      <p class="line-notes">{t('kit_cuts_kerf')}</p>
      <ul class="kit-sheets">
        {grouped(plan.sheets).map(({ sheet, count }, index) => (
          <li key={index} data-sheet={sheet.sheet}>
            <Drawing sheet={sheet} />
            <p>
              {t('kit_counted', { count, name: t(`kit_sheet_${keyTail(sheet.sheet)}`) })}:{' '}
              {isWhole(sheet) ? t('kit_cut_whole') : sheet.pieces.map((piece) => sizeWords(words, piece)).join('; ')}
              {sheet.sheet === 'mdf-3/4' && `. ${t('kit_cut_trim')}`}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The sheet stands upright: its short side across. What it shows stands in words beside it. */
function Drawing({ sheet }: { readonly sheet: CutSheet }) {
  const { say } = useWords();
  const [width, height] = [sheet.shortMm * SCALE, sheet.longMm * SCALE];
  return (
    <svg
      class="kit-sheet"
      aria-hidden="true"
      width={`${(width + 2 * MARGIN) / REM}rem`}
      height={`${(height + 2 * MARGIN) / REM}rem`}
      viewBox={`${-MARGIN} ${-MARGIN} ${width + 2 * MARGIN} ${height + 2 * MARGIN}`}
    >
      <rect class="kit-sheet-waste" width={width} height={height} />
      {sheet.pieces.map((piece, index) => (
        <g key={index}>
          <rect
            class="kit-sheet-piece"
            x={piece.acrossMm * SCALE}
            y={piece.alongMm * SCALE}
            width={piece.acrossSizeMm * SCALE}
            height={piece.alongSizeMm * SCALE}
          />
          {piece.acrossSizeMm * SCALE > 46 && piece.alongSizeMm * SCALE > 14 && (
            <text x={(piece.acrossMm + piece.acrossSizeMm / 2) * SCALE} y={(piece.alongMm + piece.alongSizeMm / 2) * SCALE}>
              {say.number(millimetresToInches(piece.acrossSizeMm), 1)} × {say.number(millimetresToInches(piece.alongSizeMm), 1)}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
