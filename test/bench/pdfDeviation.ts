import { distanceToPath } from '../../src/core/geom/distanceToPath';
import { pathToCubics } from '../../src/core/geom/pathToCubics';
import type { Path, Point, Segment } from '../../src/core/geom/types';
import type { Page } from '../../src/core/sheets/types';
import { IDENTITY, placeOnPage } from '../readPdf/pageFrame';
import type { RawPage } from '../readPdf/readWithPdfLib';

/** Where along a curve it is held against the true arc. */
const ALONG = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

const pointsOf = ({ start, segments }: Path): readonly Point[] => [
  start,
  ...segments.flatMap((segment) => (segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to] : [segment.to])),
];

/** Points on the curves of a path. */
function curvePoints({ start, segments }: Path): readonly Point[] {
  let from = start;
  return segments.flatMap((segment) => {
    const begin = from;
    from = segment.to;
    if (segment.kind !== 'cubic') return [];
    const { c1, c2, to } = segment;
    return ALONG.map((t) => {
      const u = 1 - t;
      const at = (axis: 'x' | 'y') =>
        u ** 3 * begin[axis] + 3 * u * u * t * c1[axis] + 3 * u * t * t * c2[axis] + t ** 3 * to[axis];
      return { x: at('x'), y: at('y') };
    });
  });
}

function pathDeviation(model: Path, found: Path): number {
  const wanted = pointsOf(pathToCubics(model));
  const there = pointsOf(found);
  if (wanted.length !== there.length) return Number.POSITIVE_INFINITY;
  return Math.max(
    ...wanted.map(({ x, y }, index) =>
      Math.hypot(x - (there[index]?.x ?? Infinity), y - (there[index]?.y ?? Infinity)),
    ),
    ...curvePoints(found).map((point) => distanceToPath(model, point)),
  );
}

/** Farthest that a line read from a page lies from the display list, mm: every point and handle, and along every curve. */
export function pageDeviation({ items }: Page, found: readonly Path[]): number {
  const models = items.flatMap((item) => (item.kind === 'path' ? [item.path] : []));
  if (models.length !== found.length) return Number.POSITIVE_INFINITY;
  return Math.max(...found.map((path, index) => pathDeviation(models[index] ?? path, path)));
}

/** The lines of a page by the very figures that stand in the file, at a double's precision; it may not turn or scale. */
export function rawPaths({ content, mediaBox }: RawPage): readonly Path[] {
  if (/^(?:-?[\d.]+ ){6}cm$/m.test(content)) throw new Error('expected a page without a transform');
  const place = placeOnPage(IDENTITY, mediaBox[3] ?? Number.NaN);
  const paths: { start: Point; segments: Segment[]; closed: boolean }[] = [];
  for (const line of content.split('\n')) {
    const operator = /^(?:-?[\d.]+ )+([mlc])$/.exec(line)?.[1];
    if (operator === undefined) continue;
    const [a, b, c, d, e, f] = line.split(' ').map(Number) as [number, number, number, number, number, number];
    if (operator === 'm') paths.push({ start: place(a, b), segments: [], closed: false });
    else if (operator === 'l') paths.at(-1)?.segments.push({ kind: 'line', to: place(a, b) });
    else paths.at(-1)?.segments.push({ kind: 'cubic', c1: place(a, b), c2: place(c, d), to: place(e, f) });
  }
  return paths;
}
