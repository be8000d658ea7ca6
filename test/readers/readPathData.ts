import type { Point, Segment } from '../../src/core/geom/types';
import type { LinesOfPage } from '../readback/deviations';

/** One step of a path: where it moves or what it draws, in the file's own coordinates. */
export type Step =
  | { readonly kind: 'move' | 'line'; readonly to: readonly [number, number] }
  | { readonly kind: 'curve'; readonly to: readonly [number, number, number, number, number, number] }
  | { readonly kind: 'close' };

/** Steps as lines and curves; `place` brings the file's coordinates to mm from the top left of the page. */
export function linesFromSteps(steps: readonly Step[], place: (x: number, y: number) => Point): LinesOfPage['paths'] {
  const outlines: { readonly start: Point; readonly segments: Segment[] }[] = [];
  for (const step of steps) {
    const outline = outlines.at(-1);
    if (step.kind === 'move') outlines.push({ start: place(...step.to), segments: [] });
    else if (step.kind === 'line') outline?.segments.push({ kind: 'line', to: place(...step.to) });
    else if (step.kind === 'curve') {
      const [a, b, c, d, e, f] = step.to;
      outline?.segments.push({ kind: 'cubic', c1: place(a, b), c2: place(c, d), to: place(e, f) });
    }
  }
  return outlines.map(({ start, segments }) => ({
    start,
    segments,
    points: [start, ...segments.map(({ to }) => to)],
  }));
}
