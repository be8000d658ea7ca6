import { describe, expect, it } from 'vitest';
import { layWords } from '../../../src/canvas/tools/layWords';
import { overlayBoxes } from '../../../src/canvas/tools/overlayBoxes';
import type { OverlayState } from '../../../src/canvas/tools/paintOverlay';
import type { Bounds, Point } from '../../../src/core/geom/types';

/** Eight pixels a letter. */
const measure = (text: string): number => 8 * text.length;
const at = (x: number, y: number): Point => ({ x, y });
const STATE: OverlayState = {
  scheme: 'light',
  width: 800,
  nodes: [
    { at: at(100, 100), smooth: true, chosen: false },
    { at: at(300, 100), smooth: false, chosen: true },
  ],
  handles: [{ at: at(330, 100), node: at(300, 100) }],
  guides: [],
  picks: [],
  words: null,
};
const holds = (boxes: readonly Bounds[], { x, y }: Point): boolean =>
  boxes.some(({ minX, minY, maxX, maxY }) => minX <= x && x <= maxX && minY <= y && y <= maxY);

describe('layWords', () => {
  it('puts words on the side that has more room, lines under one another; by hand', () => {
    const lines = ['in line', '12 mm'];
    const right = layWords({ at: at(100, 200), lines }, 800, measure);
    // 16 px beside the place; the last line's foot 14 px above it, the one before 19 px higher.
    expect(right.map(({ at: place }) => place)).toEqual([at(116, 167), at(116, 186)]);
    const left = layWords({ at: at(700, 200), lines }, 800, measure);
    // They end 16 px before the place: 7 and 5 letters of 8 px.
    expect(left.map(({ at: place }) => place.x)).toEqual([700 - 16 - 56, 700 - 16 - 40]);
    // Near the top they stay in the view.
    expect(layWords({ at: at(100, 5), lines: ['a'] }, 800, measure)[0]?.at.y).toBe(19);
  });
});

describe('overlayBoxes', () => {
  it('finds nothing where nothing changed', () => {
    expect(overlayBoxes(STATE, structuredClone(STATE), measure)).toEqual([]);
    expect(overlayBoxes(null, null, measure)).toEqual([]);
  });

  it('takes in a node and its handle where they were and where they are, and no other node', () => {
    const moved: OverlayState = {
      ...STATE,
      nodes: [STATE.nodes[0] as never, { at: at(300, 160), smooth: false, chosen: true }],
      handles: [{ at: at(330, 160), node: at(300, 160) }],
    };
    const boxes = overlayBoxes(STATE, moved, measure);
    for (const place of [at(294, 100), at(334, 104), at(306, 166), at(334, 156)])
      expect(holds(boxes, place)).toBe(true);
    expect(holds(boxes, at(100, 100))).toBe(false);
  });

  it('takes in words that come, change and go', () => {
    const worded: OverlayState = { ...STATE, words: { at: at(100, 200), lines: ['level'] } };
    // From x 116, five letters of 8 px, with its ground.
    for (const [before, after] of [
      [STATE, worded],
      [worded, STATE],
      [worded, null],
    ] as const) {
      const boxes = overlayBoxes(before, after, measure);
      expect(holds(boxes, at(113, 190))).toBe(true);
      expect(holds(boxes, at(159, 173))).toBe(true);
    }
    expect(overlayBoxes(worded, structuredClone(worded), measure)).toEqual([]);
  });

  it('takes in everything when there are other nodes, guides and picks than before', () => {
    const others: OverlayState = {
      ...STATE,
      nodes: [],
      guides: [{ from: at(0, 400), to: at(800, 400) }],
      picks: [at(500, 500)],
    };
    const boxes = overlayBoxes(STATE, others, measure);
    for (const place of [at(100, 100), at(300, 100), at(400, 400), at(510, 500)])
      expect(holds(boxes, place)).toBe(true);
  });
});
