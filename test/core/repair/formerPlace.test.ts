import { describe, expect, it } from 'vitest';
import type { Repair } from '../../../src/core/document/repairTypes';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { formerPlace } from '../../../src/core/repair/formerPlace';
import type { FormerPlace } from '../../../src/core/repair/types';
import { FORMER, repairWith, rowWith, slotWith } from './formerCase';

const placed = (repair: Repair): FormerPlace => {
  const place = formerPlace(repair);
  if (!place.ok) throw new Error(place.issues[0]?.message);
  return place.value;
};

const near = (value: number) => expect.closeTo(value, 9);
const centres = (repair: Repair) => placed(repair).holes.map(({ centre }) => [centre.x, centre.y]);

// All by hand arithmetic.
describe('formerPlace', () => {
  it('lays the outline with its front edge from the nut and its middle to the side', () => {
    const { outline } = placed(repairWith({ footprint: { ...FORMER, aside: -3 } }));
    expect(pathBounds(outline)).toEqual({ minX: near(-79.2), maxX: near(73.2), minY: near(620), maxY: near(645.4) });
  });

  it('turns it so that the bass end lies farther back', () => {
    const angle = Math.asin(0.01);
    const { outline } = placed(repairWith({ footprint: { ...FORMER, turn: angle } }));
    const cos = Math.sqrt(1 - 0.0001);
    // The front corners: bass at (−76.2, 0), treble at (76.2, 0) before the turn.
    const corners = [outline.start, ...outline.segments.map(({ to }) => to)];
    expect(corners).toContainEqual({ x: near(-76.2 * cos), y: near(620 + 0.762) });
    expect(corners).toContainEqual({ x: near(76.2 * cos), y: near(620 - 0.762) });
  });

  it('places a row from the front edge or from the nut, string 1 on the treble side', () => {
    const xs = [25, 15, 5, -5, -15, -25];
    expect(centres(repairWith({ holes: rowWith() }))).toEqual(xs.map((x) => [near(x), near(638)]));
    expect(centres(repairWith({ holes: rowWith({ from: 'nut', distance: 640, aside: 1 }) }))).toEqual(
      xs.map((x) => [near(x + 1), near(640)]),
    );
  });

  it('slants a row with its bass end back, and staggers every second hole', () => {
    const slant = Math.atan(0.75);
    expect(centres(repairWith({ holes: rowWith({ slant, count: 3 }) }))).toEqual([
      [near(20), near(638 - 15)],
      [near(0), near(638)],
      [near(-20), near(638 + 15)],
    ]);
    expect(centres(repairWith({ holes: rowWith({ stagger: 8, count: 3 }) })).map(([, y]) => y)).toEqual([
      near(638),
      near(646),
      near(638),
    ]);
    expect(centres(repairWith({ holes: rowWith({ count: 1 }) }))).toEqual([[near(0), near(638)]]);
  });

  it('turns and shifts what is read from the front edge with the old bridge, and nothing read from the nut', () => {
    const footprint = { ...FORMER, aside: 2, turn: Math.atan(0.75) };
    // (0, 18) turned by −36.87°: x = 18 · 0.6, y = 18 · 0.8; then moved to (2, 620).
    expect(centres(repairWith({ footprint, holes: rowWith({ count: 1 }) }))).toEqual([
      [near(2 + 10.8), near(620 + 14.4)],
    ]);
    expect(centres(repairWith({ footprint, holes: rowWith({ count: 1, from: 'nut', distance: 630 }) }))).toEqual([
      [near(0), near(630)],
    ]);
  });

  it('keeps holes that are told one by one in their order', () => {
    const each = [
      { id: 'a', x: -20, y: 17, diameter: 5 },
      { id: 'b', x: 20, y: 19, diameter: 6 },
    ];
    const { holes } = placed(repairWith({ holes: { from: 'front', kind: 'each', each } }));
    expect(holes).toEqual([
      { id: 'old-hole-1', label: 'old hole 1', centre: { x: near(-20), y: near(637) }, diameter: 5 },
      { id: 'old-hole-2', label: 'old hole 2', centre: { x: near(20), y: near(639) }, diameter: 6 },
    ]);
  });

  it('lays the slot with its front wall from the front edge, and its walls as wide as they are', () => {
    const { slot } = placed(repairWith({ slot: slotWith() }));
    expect(slot && pathBounds(slot.outline)).toEqual({
      minX: near(-35),
      maxX: near(35),
      minY: near(626),
      maxY: near(629),
    });
    const slanted = placed(repairWith({ slot: slotWith({ slant: Math.atan(0.75), aside: 4 }) })).slot;
    expect(slanted).toMatchObject({ front: { x: near(4), y: near(626) }, angle: near(-Math.atan(0.75)), width: 3 });
    // The front wall crosses the middle of the slot at 626: its bass corner lies 35 along it, at (4 − 28, 626 + 21),
    // less what the middle of the wall lies beside that: the slot's own middle is 1.5/0.8 behind, at (4, 627.875).
    const bass = { x: 4 - 28 - 1.5 * 0.6, y: 627.875 + 21 - 1.5 * 0.8 };
    const corners = [slanted?.outline.start, ...(slanted?.outline.segments.map(({ to }) => to) ?? [])];
    expect(corners).toContainEqual({ x: near(bass.x), y: near(bass.y) });
  });

  it('tells the faults of the old bridge as its own', () => {
    const short = formerPlace(repairWith({ slot: slotWith({ length: 10, width: 12 }) }));
    expect(short).toMatchObject({ ok: false, issues: [{ path: 'repair.slot.length', code: 'slot.short' }] });
    const outline = { shape: 'rectangular' as const, parameters: { length: 152.4, full: 25.4, corner: 20 } };
    const corner = formerPlace(repairWith({ footprint: { ...FORMER, outline } }));
    expect(corner).toMatchObject({
      ok: false,
      issues: [
        { path: 'repair.footprint.outline.parameters.corner', message: expect.stringMatching(/^Of the old bridge: /) },
      ],
    });
  });

  it('refuses a drawn outline that is open or not finite', () => {
    const drawn = (closed: boolean, x: number) =>
      formerPlace(
        repairWith({
          footprint: {
            ...FORMER,
            outline: {
              kind: 'drawn',
              symmetric: false,
              path: { start: { x: 0, y: 0 }, segments: [{ kind: 'line', to: { x, y: 5 } }], closed },
            },
          },
        }),
      );
    expect(drawn(false, 5)).toMatchObject({ ok: false, issues: [{ code: 'path.open' }] });
    expect(drawn(true, Number.NaN)).toMatchObject({ ok: false, issues: [{ code: 'path.notFinite' }] });
  });
});
