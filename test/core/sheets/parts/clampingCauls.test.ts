import { describe, expect, it } from 'vitest';
import type { Sole } from '../../../../src/core/document/soleTypes';
import type { Hand, Project } from '../../../../src/core/document/types';
import type { PathItem } from '../../../../src/core/drawing/types';
import { clampingCauls } from '../../../../src/core/sheets/parts/clampingCauls';
import type { SheetPart } from '../../../../src/core/sheets/parts/types';
import { CLAMP } from '../../../reference/glueSheets';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { itemBox } from '../itemBox';
import { boxIn, contextOf, DOME_28_FT, itemOf, middleOf, partNamed, proseOn } from './partCase';

const soleWith = (changes: Partial<Sole> = {}): Sole => ({
  wing: { tip: 4, inner: 8, begin: 43 },
  face: 400,
  draft: 0,
  sanding: 0,
  across: null,
  along: null,
  top: DOME_28_FT,
  ...changes,
});

const soled = (sole: Sole | null, hand: Hand = 'right'): Project => {
  const project = steelWith({ instrument: { hand } });
  return { ...project, bridge: { ...steelProject.bridge, sole } };
};

const partsOf = async (sole: Sole, hand: Hand = 'right') =>
  answerOf(clampingCauls.make(await contextOf(soled(sole, hand))));

/** Corners and points of a shape, from the middle of the bridge and above its flat sole. */
const pointsOf = (part: SheetPart, id: string) => {
  const bridge = boxIn(part, 'bridge');
  const { path } = itemOf(part, id) as PathItem;
  return [path.start, ...path.segments.map(({ to }) => to)].map(({ x, y }) => ({
    x: x - middleOf(bridge).x,
    y: bridge.maxY - y,
  }));
};

describe('the clamping cauls', () => {
  it('fit the upper face, at true size', async () => {
    const profile = partNamed(await partsOf(soleWith()), 'clamp-profile');
    const points = pointsOf(profile, 'caul-centre');
    const under = points.filter(({ y }) => y < 20);
    const [lowest, highest] = [Math.min(...under.map(({ y }) => y)), Math.max(...under.map(({ y }) => y))];
    expect(highest).toBeCloseTo(9.525, 9);
    expect(highest - lowest).toBeCloseTo(CLAMP.fall, 6);
    expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(CLAMP.centreHalf, 9);
    expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(CLAMP.level, 9);
    // Every point of it lies on the circle of 400 about the point 400 under the top of the face.
    for (const { x, y } of under) expect(Math.hypot(x, y - (9.525 - 400))).toBeCloseTo(400, 6);
  });

  it('fit the wings, level on top', async () => {
    const profile = partNamed(await partsOf(soleWith()), 'clamp-profile');
    const treble = pointsOf(profile, 'caul-treble');
    expect(treble.map(({ x, y }) => [x, y])).toEqual(
      [
        [CLAMP.wingBegin, CLAMP.level],
        [CLAMP.tip, CLAMP.level],
        [CLAMP.tip, CLAMP.wingAtTip],
        [CLAMP.wingBegin, CLAMP.wingAtBegin],
      ].map((corner) => corner.map((figure) => expect.closeTo(figure, 5))),
    );
    expect(pointsOf(profile, 'caul-bass').map(({ x, y }) => [0 - x, y])).toEqual(
      treble.map(({ x, y }) => [expect.closeTo(x, 9), expect.closeTo(y, 9)]),
    );
  });

  it('round the inside caul to the dome, or leave it flat', async () => {
    const dome = boxIn(partNamed(await partsOf(soleWith()), 'caul-dome'), 'dome');
    expect(dome.maxX - dome.minX).toBeCloseTo(158.4, 9);
    expect(dome.maxY - dome.minY).toBeCloseTo(28.575, 9);
    const part = partNamed(await partsOf(soleWith()), 'caul-dome');
    const { path } = itemOf(part, 'dome') as PathItem;
    expect(path.start.y - dome.minY).toBeCloseTo(CLAMP.domeFall, 5);
    expect(proseOn(part)).toContain('radius 8534.4 mm: it falls 0.37 mm to the ends');
    const { top } = soleWith();
    const flat = partNamed(await partsOf(soleWith({ top: { ...top, across: null, along: null } })), 'caul-dome');
    expect((itemOf(flat, 'dome') as PathItem).path.start.y).toBeCloseTo(boxIn(flat, 'dome').minY, 9);
    expect(proseOn(flat)).toContain('The top is flat under the bridge');
  });

  it('are sawn apart where the wings begin, with holes over the locating pins, for either hand', async () => {
    for (const hand of ['right', 'left'] as const) {
      const plan = partNamed(await partsOf(soleWith(), hand), 'clamp-plan');
      const middle = middleOf(boxIn(plan, 'footprint')).x;
      const saws = plan.items.filter(({ id }) => id.includes('-saw-')).map((item) => itemBox(item).minX - middle);
      const figures = [-44, -42, 42, 44].map((x) => expect.closeTo(x, 9));
      expect(saws.sort((one, other) => one - other)).toEqual(figures);
      const treble = boxIn(plan, 'locating-treble');
      expect(treble.maxX - treble.minX).toBeCloseTo(2.0875, 9);
      expect(middleOf(treble).x - middle).toBeCloseTo(hand === 'right' ? 36.477051 : -36.477051, 5);
      const profile = partNamed(await partsOf(soleWith(), hand), 'clamp-profile');
      const toRight = middleOf(boxIn(profile, 'name-treble')).x - middleOf(boxIn(profile, 'name-bass')).x;
      expect(Math.sign(toRight)).toBe(hand === 'right' ? 1 : -1);
      expect(proseOn(profile)).toContain(`${hand} hand`);
    }
  });

  it('say what clamps can do', async () => {
    const [plan, profile] = await partsOf(soleWith());
    if (plan === undefined || profile === undefined) throw new Error('There are no sheets.');
    expect(proseOn(profile)).toMatch(/Too tight dents, starves the joint and cracks braces/);
    for (const words of ['CLAMP FACE up', 'NUT SIDE', 'BASS', 'TREBLE', 'CENTRE', 'WING'])
      expect(proseOn(plan)).toContain(words);
  });

  it('are none while nothing is said of the sole, or it does not fit the bridge', async () => {
    expect(codesOf(clampingCauls.make(await contextOf(soled(null))))).toEqual(['sheet.noSole']);
    const beyond = soleWith({ wing: { tip: 4, inner: 8, begin: 90 } });
    expect(codesOf(clampingCauls.make(await contextOf(soled(beyond))))).toEqual(['sole.wing']);
  });
});
