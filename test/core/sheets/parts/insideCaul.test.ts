import { describe, expect, it } from 'vitest';
import type { Body } from '../../../../src/core/document/bodyTypes';
import type { Hand } from '../../../../src/core/document/types';
import { buildDrawing } from '../../../../src/core/drawing/buildDrawing';
import { insideCaul } from '../../../../src/core/sheets/parts/insideCaul';
import type { SheetPart } from '../../../../src/core/sheets/parts/types';
import { CAUL } from '../../../reference/glueSheets';
import { bodied, braceWith, plateWith } from '../../body/bodyCase';
import { steelProject } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { itemBox } from '../itemBox';
import { boxIn, contextOf, MM, middleOf, partNamed, proseOn } from './partCase';

/** One brace along x = +30 of the body, read 12 high, and a plate narrower than the caul, 6 to the bass side. */
const body: Partial<Body> = {
  braces: [braceWith({ from: { x: 30, y: 600 }, to: { x: 30, y: 700 }, height: 12 })],
  plate: plateWith({ aside: -6 }),
  soundhole: { centre: 500, across: 100, along: null },
};

const facesOf = async (strung: Hand, of: Partial<Body> = body) => {
  const parts = answerOf(insideCaul.make(await contextOf(bodied(steelProject, of, strung))));
  return { plate: partNamed(parts, 'caul-plate'), clamp: partNamed(parts, 'caul-clamp') };
};

/** Left and right edge of an item, from the left edge of the caul. */
const acrossOf = (part: SheetPart, id: string) => {
  const [{ minX, maxX }, caul] = [boxIn(part, id), boxIn(part, 'caul')];
  return [minX - caul.minX, maxX - caul.minX];
};

const holeAt = (part: SheetPart, id: string) => {
  const [{ x, y }, caul] = [middleOf(boxIn(part, id)), boxIn(part, 'caul')];
  return [x - caul.minX, y - caul.minY];
};

const near = (figures: readonly number[]) => figures.map((figure) => expect.closeTo(figure, 5));

/** Strung hand, body's own hand; where the treble pin and the brace lie on the plate face. */
const CASES = [
  { strung: 'right', built: null, pins: CAUL.trebleRight, brace: CAUL.grooveRight },
  { strung: 'left', built: null, pins: CAUL.trebleLeft, brace: CAUL.grooveLeft },
  { strung: 'left', built: 'right', pins: CAUL.trebleLeft, brace: CAUL.grooveRight },
  { strung: 'right', built: 'left', pins: CAUL.trebleRight, brace: CAUL.grooveLeft },
] as const;

const mirrored = ([x = 0, y = 0]: readonly number[]): readonly number[] => [CAUL.across - x, y];

describe.each(CASES)('the inside caul strung $strung on a body built $built', ({ strung, built, pins, brace }) => {
  const faces = () => facesOf(strung, { ...body, hand: built });

  it('has its plate face as the template lies', async () => {
    const { plate } = await faces();
    for (const side of ['treble', 'bass'] as const) expect(holeAt(plate, `locating-${side}`)).toEqual(near(pins[side]));
    expect(acrossOf(plate, 'groove-0')).toEqual(near(brace));
    expect(acrossOf(plate, 'caul')).toEqual(near([0, CAUL.across]));
    const { minY, maxY } = boxIn(plate, 'caul');
    expect(maxY - minY).toBeCloseTo(CAUL.along, 6);
  });

  it('has its clamp face as the mirror image of that', async () => {
    const { clamp } = await faces();
    for (const side of ['treble', 'bass'] as const)
      expect(holeAt(clamp, `locating-${side}`)).toEqual(near(mirrored(pins[side])));
    expect(acrossOf(clamp, 'groove-0')).toEqual(near([CAUL.across - brace[1], CAUL.across - brace[0]]));
  });

  it('agrees with the holes of the drawing that is taped down', async () => {
    const { derived, project } = await contextOf(bodied(steelProject, { ...body, hand: built }, strung));
    const drawn = buildDrawing(derived, { hand: project.instrument.hand, datum: 'front', style: MM });
    const boxOf = (id: string) => {
      const item = drawn.find((each) => each.id === id);
      if (item === undefined) throw new Error(`There is no ${id}.`);
      return itemBox(item);
    };
    const { plate } = await faces();
    for (const side of ['locating-treble', 'locating-bass']) {
      const [there, here] = [middleOf(boxOf(side)), middleOf(boxIn(plate, side))];
      const [footprint, bridge] = [boxOf('footprint'), boxIn(plate, 'bridge')];
      expect(here.x - bridge.minX).toBeCloseTo(there.x - footprint.minX, 9);
      expect(here.y - bridge.minY).toBeCloseTo(there.y - footprint.minY, 9);
    }
  });

  it('keeps its words upright, on the sides where treble and bass are', async () => {
    const { plate, clamp } = await faces();
    for (const part of [plate, clamp])
      for (const item of part.items) if (item.kind === 'text' && item.text !== '40.9 mm') expect(item.angle).toBe(0);
    const toRight = (part: SheetPart) => Math.sign(middleOf(boxIn(part, 'treble')).x - middleOf(boxIn(part, 'bass')).x);
    expect(toRight(plate)).toBe(strung === 'right' ? 1 : -1);
    expect(toRight(clamp)).toBe(strung === 'right' ? -1 : 1);
  });
});

describe('the inside caul', () => {
  it('clears the locating pins, and is relieved for the plate with room around it', async () => {
    const { plate } = await facesOf('right');
    const { minX, maxX } = boxIn(plate, 'locating-bass');
    expect(maxX - minX).toBeCloseTo(CAUL.hole, 9);
    // A plate 100 wide, 6 to the bass side, with 1.5 of room: from −57.5 to +45.5 of the centreline.
    expect(acrossOf(plate, 'relief')).toEqual(near([79.2 - 57.5, 79.2 + 45.5]));
    expect(proseOn(plate)).toContain('Plate relief, the thin outline: 2.5 mm deep');
    expect(proseOn(plate)).toContain('A: groove for leg: 11.0 mm wide, 13.5 mm deep.');
    expect(proseOn(plate)).toContain('2 holes 2.1 mm through');
  });

  it('names both faces, seen and hidden edges in their own lines', async () => {
    const { plate, clamp } = await facesOf('right');
    const roleOf = (part: SheetPart, id: string) => part.items.find((item) => item.id === `${part.id}-${id}`)?.role;
    expect([roleOf(plate, 'groove-0'), roleOf(plate, 'relief')]).toEqual(['window', 'slot']);
    expect([roleOf(clamp, 'groove-0'), roleOf(clamp, 'relief')]).toEqual(['beneath', 'beneath']);
    for (const words of ['PLATE FACE', 'grooves up, nut end away', 'right hand', 'NUT SIDE'])
      expect(proseOn(plate)).toContain(words);
    for (const words of ['CLAMP FACE', 'grooves down, nut end away', 'right hand', 'NUT SIDE', 'Clamps:'])
      expect(proseOn(clamp)).toContain(words);
  });

  it('warns where it does not pass the soundhole', async () => {
    const round = async (across: number) =>
      proseOn((await facesOf('right', { ...body, soundhole: { centre: 500, across, along: null } })).plate);
    expect(await round(CAUL.diagonal + 0.01)).toContain(
      'Goes through the soundhole (49.9 mm) end first: 49.9 mm on the diagonal',
    );
    expect(await round(CAUL.diagonal - 0.01)).toContain('LOOK: does not go through the soundhole (49.9 mm)');
    expect(await round(100)).toContain('158.4 mm long, more than the hole');
    expect(await round(159)).not.toContain('more than the hole');
    expect(proseOn((await facesOf('right', { ...body, soundhole: null })).plate)).toContain('No soundhole is entered');
  });

  it('warns of what was not found, not read, or leaves no wood', async () => {
    const wordsWith = async (changes: Parameters<typeof braceWith>[0]) =>
      proseOn(
        (
          await facesOf('right', {
            ...body,
            braces: [braceWith({ from: { x: 30, y: 600 }, to: { x: 30, y: 700 }, ...changes })],
          })
        ).plate,
      );
    expect(await wordsWith({ height: null })).toContain('depth: read the brace.');
    expect(await wordsWith({ height: 12, read: false })).toContain('LOOK: not found yet');
    // 28.575 thick: 21 + 1.5 deep leaves 6.075, a tenth more leaves less than 6.
    expect(await wordsWith({ height: 21 })).not.toContain('hardly any wood');
    expect(await wordsWith({ height: 21.1 })).toContain('LOOK: hardly any wood is left under it');
    const converted = await facesOf('left', { ...body, hand: 'right' });
    expect(proseOn(converted.plate)).toContain('Body built for the right hand, strung for the left');
  });

  it('grooves only as far as a brace reaches, and only where it lies under the caul', async () => {
    // Ends at y = 650, 14.2109 behind the caul's front edge at 635.789, with 1.5 of room.
    const ends = [
      braceWith({ from: { x: 30, y: 600 }, to: { x: 30, y: 650 } }),
      braceWith({ id: 'b2', from: { x: 150, y: 600 }, to: { x: 150, y: 700 } }),
    ];
    const { plate } = await facesOf('right', { ...body, braces: ends });
    const { minY, maxY } = boxIn(plate, 'groove-0');
    expect(minY).toBeCloseTo(boxIn(plate, 'caul').minY, 9);
    expect(maxY - minY).toBeCloseTo(14.210918 + 1.5, 5);
    expect(plate.items.some(({ id }) => id.endsWith('groove-1'))).toBe(false);
  });

  it('takes its margins from the maker', async () => {
    const project = bodied(steelProject, body);
    const own = { ...project, limits: { caulAcross: 0, caulAlong: 10, caulThickness: 20 } };
    const plate = partNamed(answerOf(insideCaul.make(await contextOf(own))), 'caul-plate');
    const { minX, maxX, minY, maxY } = boxIn(plate, 'caul');
    expect([maxX - minX, maxY - minY]).toEqual(near([152.4, 54.925]));
    expect(proseOn(plate)).toContain('Stock 20.0 mm thick');
  });

  it('is none while nothing is said of the body', async () => {
    expect(codesOf(insideCaul.make(await contextOf(steelProject)))).toEqual(['sheet.noBody']);
  });
});
