import type { Hole } from '../bridge/types';
import { between, distance, dot, subtract } from '../geom/points';
import type { Point } from '../geom/types';
import type { WholeDesign } from './designed';
import type { Finding } from './finding';
import { reamed } from './mouths';
import { checkPart, type Wall } from './wallCheck';

const NAME = 'Strings clear the other pins';

/** How far a string from `from` to `to` runs past the rim of a hole, and where; − when it runs over it. */
const past = (from: Point, to: Point, radius: number, { centre, diameter }: Hole): Wall => {
  const along = subtract(to, from);
  const t = Math.min(1, Math.max(0, dot(subtract(centre, from), along) / dot(along, along)));
  return { wall: distance(centre, between(from, to, t)) - diameter / 2 - radius, at: [centre] };
};

/** Whether a string, on its way from the saddle to its own pin, runs past the holes of the others: asked of two rows. */
export const stringsPastHoles = ({ project, saddle, bridge, limits }: WholeDesign): readonly Finding[] => {
  const { pins } = project.bridge;
  if (pins === null || pins.stagger === 0) return [];
  const holes = reamed(pins, bridge.pins);
  let worst: (Wall & { readonly string: number; readonly pin: number }) | null = null;
  for (const [index, { x }] of saddle.strings.entries()) {
    const own = holes[index];
    if (own === undefined) continue;
    const from = { x, y: saddle.centre + saddle.slope * x };
    const radius = (project.strings[index]?.diameter ?? 0) / 2;
    for (const [other, hole] of holes.entries()) {
      if (other === index) continue;
      const wall = past(from, own.centre, radius, hole);
      if (worst === null || wall.wall < worst.wall) worst = { ...wall, string: index + 1, pin: other + 1 };
    }
  }
  if (worst === null) return [];
  const limit = limits.stringPastHole;
  const about = {
    id: 'strings-holes',
    lengths: [Math.abs(worst.wall), limit.value],
    source: limit.source,
    at: worst.at,
    part: checkPart(NAME),
    limit: 'limits.stringPastHole',
  };
  if (worst.wall < 0)
    return [{ ...about, verdict: 'wrong', message: `String ${worst.string} runs over pin ${worst.pin} by {0}.` }];
  return worst.wall < limit.value
    ? [
        {
          ...about,
          verdict: 'look',
          message: `String ${worst.string} passes the hole of pin ${worst.pin} by {0} only; {1} is usual.`,
        },
      ]
    : [{ ...about, verdict: 'good', message: `${NAME} by {0}.` }];
};
