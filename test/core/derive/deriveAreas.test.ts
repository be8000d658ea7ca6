import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import { type Areas, deriveAreas } from '../../../src/core/derive/deriveAreas';
import type { Bridge, Project } from '../../../src/core/document/types';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { fail } from '../../../src/core/result';
import { RIM_SHARES } from '../../reference/offset';
import { steelWith } from '../document/steelProject';
import { anyProject } from './randomProject';

const INCH = 25.4;

const areasOf = async (project: Project): Promise<Areas> => {
  const found = await deriveAreas(project.bridge, project.limits, createDerive()(project).bridge);
  if (!found.ok) throw new Error(found.issues[0]?.message);
  return found.value;
};

/** A square-cornered bridge without pins, its locating pins of `drill` in the ends of a slot 3 in long. */
const plain = (length: number, full: number, rim: number, more: Partial<Bridge> = {}): Project =>
  steelWith({
    bridge: {
      outline: { shape: 'rectangular', parameters: { length, full, corner: 0 } },
      slot: {
        fromFront: 8,
        length: 76.2,
        width: 3.175,
        ends: 'round',
        run: 'stopped',
        crown: 0.5,
        depth: 6,
        slant: null,
      },
      pins: null,
      locating: { site: 'slot-ends', drill: 1, points: null, clearance: 0.5 },
      rim,
      ...more,
    },
  });

describe('deriveAreas', () => {
  // By hand: sides less twice the rim; two locating holes of 1 mm take 2·π/4 mm².
  it.each(RIM_SHARES)('of %d × %d in under a rim of %d in loses %d %%', async (length, width, rim, share) => {
    const found = await areasOf(plain(length * INCH, width * INCH, rim * INCH));
    const footprint = length * width * INCH * INCH;
    const inside = (length - 2 * rim) * (width - 2 * rim) * INCH * INCH;
    expect(Math.round(found.shareLost * 100)).toBe(share);
    expect(found.footprint).toBeCloseTo(footprint, 6);
    expect(found.holes).toBeCloseTo(Math.PI / 2, 3);
    expect(found.underRim).toBeCloseTo(footprint - inside, 3);
    expect(found.glue).toBeCloseTo(inside - Math.PI / 2, 3);
    expect(found.shareLost).toBeCloseTo((footprint - inside) / (footprint - Math.PI / 2), 6);
    expect(found.checks.map(({ verdict }) => verdict)).toEqual([rim < 1 / 16 ? 'good' : 'look', 'good']);
  });

  // Six pins of 3/16 in: 6·π·2.38125² = 106.88 mm²; two locating pins of 1/16 in in the slot ends: 2·π·0.79375² = 3.96 mm².
  it('takes pins and locating pins off the glue area, and nothing for the slot', async () => {
    const pins = {
      from: 9.525,
      spread: 54,
      row: 'parallel',
      hole: 4.7625,
      stagger: 0,
      taper: 3,
      underHead: 5.4,
      rise: 0,
      ramp: null,
    } as const;
    const found = await areasOf(
      plain(152.4, 38.1, 0, { pins, locating: { site: 'slot-ends', drill: 1.5875, points: null, clearance: 0.5 } }),
    );
    expect(found.holes).toBeCloseTo(106.88 + 3.96, 1);
    expect(found.glue).toBeCloseTo(152.4 * 38.1 - 110.84, 1);
    expect(found.underRim).toBe(0);
  });

  it('counts a locating pin in a pin hole once', async () => {
    const pins = {
      from: 9.525,
      spread: 54,
      row: 'parallel',
      hole: 4.7625,
      stagger: 0,
      taper: 3,
      underHead: 5.4,
      rise: 0,
      ramp: null,
    } as const;
    const found = await areasOf(
      plain(152.4, 38.1, 0, { pins, locating: { site: 'outer-pin-holes', drill: 3, points: null, clearance: 0.5 } }),
    );
    expect(found.holes).toBeCloseTo(106.88, 1);
  });

  // The slot's back wall 11.2 behind the front edge at the centre, pins of 5 another 9 behind: their centres 5.1 ahead of
  // the back edge of 25.4, or less. A rim of 8 swallows most of each hole, which must not be taken off twice.
  it('counts a hole in the rim once', async () => {
    const pins = {
      from: 9,
      spread: 54,
      row: 'square',
      hole: 5,
      stagger: 0,
      taper: 3,
      underHead: 5.4,
      rise: 0,
      ramp: null,
    } as const;
    const without = await areasOf(plain(152.4, 25.4, 0, { pins }));
    const found = await areasOf(plain(152.4, 25.4, 8, { pins }));
    const inside = (152.4 - 16) * (25.4 - 16);
    expect(found.glue).toBeGreaterThan(inside - without.holes);
    expect(found.glue).toBeLessThanOrEqual(inside);
    expect(found.footprint - found.holes - found.underRim).toBeCloseTo(found.glue, 6);
    expect(found.holes).toBeCloseTo(without.holes, 6);
  });

  // 6 × 1 in, 9.525 mm thick: 3870.96 mm² × 9.525 mm = 36 870.9 mm³; at 870 kg/m³ 32.078 g, at 435 half of it.
  it('weighs a plain blank, and balances a rectangle in its middle', async () => {
    const found = await areasOf(plain(152.4, 25.4, 1));
    expect(found.weight).toBeCloseTo(32.078, 3);
    expect(found.centroidFromFront).toBeCloseTo(12.7, 9);
    expect((await areasOf(plain(152.4, 25.4, 1, { density: 435 }))).weight).toBeCloseTo(16.039, 3);
  });

  it('draws the line of the finish by the rim inside the footprint', async () => {
    const project = plain(152.4, 25.4, 2);
    const { bridge } = createDerive()(project);
    const { finishLine } = await areasOf(project);
    const front = bridge.ok ? bridge.value.front : Number.NaN;
    expect(finishLine).toHaveLength(1);
    const bounds = finishLine.map(pathBounds)[0];
    expect(bounds?.minX).toBeCloseTo(-74.2, 5);
    expect(bounds?.maxX).toBeCloseTo(74.2, 5);
    expect(bounds?.minY).toBeCloseTo(front + 2, 5);
    expect(bounds?.maxY).toBeCloseTo(front + 23.4, 5);
  });

  it('leaves no glue area and no line under a rim of half the width', async () => {
    const found = await areasOf(plain(152.4, 18, 9));
    expect(found).toMatchObject({ glue: 0, shareLost: 1, finishLine: [] });
  });

  it('says why the bridge could not be computed', async () => {
    const { bridge, limits } = plain(152.4, 25.4, 1);
    const found = await deriveAreas(bridge, limits, fail('bridge.slot.length', 'slot.short', 'Too short.'));
    expect(found).toMatchObject({ ok: false, issues: [{ code: 'slot.short' }] });
  });

  it('is total, loses nothing without a rim and never more than all, and its figures add up', async () => {
    const derive = createDerive();
    await fc.assert(
      fc.asyncProperty(anyProject, fc.boolean(), async (project, bare) => {
        const bridge = bare ? { ...project.bridge, rim: 0 } : project.bridge;
        const found = await deriveAreas(bridge, project.limits, derive({ ...project, bridge }).bridge);
        if (!found.ok) {
          expect(found.issues.length).toBeGreaterThan(0);
          return;
        }
        const { footprint, holes, underRim, glue, shareLost, finishLine, checks } = found.value;
        if (bare) expect([underRim, shareLost, finishLine, checks]).toEqual([0, 0, [], []]);
        expect(shareLost).toBeGreaterThanOrEqual(0);
        expect(shareLost).toBeLessThanOrEqual(1);
        // Two areas, each within 0.02 mm².
        expect(Math.abs(footprint - holes - underRim - glue)).toBeLessThan(0.04);
      }),
      { numRuns: 150, seed: 20260301 },
    );
  });
});
