import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Bridge, Project } from '../../../src/core/document/types';
import type { Placement } from '../../../src/core/placement/types';
import { LEFT_645, SKETCH_632, SQUARE_632, TIE_BLOCK_650, ZERO_FRET_628 } from '../../reference/bench';
import { shapedOutline } from '../document/shapedOutline';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

const placementOf = (project: Project): Placement => answerOf(createDerive()(project).placement);
const entered = (scale: number) => ({ from: 'entered' as const, entered: scale, readings: [] });
const row = (placement: Placement, id: string) => {
  const found = placement.numbers.find((number) => number.id === id);
  if (found === undefined) throw new Error(`There is no row ${id}.`);
  return found;
};
const distance = (placement: Placement, id: string) =>
  placement.distances.find((each) => each.id === id)?.value ?? Number.NaN;
const squareEnded = (outline: Bridge['outline']): Bridge['outline'] => {
  const shaped = shapedOutline({ outline });
  return { ...shaped, parameters: { ...shaped.parameters, corner: 0 } };
};

describe('placement, scale 645 by rule of thumb', () => {
  it.each(['left', 'right'] as const)('has every figure of the bench case for the %s hand', (hand) => {
    const placement = placementOf(steelWith({ instrument: { hand } }));
    expect(row(placement, 'break-centre').fromNut).toBeCloseTo(LEFT_645.breakPoints.centre, 6);
    expect(row(placement, 'break-treble').fromNut).toBeCloseTo(LEFT_645.breakPoints.treble, 6);
    expect(row(placement, 'break-bass').fromNut).toBeCloseTo(LEFT_645.breakPoints.bass, 6);
    expect(row(placement, 'slot-front').fromNut).toBeCloseTo(LEFT_645.slotFront, 3);
    expect(row(placement, 'slot-centre').fromNut).toBeCloseTo(LEFT_645.breakPoints.centre, 6);
    expect((placement.slant * 180) / Math.PI).toBeCloseTo(LEFT_645.slantDegrees, 3);
    const apart = row(placement, 'break-centre').fromNut - row(placement, 'slot-front').fromNut;
    expect(apart * placement.centsPerMm).toBeCloseTo(LEFT_645.slotFrontCents, 2);
    // The 12th fret is at 322.5.
    for (const { fromNut, fromTwelfth, fromNutFace } of placement.numbers) {
      expect(fromNut - fromTwelfth).toBeCloseTo(322.5, 9);
      expect(fromNutFace).toBeNull();
    }
  });

  it('is the same for both hands to the last digit', () => {
    const left = placementOf(steelWith({ instrument: { hand: 'left' } }));
    expect(left).toEqual(placementOf(steelProject));
  });

  it('begins with the break point at the centre', () => {
    expect(placementOf(steelProject).numbers[0]).toMatchObject({ id: 'break-centre', label: 'Break point, centre' });
  });
});

// 3 degrees, however the strings would have it: the bass farther back counts as plus, and the figures go by the cut slot.
it('placement, a bridge bought slotted keeps its slant', () => {
  const { slot } = steelProject.bridge;
  const slantOf = (degrees: number) =>
    placementOf(steelWith({ bridge: { slot: { ...slot, slant: (degrees * Math.PI) / 180 } } }));
  expect((slantOf(3).slant * 180) / Math.PI).toBeCloseTo(3, 9);
  expect((slantOf(-3).slant * 180) / Math.PI).toBeCloseTo(-3, 9);
  const [treble, bass] = ['break-treble', 'break-bass'].map((id) => row(slantOf(3), id).fromNut);
  // 54 mm at tan 3° = 0.052407779: 2.83002.
  expect((bass ?? 0) - (treble ?? 0)).toBeCloseTo(2.83002, 5);
  expect(row(slantOf(-3), 'break-treble').fromNut).toBeGreaterThan(row(slantOf(-3), 'break-bass').fromNut);
});

it('placement, tie-block on 650: 327.0 from the 12th fret reaches to the slot front', () => {
  const { slot } = steelProject.bridge;
  const placement = placementOf(
    steelWith({
      instrument: { scale: entered(650) },
      bridge: { slot: { ...slot, width: 2.5, ends: 'square' }, pins: null },
      compensation: { rule: { treble: 2, bass: 2, reach: 'slot-front', source: '' } },
    }),
  );
  expect(row(placement, 'slot-front').fromNut).toBeCloseTo(TIE_BLOCK_650.slotFront, 9);
  expect(row(placement, 'slot-front').fromTwelfth).toBeCloseTo(327, 9);
  expect(row(placement, 'slot-centre').fromNut).toBeCloseTo(TIE_BLOCK_650.slotCentre, 9);
  expect(1.25 * placement.centsPerMm).toBeCloseTo(TIE_BLOCK_650.mixUpCents, 1);
  expect(placement.slant).toBeCloseTo(0, 12);
  expect(placement.numbers.some(({ id }) => id === 'pin-row')).toBe(false);
});

it('placement, zero fret on 628: from the zero fret and from the nut face', () => {
  const placement = placementOf(
    steelWith({
      instrument: { scale: entered(628), nut: { datum: 'zero-fret', offset: 0, face: 4.5 } },
      compensation: { rule: { treble: 3.5, bass: 3.5, reach: 'break-point', source: '' } },
    }),
  );
  const centre = row(placement, 'break-centre');
  expect(centre.fromNut).toBeCloseTo(ZERO_FRET_628.breakFromZeroFret, 9);
  expect(centre.fromNutFace).toBeCloseTo(ZERO_FRET_628.breakFromNutFace, 9);
  expect(centre.fromNut - centre.fromTwelfth).toBeCloseTo(ZERO_FRET_628.twelfth, 9);
  expect(4.5 * placement.centsPerMm).toBeCloseTo(ZERO_FRET_628.mixUpCents, 1);
  const { mm } = placement.squareLine;
  expect((mm.fromNutFace ?? Number.NaN) - mm.fromNut).toBeCloseTo(4.5, 9);
  // A rule on this board starts at the ends of the zero fret, and says so: the corner of the nut lies 4.5 mm behind.
  expect(placement.distances[0]?.from).toBe('zero fret end, treble');
});

describe('placement, squaring scale 632 with a square-ended bridge', () => {
  // Slot front 632 + 2.778125 − 1.589043 = 633.189082, so 7.389082 puts the bridge front at 625.8.
  const { outline, slot } = steelProject.bridge;
  const project = steelWith({
    instrument: { scale: entered(632), frets: { count: 20, bodyJoin: 12 } },
    bridge: { outline: squareEnded(outline), slot: { ...slot, fromFront: 7.389082 } },
  });
  const placement = placementOf(project);

  it('reads the front corners from the ends of the 12th fret and from the nut corners', () => {
    expect(row(placement, 'bridge-front').fromNut).toBeCloseTo(625.8, 5);
    for (const [from, figures] of [
      ['fret-12', SQUARE_632.fromTwelfth],
      ['nut', SQUARE_632.fromNut],
    ] as const) {
      expect(distance(placement, `${from}-treble-to-front-treble`)).toBeCloseTo(figures.sameSide, 2);
      expect(distance(placement, `${from}-bass-to-front-bass`)).toBeCloseTo(figures.sameSide, 2);
      expect(distance(placement, `${from}-treble-to-front-bass`)).toBeCloseTo(figures.across, 2);
      expect(distance(placement, `${from}-bass-to-front-treble`)).toBeCloseTo(figures.across, 2);
    }
    expect(placement.distances.map(({ to }) => to)).toContain('front corner, treble');
    expect(placement.distances[0]?.from).toBe('nut corner, treble');
  });

  // Locating pins lie slanted, 36.5125 mm along from (0, 634.778125): treble (36.477053, 633.169587), bass (−36.477053,
  // 636.386663); from the 12th fret ends at (±28.5, 316): √(7.977053² + 317.169587²) and √(7.977053² + 320.386663²).
  it('reads the locating pins too', () => {
    expect(distance(placement, 'fret-12-treble-to-locating-treble')).toBeCloseTo(317.26989, 4);
    expect(distance(placement, 'fret-12-bass-to-locating-bass')).toBeCloseTo(320.48596, 4);
  });

  it('reads from the body join when that is another fret', () => {
    const joined = placementOf({
      ...project,
      instrument: { ...project.instrument, frets: { count: 20, bodyJoin: 14 } },
    });
    expect(placement.distances).toHaveLength(16);
    expect(joined.distances).toHaveLength(24);
    // 14th fret of 632: 632 · (1 − 2^(−14/12)) = 350.476005; board 46 + 11 · 350.476005 / 316 = 58.200114 wide there.
    // From its treble end to the treble corner: √(47.099943² + 275.323995²)
    expect(distance(joined, 'fret-14-treble-to-front-treble')).toBeCloseTo(279.3237, 3);
    expect(joined.distances.some(({ from }) => from === '14th fret end, bass')).toBe(true);
  });

  it('names tangent points where corners are rounded', () => {
    const rounded = placementOf({ ...project, bridge: { ...project.bridge, outline } });
    expect(rounded.distances.map(({ to }) => to)).toContain('front edge end, bass');
  });
});

it('placement, the template sketch: every figure of its table', () => {
  const { slot } = steelProject.bridge;
  const placement = placementOf(
    steelWith({
      instrument: { scale: entered(632) },
      // Slot front 633.189321 less 7.389321 is the sketch's bridge front, 625.8.
      bridge: { slot: { ...slot, fromFront: 7.389321 } },
      compensation: { rule: { ...SKETCH_632.rule, reach: 'break-point', source: '' } },
    }),
  );
  expect((placement.slant * 180) / Math.PI).toBeCloseTo(SKETCH_632.slantDegrees, 2);
  for (const [label, figures] of Object.entries(SKETCH_632.rows)) {
    const number = placement.numbers.find((each) => each.label === label);
    expect([number?.fromNut.toFixed(1), number?.fromTwelfth.toFixed(1)]).toEqual(figures);
  }
  // 1 mm = 2.7 cents in the sketch.
  expect(placement.centsPerMm.toFixed(1)).toBe('2.7');
});
