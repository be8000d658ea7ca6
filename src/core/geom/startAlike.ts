import type { Path, Segment } from './types';

/**
 * A closed path, begun where its longest run of segments that `before` has as well begins: what they have in common comes
 * first, and dashes counted from the start lie in both alike. As it is when they have nothing in common, or when it does not
 * come back to its start.
 */
export const startAlike = (path: Path, before: Path): Path => {
  const { segments, closed } = path;
  const end = segments.at(-1)?.to;
  if (!closed || end?.x !== path.start.x || end.y !== path.start.y) return path;
  const known = new Set(before.segments.map(nameOf));
  const start = startOfLongestRun(segments.map((segment) => known.has(nameOf(segment))));
  const first = start === null ? undefined : segments[start];
  if (start === null || first === undefined) return path;
  return { start: first.to, segments: [...segments.slice(start + 1), ...segments.slice(0, start + 1)], closed };
};

/** A segment and the corner that it leads to, as text. */
const nameOf = (segment: Segment): string => {
  const { kind, to } = segment;
  const inner = kind === 'arc' ? [segment.centre] : kind === 'cubic' ? [segment.c1, segment.c2] : [];
  return [to, ...inner].map(({ x, y }) => `${x} ${y}`).join(' ');
};

/** Where the longest run begins that goes around a ring; the first place when all belong to it, null when none does. */
const startOfLongestRun = (ring: readonly boolean[]): number | null => {
  const gap = ring.indexOf(false);
  if (gap < 0) return ring.length > 0 ? 0 : null;
  let [longest, from] = [0, -1];
  let length = 0;
  // Once around from the gap, where no run can go on.
  for (let step = 1; step <= ring.length; step += 1) {
    const index = (gap + step) % ring.length;
    length = ring[index] === true ? length + 1 : 0;
    if (length > longest) [longest, from] = [length, (index - length + 1 + ring.length) % ring.length];
  }
  return longest === 0 ? null : from;
};
