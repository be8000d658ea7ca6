import { describe, expect, it } from 'vitest';
import { footprintOf } from '../../../../src/core/bridge/footprintOf';
import { SHAPE_NAMES } from '../../../../src/core/document/shapeNames';
import { SHAPE_PARAMETERS } from '../../../../src/core/document/shapeParameters';
import type { ShapeName } from '../../../../src/core/document/types';
import { handedPicture } from '../../../../src/core/drawing/shapePreview/handedPicture';
import { shapePreview } from '../../../../src/core/drawing/shapePreview/shapePreview';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { formatLength } from '../../../../src/core/units/formatLength';
import { showLength } from '../../../../src/core/units/showLength';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { textOf } from '../dimensions/readItems';
import { dimensionsOf, expectLegible, leaderRadius, witnessDistance } from './previewChecks';

const inMm = (mm: number): string => formatLength(mm, { unit: 'mm', decimals: 3 });
const in64ths = (mm: number): string => showLength(mm, { unit: 'in', denominator: 64 });

type Figures = Readonly<Record<string, number>>;

/**
 * One bridge a shape. Lengths and widths: 6 × 1 in rectangular and pyramid-tip, 6 1/4 × 1 3/8 in belly, 190 × 28 mm with a
 * tie block of 80 mm, all from memory; 3 × 3/4 in small ukulele (theamateurluthier.com, fall projects); 7 1/2 in ornate
 * (premierguitar.com, new sound from an old guitar). The other figures are chosen here.
 */
const BRIDGES: Readonly<Record<ShapeName, Figures>> = {
  rectangular: { length: 152.4, full: 25.4, corner: 3 },
  belly: { length: 158.75, wing: 26, full: 34.925, belly: 110, shoulder: 45, corner: 2.5 },
  'belly-nut': { length: 158.75, wing: 26, full: 34.925, belly: 110, shoulder: 45, corner: 2.5 },
  'pyramid-tip': { length: 152.4, full: 25.4, pyramid: 20 },
  'tie-block': { length: 190, full: 28, block: 80, corner: 1.5 },
  'small-ukulele': { length: 76.2, full: 19.05, end: 16.5, corner: 2 },
  'double-sided': { length: 190.5, full: 36, wing: 20, waist: 142, shoulder: 55, corner: 9 },
};

const SHAPES = Object.keys(SHAPE_NAMES) as ShapeName[];
const HANDS = ['right', 'left'] as const;
const RADII = ['corner', 'shoulder'];

describe.each(SHAPES)('the preview of a bridge: %s', (shape) => {
  const parameters = BRIDGES[shape];
  const names = SHAPE_PARAMETERS[shape].map(({ name }) => name);
  const right = answerOf(shapePreview({ shape, parameters }, inMm));

  it('has one dimension for every parameter', () => {
    expect(Object.keys(parameters).sort()).toEqual([...names].sort());
    expect([...dimensionsOf(right)].sort()).toEqual([...names].sort());
    expect(new Set(right.items.map(({ id }) => id)).size).toBe(right.items.length);
  });

  it.each(HANDS)('measures what it says, %s hand', (hand) => {
    const picture = handedPicture(hand, right);
    for (const [name, value] of Object.entries(parameters)) {
      const measured = RADII.includes(name) ? leaderRadius(picture, name) : witnessDistance(picture, name);
      expect(measured, name).toBeCloseTo(value, 7);
    }
  });

  it.each(HANDS)('is legible, %s hand', (hand) => {
    expectLegible(handedPicture(hand, right), shape);
    expectLegible(handedPicture(hand, answerOf(shapePreview({ shape, parameters }, in64ths))), shape);
  });

  it('draws the bridge to scale', () => {
    const outline = right.items.find(({ id }) => id === 'outline');
    if (outline?.kind !== 'path') throw new Error('There is no outline.');
    const { minX, maxX, minY, maxY } = pathBounds(outline.path);
    expect((maxX - minX) / right.scale).toBeCloseTo(parameters.length ?? 0, 7);
    expect((maxY - minY) / right.scale).toBeCloseTo(parameters.full ?? 0, 7);
  });

  it('names the parameters as the fields do, each with its figure', () => {
    for (const { name, label } of SHAPE_PARAMETERS[shape]) {
      const { text } = textOf(right.items, `${name}-text`);
      expect(text).toBe(`${label} ${(parameters[name] ?? 0).toFixed(3)}`);
      expect(right.summary).toContain(text);
    }
  });

  // Every parameter at its least, at the figure above and at its most, in every combination that makes a bridge.
  it('stays legible and true at the ends of its fields', () => {
    const rows = SHAPE_PARAMETERS[shape];
    let all: readonly Figures[] = [{}];
    for (const { name, min, max } of rows)
      all = all.flatMap((figures) => [min, parameters[name] ?? 0, max].map((value) => ({ ...figures, [name]: value })));
    const bridges = all.filter((figures) => footprintOf({ shape, parameters: figures }).ok);
    // Each end of each field is met by some bridge.
    for (const { name, min, max } of rows)
      for (const end of [min, max])
        expect(
          bridges.some((figures) => figures[name] === end),
          `${name} ${end}`,
        ).toBe(true);
    for (const figures of bridges) {
      const picture = answerOf(shapePreview({ shape, parameters: figures }, in64ths));
      const which = JSON.stringify(figures);
      expectLegible(picture, which);
      for (const { name } of rows)
        expect(RADII.includes(name) ? leaderRadius(picture, name) : witnessDistance(picture, name), which).toBeCloseTo(
          figures[name] ?? Number.NaN,
          6,
        );
    }
  });
});

describe('shapePreview', () => {
  const whereOf = (shape: ShapeName, id: string): readonly number[] => {
    const { items, height } = answerOf(shapePreview({ shape, parameters: BRIDGES[shape] }, inMm));
    return [textOf(items, id).at.y, height];
  };

  it('has the leaders at the edge with the belly, and the length at the plain one', () => {
    for (const [shape, toward] of [
      ['belly', 1],
      ['belly-nut', -1],
    ] as const)
      for (const [id, side] of [
        ['shoulder-text', toward],
        ['corner-text', toward],
        ['length-text', -toward],
      ] as const) {
        const [y = 0, height = 0] = whereOf(shape, id);
        expect(Math.sign(y - height / 2), `${shape} ${id}`).toBe(side);
      }
  });

  // Tie block 80 mm wide: two lines, each from front to back; pyramids: on each tip their foot and two diagonals.
  it('draws the lines of the upper face', () => {
    const facesOf = (shape: ShapeName) =>
      answerOf(shapePreview({ shape, parameters: BRIDGES[shape] }, inMm)).items.filter(({ id }) =>
        id.startsWith('face-'),
      );
    expect(facesOf('tie-block')).toHaveLength(2);
    expect(facesOf('pyramid-tip')).toHaveLength(6);
    expect(facesOf('belly')).toHaveLength(0);
  });

  it('points at a sharp corner', () => {
    const parameters = { length: 152.4, full: 25.4, corner: 0 };
    expect(leaderRadius(answerOf(shapePreview({ shape: 'rectangular', parameters }, inMm)), 'corner')).toBe(0);
  });

  it('says what it shows', () => {
    const { title, summary } = answerOf(shapePreview({ shape: 'rectangular', parameters: BRIDGES.rectangular }, inMm));
    expect(title).toBe('Rectangular with its dimensions');
    expect(summary).toBe('Bridge length 152.400; Bridge width 25.400; Corner radius 3.000.');
    const belly = answerOf(shapePreview({ shape: 'belly', parameters: BRIDGES.belly }, inMm));
    expect(belly.title).toBe('Belly toward the tail with its dimensions');
  });

  it('fails with what is wrong with the figures', () => {
    expect(codesOf(shapePreview({ shape: 'belly', parameters: { ...BRIDGES.belly, full: 20 } }, inMm))).toEqual([
      'belly.flat',
    ]);
  });

  it('keeps words upright and as they are for a left hand, and takes nothing else across', () => {
    const right = answerOf(shapePreview({ shape: 'belly', parameters: BRIDGES.belly }, inMm));
    const left = handedPicture('left', right);
    expect(handedPicture('right', right)).toEqual(right);
    expect(left.items.map(({ id }) => id)).toEqual(right.items.map(({ id }) => id));
    for (const item of right.items)
      if (item.kind === 'text') {
        const other = textOf(left.items, item.id);
        expect(other).toMatchObject({ text: item.text, angle: 0, height: item.height });
        expect(other.at.x).toBeCloseTo(right.width - item.at.x, 9);
        expect(other.at.y).toBeCloseTo(item.at.y, 9);
      }
  });

  // 11 px for words in the narrowest panel, 274 px wide; the rule and the panel's width are the project's own.
  it('has words large enough for its width', () => {
    for (const shape of SHAPES) {
      const { items, width } = answerOf(shapePreview({ shape, parameters: BRIDGES[shape] }, inMm));
      for (const item of items) if (item.kind === 'text') expect((item.height / width) * 274).toBeGreaterThan(11);
    }
  });
});
