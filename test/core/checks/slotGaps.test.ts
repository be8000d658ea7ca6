import { describe, expect, it } from 'vitest';
import { bridgePlace } from '../../../src/core/bridge/bridgePlace';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import { slotGaps } from '../../../src/core/checks/slotGaps';
import type { Outline } from '../../../src/core/document/outlineTypes';
import type { Slot } from '../../../src/core/document/types';
import { distanceToPath } from '../../../src/core/geom/distanceToPath';
import { pathToCubics } from '../../../src/core/geom/pathToCubics';
import type { Path, Point } from '../../../src/core/geom/types';
import { usualBridge } from '../../../src/core/kinds/usualBridge';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

/** Points close together all along a path, each cubic by its own formula in steps of a five-hundredth. */
const walked = (path: Path): readonly Point[] => {
  const points: Point[] = [];
  let from = path.start;
  for (const segment of pathToCubics(path).segments) {
    const { to } = segment;
    const [c1, c2] = segment.kind === 'cubic' ? [segment.c1, segment.c2] : [from, to];
    for (let step = 0; step < 500; step += 1) {
      const t = step / 500;
      const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
      points.push({
        x: a * from.x + b * c1.x + c * c2.x + d * to.x,
        y: a * from.y + b * c1.y + c * c2.y + d * to.y,
      });
    }
    from = to;
  }
  return points;
};

const shapes = [
  'rectangular',
  'belly',
  'belly-nut',
  'pyramid-tip',
  'double-sided',
  'tie-block',
  'small-ukulele',
] as const;
const saddle = { centre: 647.778125, slope: -0.05, strings: [] };
const placed = (outline: Outline, slot: Slot) => {
  const at = answerOf(slotPlace(slot, saddle, outline));
  const bridge = answerOf(bridgePlace({ ...steelProject.bridge, outline, slot, pins: null }, 6, saddle, at));
  return { at, outline: bridge.footprint.outline };
};

describe('slotGaps', () => {
  // The least of the three is the least distance between two curves; here by walking along the slot in small steps.
  it.each(shapes.flatMap((shape) => (['round', 'square'] as const).map((ends) => [shape, ends] as const)))(
    'finds the least wood between a %s bridge and a slanted slot with %s ends',
    (shape, ends) => {
      const usual = usualBridge(shape);
      const slot = { ...usual.slot, ends };
      const { at, outline } = placed(usual.outline, slot);
      const gaps = slotGaps(outline, slot, at);
      const least = Math.min(
        ...[gaps.front, gaps.ends, gaps.back].map((wall) => wall?.wall ?? Number.POSITIVE_INFINITY),
      );
      const walkedLeast = Math.min(...walked(at.outline).map((point) => distanceToPath(outline, point)));
      expect(least).toBeLessThan(walkedLeast + 1e-6);
      expect(walkedLeast - least).toBeLessThan(0.002);
    },
  );

  it('sees an edge that dips toward the middle of the slot, where no corner is', () => {
    // A front edge that dips 6 of the 7.4 in the middle leaves 1.4, by the slant a little less.
    const outline: Outline = {
      kind: 'drawn',
      symmetric: true,
      path: {
        start: { x: -76, y: 0 },
        segments: [
          { kind: 'line', to: { x: -8, y: 0 } },
          { kind: 'line', to: { x: 0, y: 6 } },
          { kind: 'line', to: { x: 8, y: 0 } },
          { kind: 'line', to: { x: 76, y: 0 } },
          { kind: 'line', to: { x: 76, y: 30 } },
          { kind: 'line', to: { x: -76, y: 30 } },
        ],
        closed: true,
      },
    };
    const slot = { ...steelProject.bridge.slot, fromFront: 7.4 };
    const { at, outline: edge } = placed(outline, slot);
    // 1.4 along the centreline is 1.4 · cos(atan 0.05) = 1.39825 square to the slot.
    expect(slotGaps(edge, slot, at).front?.wall).toBeCloseTo(1.39825, 5);
  });
});
