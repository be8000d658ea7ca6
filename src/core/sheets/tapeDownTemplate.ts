import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { fail, failed, ok, type Result } from '../result';
import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { squareSide } from './calibrationSquare';
import { type Frame, frameOf } from './frame';
import { longLines } from './longLines';
import { LARGER_PAPERS, PAPERS } from './papers';
import { bottomRow, REFERENCE_GAP, referenceBlock, squarePage } from './referenceBlock';
import { scissorsLines, type TapedPart, tapedPart } from './tapedPart';
import type { TemplateContent } from './templateContent';
import type { Page, Paper, SheetDocument } from './types';

export interface TemplateOptions {
  readonly paper: Paper;
  readonly style: LengthStyle;
  /** ISO date of issue. */
  readonly date: string;
}

/** Papers as they can lie under the print: upright and on their side. */
export const framesOf = (paper: Paper): readonly Frame[] => [
  frameOf(paper.width, paper.height),
  frameOf(paper.height, paper.width),
];

const roomOf = (frame: Frame): { readonly width: number; readonly height: number } => ({
  width: frame.right - frame.left,
  height: frame.bottom - frame.top,
});

const holds = (frame: Frame, width: number, height: number): boolean =>
  width <= roomOf(frame).width && height <= roomOf(frame).height;

/** The template's pages on this frame, `more` sheets after them; null when it does not fit. */
type Fill = (frame: Frame, taped: TapedPart, content: TemplateContent, more: number) => readonly Page[] | null;

/** Taped part above, square and tables below, all on one page; null when it does not fit. */
const onePage: Fill = (frame, taped, content, more) => {
  const reference = referenceBlock(content, roomOf(frame).width);
  if (reference === null || !holds(frame, taped.width, taped.height + REFERENCE_GAP + reference.height)) return null;
  const cut = frame.top + taped.height;
  return [
    {
      width: frame.width,
      height: frame.height,
      items: [
        ...taped.at((frame.left + frame.right) / 2, frame.top),
        ...scissorsLines(frame, cut),
        ...reference.at(frame.left, frame.bottom - reference.height, { number: 1, of: 1 + more }),
        ...longLines(frame, content.style.unit),
      ],
    },
  ];
};

/** Taped part and tables on the first page, the square on a page of its own; null when they do not fit. */
const twoPages: Fill = (frame, taped, content, more) => {
  const row = bottomRow(content, roomOf(frame).width);
  if (row === null || !holds(frame, taped.width, taped.height + REFERENCE_GAP + row.height)) return null;
  const side = squareSide(content.style.unit);
  if (!holds(frame, side, side)) return null;
  const page = (items: Page['items']): Page => ({
    width: frame.width,
    height: frame.height,
    items: [...items, ...longLines(frame, content.style.unit)],
  });
  return [
    page([
      ...taped.at((frame.left + frame.right) / 2, frame.top),
      ...scissorsLines(frame, frame.top + taped.height),
      ...row.at(frame.left, frame.bottom - row.height, { number: 1, of: 2 + more }),
    ]),
    page(squarePage(content, frame, { number: 2, of: 2 + more })),
  ];
};

const FILLS: readonly Fill[] = [onePage, twoPages];

const layOut = (paper: Paper, taped: TapedPart, content: TemplateContent): readonly Page[] | null => {
  for (const fill of FILLS)
    for (const frame of framesOf(paper)) {
      const pages = fill(frame, taped, content, 0);
      if (pages !== null) return pages;
    }
  return null;
};

/** The template's pages on one frame, with `more` sheets after them; null when it does not fit, or cannot be drawn. */
export const templatePages = (
  project: Project,
  derived: Derived,
  frame: Frame,
  options: Pick<TemplateOptions, 'style' | 'date'>,
  more: number,
): readonly Page[] | null => {
  const { placement, scale } = derived;
  const taped = placement.ok && scale.ok ? tapedPart(project, derived, options.style) : null;
  if (taped === null || !placement.ok || !scale.ok) return null;
  const content = { project, scale: scale.value, placement: placement.value, ...options };
  for (const fill of FILLS) {
    const pages = fill(frame, taped, content, more);
    if (pages !== null) return pages;
  }
  return null;
};

/** Whether the taped part is too wide for this paper either way; else it is its length that does not fit. */
const tooWide = (paper: Paper, taped: TapedPart): boolean =>
  framesOf(paper).every((frame) => taped.width > roomOf(frame).width);

/**
 * The tape-down template, true size: one page upright or on its side where everything fits, else the calibration square on
 * a second page. Fails with code sheet.large when the template is too wide or too long for every page
 * of this paper, saying which and naming papers that would do.
 */
export const tapeDownTemplate = (
  project: Project,
  derived: Derived,
  options: TemplateOptions,
): Result<SheetDocument> => {
  const { paper, style, date } = options;
  if (!derived.placement.ok || !derived.scale.ok) return failed(derived.issues);
  const taped = tapedPart(project, derived, style);
  if (taped === null) return failed(derived.issues);
  const content = { project, scale: derived.scale.value, placement: derived.placement.value, style, date };
  const pages = layOut(paper, taped, content);
  if (pages === null) {
    const wouldDo = [...PAPERS, ...LARGER_PAPERS].filter((each) => layOut(each, taped, content) !== null);
    const names = wouldDo.map(({ name }) => name).join(', ');
    return fail(
      'paper',
      'sheet.large',
      `This template is ${showLength(taped.width, style)} wide and ${showLength(taped.height, style)} long: too much for ${paper.name} by its ${tooWide(paper, taped) ? 'width' : 'length'}. ${names === '' ? 'None of the usual papers would do.' : `These papers would do: ${names}.`}`,
    );
  }
  return ok({
    title: `${project.about.name}: tape-down template`,
    language: 'en',
    date,
    fileKey: `${project.id} ${project.revision} tape-down ${paper.id} ${style.unit} ${date}`,
    pages,
  });
};
