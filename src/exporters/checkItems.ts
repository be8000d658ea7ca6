import type { Item } from '../core/drawing/types';
import { validatePath } from '../core/geom/validatePath';
import { fail, failed, type Issue, issue, ok, type Result } from '../core/result';

/** No drawing here reaches farther from the nut than this, mm; far below what any of the files can hold. */
const FARTHEST_MM = 10_000;

/** The numbers of an item but for the centres of arcs, which lie far off where an arc is flat. */
const numbersOf = (item: Item): readonly number[] => {
  if (item.kind === 'text') return [item.at.x, item.at.y, item.height, item.angle];
  const points = item.path.segments.flatMap((segment) =>
    segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to] : [segment.to],
  );
  return [item.path.start, ...points].flatMap(({ x, y }) => [x, y]);
};

const issuesOf = (item: Item): readonly Issue[] => {
  const far = numbersOf(item).find((value) => !(Math.abs(value) <= FARTHEST_MM));
  if (far !== undefined)
    return [issue(item.id, 'drawing.number', `“${item.part}”: expected at most ${FARTHEST_MM} mm, got ${far}.`)];
  if (item.kind === 'text')
    return item.height > 0
      ? []
      : [issue(item.id, 'drawing.number', `“${item.text}”: expected a font size above 0 mm, got ${item.height}.`)];
  const path = validatePath(item.path);
  return path.ok
    ? []
    : path.issues.map(({ path: part, code, message }) =>
        issue(`${item.id}.${part}`, code, `“${item.part}”: ${message}`),
      );
};

/**
 * A display list that can be written to a file, or why it cannot. Codes: drawing.empty (nothing is drawn), drawing.number
 * (a coordinate or size that no drawing has), and those of `validatePath`.
 */
export const checkItems = (items: readonly Item[]): Result<readonly Item[]> => {
  if (!items.some(({ kind }) => kind === 'path'))
    return fail('', 'drawing.empty', 'Nothing is drawn yet. Expected a bridge that could be computed.');
  const issues = items.flatMap(issuesOf);
  return issues.length === 0 ? ok(items) : failed(issues);
};
