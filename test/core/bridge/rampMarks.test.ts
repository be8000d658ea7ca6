import { describe, expect, it } from 'vitest';
import { rampMarks } from '../../../src/core/bridge/rampMarks';
import type { Pins, Project } from '../../../src/core/document/types';
import { steelProject } from '../document/steelProject';

const { pins } = steelProject.bridge as Project['bridge'] & { readonly pins: Pins };
const hole = { id: 'pin-1', label: 'pin 1', centre: { x: 20, y: 640 }, diameter: 5 };

describe('rampMarks', () => {
  // Straight ahead: 1.6 wide at the rim, √(2.5² − 0.8²) = 2.36854 from the centre; the tip 2.5 + 4 ahead.
  it('tapers from the rim of the hole toward the saddle', () => {
    const saddle = { centre: 630, slope: 0, strings: [] };
    const [ramp] = rampMarks({ ...pins, ramp: { length: 4, width: 1.6 } }, [hole], saddle);
    expect(ramp?.tip.x).toBeCloseTo(20, 9);
    expect(ramp?.tip.y).toBeCloseTo(633.5, 9);
    const [one, other] = ramp?.corners ?? [];
    expect(Math.abs((one?.x ?? 0) - 20)).toBeCloseTo(0.8, 9);
    expect((one?.x ?? 0) + (other?.x ?? 0)).toBeCloseTo(40, 9);
    for (const corner of [one, other]) expect(corner?.y).toBeCloseTo(640 - 2.36854, 5);
  });

  // The string breaks 6 to the side and 8 ahead, a 3-4-5 triangle: the tip 6.5 along it.
  it('points to where its own string breaks', () => {
    const strings = [{ id: 's1', name: 'E', x: 26 }] as unknown as Project['strings'];
    const saddle = { centre: 632, slope: 0, strings: strings as never };
    const [ramp] = rampMarks({ ...pins, ramp: { length: 4, width: 1.6 } }, [hole], saddle);
    expect(ramp?.tip.x).toBeCloseTo(20 + 0.6 * 6.5, 9);
    expect(ramp?.tip.y).toBeCloseTo(640 - 0.8 * 6.5, 9);
  });

  it('is none while none is wanted', () => {
    expect(rampMarks({ ...pins, ramp: null }, [hole], { centre: 630, slope: 0, strings: [] })).toEqual([]);
  });
});
