import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import {
  finishPaths,
  IDENTITY,
  type Matrix,
  MM_PER_POINT,
  multiply,
  type Outline,
  placeOnPage,
  scaleOf,
} from './pageFrame';
import type { ReadPage, ReadPath, ReadText } from './types';

/** What pdfjs tells of a file. */
export interface PdfjsReading {
  readonly pages: readonly ReadPage[];
  readonly title: string;
  readonly language: string;
  readonly version: string;
  readonly creationDate: string;
  readonly viewerPreferences: Readonly<Record<string, unknown>>;
}

/** Reads a PDF with pdfjs: every line from the operator list, every text as the file spells it. */
export async function readWithPdfjs(bytes: Uint8Array): Promise<PdfjsReading> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, disableFontFace: true, useSystemFonts: false });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1)
    pages.push(await readPage(await document.getPage(number)));
  const info = (await document.getMetadata()).info as Record<string, unknown>;
  const viewerPreferences = ((await document.getViewerPreferences()) ?? {}) as Record<string, unknown>;
  await task.destroy();
  return {
    pages,
    title: String(info.Title),
    language: String(info.Language),
    version: String(info.PDFFormatVersion),
    creationDate: String(info.CreationDate),
    viewerPreferences,
  };
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  if (left !== 0 || bottom !== 0) throw new Error(`expected a page box from 0 0, got ${page.view.join(' ')}`);
  return {
    width: (right - left) * MM_PER_POINT * page.userUnit,
    height: (top - bottom) * MM_PER_POINT * page.userUnit,
    rotation: page.rotate,
    paths: await readPaths(page, top),
    texts: await readTexts(page, top),
  };
}

async function readTexts(page: PDFPageProxy, pageHeight: number): Promise<ReadText[]> {
  const { items } = await page.getTextContent({ disableNormalization: true });
  return items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const matrix = item.transform as unknown as Matrix;
    return [
      {
        text: item.str,
        start: placeOnPage(matrix, pageHeight)(0, 0),
        height: scaleOf(matrix) * MM_PER_POINT,
        angle: -Math.atan2(matrix[1], matrix[0]),
        width: item.width * MM_PER_POINT,
      },
    ];
  });
}

interface State {
  readonly matrix: Matrix;
  readonly width: number;
  readonly dash: readonly number[];
}

const STROKES: readonly number[] = [OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke];
const FILLS: readonly number[] = [OPS.fill, OPS.eoFill, OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke];

async function readPaths(page: PDFPageProxy, pageHeight: number): Promise<ReadPath[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const saved: State[] = [];
  const paths: ReadPath[] = [];
  let state: State = { matrix: IDENTITY, width: 1, dash: [] };
  for (const [index, operator] of fnArray.entries()) {
    const args: unknown = argsArray[index];
    switch (operator) {
      case OPS.save:
        saved.push(state);
        break;
      case OPS.restore:
        state = saved.pop() ?? state;
        break;
      case OPS.transform:
        state = { ...state, matrix: multiply(args as Matrix, state.matrix) };
        break;
      case OPS.setLineWidth:
        state = { ...state, width: (args as [number])[0] };
        break;
      case OPS.setDash:
        state = { ...state, dash: (args as [number[]])[0] };
        break;
      case OPS.constructPath: {
        const [paint, [data]] = args as [number, [Float32Array | null]];
        const { matrix, width, dash } = state;
        const scale = scaleOf(matrix) * MM_PER_POINT;
        paths.push(
          ...finishPaths(readOutlines(data ?? [], placeOnPage(matrix, pageHeight)), {
            stroked: STROKES.includes(paint),
            filled: FILLS.includes(paint),
            width: width * scale,
            dash: dash.map((length) => length * scale),
          }),
        );
      }
    }
  }
  return paths;
}

/** pdfjs packs a path as a step's number and its coordinates: 0 move, 1 line, 2 cubic, 4 close. */
function readOutlines(data: ArrayLike<number>, place: ReturnType<typeof placeOnPage>): Outline[] {
  const outlines: Outline[] = [];
  let index = 0;
  const next = () => data[index++] ?? Number.NaN;
  const point = () => place(next(), next());
  while (index < data.length) {
    const step = next();
    const outline = outlines.at(-1);
    if (step === 0) outlines.push({ start: point(), segments: [], closed: false });
    else if (step === 1) outline?.segments.push({ kind: 'line', to: point() });
    else if (step === 2) outline?.segments.push({ kind: 'cubic', c1: point(), c2: point(), to: point() });
    else if (step === 4 && outline) outline.closed = true;
    else throw new Error(`pdfjs gave a step of a path that this reader does not know: ${step}`);
  }
  return outlines;
}
