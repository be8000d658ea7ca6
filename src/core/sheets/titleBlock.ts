import type { Project } from '../document/types';
import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { rectanglePath } from '../geom/rectanglePath';
import type { Point } from '../geom/types';
import type { Scale } from '../instrument/types';
import { DATUM_NAME } from '../placement/datumName';
import type { Cut } from '../text/advanceWidth';
import { measureText } from '../text/measureText';
import { formatLength, type LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { sheetLine, sheetPath, sheetText } from './sheetItems';

/** Height of the title block, mm. */
export const TITLE_BLOCK_HEIGHT = 32;
const PITCH = 4;

/** The text, or as much of it as fits with an ellipsis. */
const fitted = (text: string, width: number, height: number, cut: Cut): string => {
  if (measureText(text, height, cut) <= width) return text;
  let kept = text;
  while (kept !== '' && measureText(`${kept}…`, height, cut) > width) kept = [...kept].slice(0, -1).join('');
  return `${kept.trimEnd()}…`;
};

/** A diameter as strings are sold: thousandths of an inch, ".012". */
const gauge = (mm: number): string => formatLength(mm, { unit: 'in', decimals: 3 }).replace(/^0/, '');

const setWords = (project: Project): string => {
  const diameters = project.strings.map(({ diameter }) => diameter);
  return `strings ${gauge(Math.min(...diameters))} to ${gauge(Math.max(...diameters))} in`;
};

const scaleWords = (scale: Scale, style: LengthStyle): string => {
  const from =
    scale.from === 'entered' ? 'as entered' : `from ${scale.readings} reading${scale.readings === 1 ? '' : 's'}`;
  return `scale ${showLength(scale.scaleLength, style)} ${from}`;
};

/** What this sheet is of, after ISO 7200: title, kind of sheet, sheet number, scale, revision and date of issue. */
export const titleBlock = (
  at: Point,
  width: number,
  project: Project,
  scale: Scale,
  sheet: { readonly kind: string; readonly number: number; readonly of: number; readonly date: string },
  style: LengthStyle,
): readonly Item[] => {
  const { action } = project.setup;
  const inner = width - 4;
  const hand = `${project.instrument.hand} hand`;
  const nameWidth = inner - measureText(` · ${hand}`, TEXT_HEIGHT.key, 'bold');
  const name = fitted(project.about.name, nameWidth, TEXT_HEIGHT.key, 'bold');
  const lines = [
    scaleWords(scale, style),
    `measured from the ${DATUM_NAME[project.instrument.nut.datum].full}`,
    `${setWords(project)}, action ${formatLength(action.treble, style)} / ${showLength(action.bass, style)} wanted`,
    `${sheet.kind}, sheet ${sheet.number} of ${sheet.of}, 1:1`,
    'no print correction (1.000 × 1.000)',
    `${sheet.date}, revision ${project.revision}`,
  ];
  return [
    sheetPath('title-frame', 'frame', rectanglePath(at.x, at.y, width, TITLE_BLOCK_HEIGHT)),
    sheetText('title-name', 'key', { x: at.x + 2, y: at.y + 3.4 }, `${name} · ${hand}`),
    sheetLine('title-line', 'cross', { x: at.x, y: at.y + 6.2 }, { x: at.x + width, y: at.y + 6.2 }),
    ...lines.map((line, index) =>
      sheetText(
        `title-${index}`,
        'note',
        { x: at.x + 2, y: at.y + 8.7 + index * PITCH },
        fitted(line, inner, TEXT_HEIGHT.note, 'regular'),
      ),
    ),
  ];
};
