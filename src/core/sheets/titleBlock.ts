import type { Project } from '../document/types';
import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { rectanglePath } from '../geom/rectanglePath';
import type { Point } from '../geom/types';
import type { Scale } from '../instrument/types';
import { DATUM_NAME } from '../placement/datumName';
import { measureText } from '../text/measureText';
import { formatLength, type LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { factorWords, readWords } from './correctionWords';
import { fittedText } from './fittedText';
import type { PrintCorrection } from './proof/types';
import { sheetLine, sheetPath, sheetText } from './sheetItems';

const PITCH = 4;

/** Height of the title block, mm: one line more where the print is corrected. */
export const titleBlockHeight = (correction: PrintCorrection | null): number => (correction === null ? 32 : 32 + PITCH);

/** A diameter as strings are sold: thousandths of an inch, ".012". */
const gauge = (mm: number): string => formatLength(mm, { unit: 'in', decimals: 3 }).replace(/^0/, '');

/** For which printer a print is corrected, and when it was read; a long name is cut, the date never. */
const printerLine = (correction: PrintCorrection, width: number): string => {
  const { name } = correction;
  const read = `, read ${readWords(correction)}`;
  const room = width - measureText(`for ${read}`, TEXT_HEIGHT.note, 'regular');
  return `for ${fittedText(name, room, TEXT_HEIGHT.note, 'regular')}${read}`;
};

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
  sheet: {
    readonly kind: string;
    readonly number: number;
    readonly of: number;
    readonly date: string;
    readonly correction: PrintCorrection | null;
  },
  style: LengthStyle,
): readonly Item[] => {
  const { action } = project.setup;
  const inner = width - 4;
  const hand = `${project.instrument.hand} hand`;
  const nameWidth = inner - measureText(` · ${hand}`, TEXT_HEIGHT.key, 'bold');
  const name = fittedText(project.about.name, nameWidth, TEXT_HEIGHT.key, 'bold');
  const lines = [
    scaleWords(scale, style),
    `measured from the ${DATUM_NAME[project.instrument.nut.datum].full}`,
    `${setWords(project)}, action ${formatLength(action.treble, style)} / ${showLength(action.bass, style)} wanted`,
    `${sheet.kind}, sheet ${sheet.number} of ${sheet.of}, 1:1`,
    factorWords(sheet.correction),
    ...(sheet.correction === null ? [] : [printerLine(sheet.correction, inner)]),
    `${sheet.date}, revision ${project.revision}`,
  ];
  return [
    sheetPath('title-frame', 'frame', rectanglePath(at.x, at.y, width, titleBlockHeight(sheet.correction))),
    sheetText('title-name', 'key', { x: at.x + 2, y: at.y + 3.4 }, `${name} · ${hand}`),
    sheetLine('title-line', 'cross', { x: at.x, y: at.y + 6.2 }, { x: at.x + width, y: at.y + 6.2 }),
    ...lines.map((line, index) =>
      sheetText(
        `title-${index}`,
        'note',
        { x: at.x + 2, y: at.y + 8.7 + index * PITCH },
        fittedText(line, inner, TEXT_HEIGHT.note, 'regular'),
      ),
    ),
  ];
};
