import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { fail, failed, type Result } from '../result';
import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { squareSide } from './calibrationSquare';
import { correctedFor } from './correctedFor';
import { type Frame, frameOf } from './frame';
import { longLines } from './longLines';
import { paperRemedy } from './papers';
import { correctionBy, type PrinterProfile } from './proof/printerProfile';
import { bottomRow, REFERENCE_GAP, referenceBlock, squarePage } from './referenceBlock';
import { scissorsLines, type TapedPart, tapedPart } from './tapedPart';
import type { TemplateContent } from './templateContent';
import type { Page, Paper, SheetDocument } from './types';

export interface TemplateOptions {
  readonly paper: Paper;
  readonly style: LengthStyle;
  /** ISO date of issue. */
  readonly date: string;
  /** The printer that the pages are corrected for; without one they are not. */
  readonly profile?: PrinterProfile | null;
  /** Papers that the maker has, named first where this one is too small. */
  readonly owned?: readonly Paper[];
}

type Content = Omit<TemplateContent, 'correction'>;

/** Papers as they can lie under the print: upright and on their side. */
export const framesOf = (paper: Paper): readonly Frame[] => [
  frameOf(paper.width, paper.height, paper.margin),
  frameOf(paper.height, paper.width, paper.margin),
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
        ...taped.on(frame),
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
      ...taped.on(frame),
      ...scissorsLines(frame, frame.top + taped.height),
      ...row.at(frame.left, frame.bottom - row.height, { number: 1, of: 2 + more }),
    ]),
    page(squarePage(content, frame, { number: 2, of: 2 + more })),
  ];
};

const FILLS: readonly Fill[] = [onePage, twoPages];

/** What is told on pages of this frame. */
const toldOn = (frame: Frame, content: Content, profile: PrinterProfile | null): TemplateContent => ({
  ...content,
  correction: profile === null ? null : correctionBy(profile, frame),
});

const layOut = (
  paper: Paper,
  taped: TapedPart,
  content: Content,
  profile: PrinterProfile | null,
): readonly Page[] | null => {
  for (const fill of FILLS)
    for (const frame of framesOf(paper)) {
      const pages = fill(frame, taped, toldOn(frame, content, profile), 0);
      if (pages !== null) return pages;
    }
  return null;
};

/** The template's pages on one frame, with `more` sheets after them; null when it does not fit, or cannot be drawn. */
export const templatePages = (
  project: Project,
  derived: Derived,
  frame: Frame,
  { style, date, profile = null }: Omit<TemplateOptions, 'paper' | 'owned'>,
  more: number,
): readonly Page[] | null => {
  const { placement, scale } = derived;
  const taped = placement.ok && scale.ok ? tapedPart(project, derived, style) : null;
  if (taped === null || !placement.ok || !scale.ok) return null;
  const content = toldOn(frame, { project, scale: scale.value, placement: placement.value, style, date }, profile);
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
 * of this paper, saying which and naming papers that would do; and as `correctPages`.
 */
export const tapeDownTemplate = (
  project: Project,
  derived: Derived,
  options: TemplateOptions,
): Result<SheetDocument> => {
  const { paper, style, date, profile = null, owned = [] } = options;
  if (!derived.placement.ok || !derived.scale.ok) return failed(derived.issues);
  const taped = tapedPart(project, derived, style);
  if (taped === null) return failed(derived.issues);
  const content = { project, scale: derived.scale.value, placement: derived.placement.value, style, date };
  const pages = layOut(paper, taped, content, profile);
  if (pages === null) {
    const remedy = paperRemedy(
      owned,
      (each) => layOut({ ...paper, width: each.width, height: each.height }, taped, content, profile) !== null,
    );
    return fail(
      'paper',
      'sheet.large',
      `This template is ${showLength(taped.width, style)} wide and ${showLength(taped.height, style)} long: too much for ${paper.name} by its ${tooWide(paper, taped) ? 'width' : 'length'}. ${remedy}`,
    );
  }
  return correctedFor(profile, {
    title: `${project.about.name}: tape-down template`,
    language: 'en',
    date,
    fileKey: `${project.id} ${project.revision} tape-down ${paper.id} ${style.unit} ${date}`,
    pages,
  });
};
