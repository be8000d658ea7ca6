import { parseString, toPolylines } from 'dxf';
import Writer from 'dxf-writer';
import { describe, expect, it } from 'vitest';
import { arcGeometry } from '../../src/core/geom/arcGeometry';
import { BULGES, DRAWN_IN_INCHES } from '../reference/drawings';
import { block, dxf, entity, type Pair, polyline, text } from './dxfText';
import { foundBox, readFile, refusalOf } from './foundBox';

const BAR = polyline(true, [0, 0], [150, 0], [150, 30], [0, 30]);
const boxOf = (file: string): number[] => {
  const { minX, minY, maxX, maxY } = foundBox(readFile(file));
  return [minX, minY, maxX, maxY];
};

/** The box by another reader, the npm package dxf; its y is up. */
const otherBox = (file: string): number[] => {
  const { min, max } = toPolylines(parseString(file)).bbox;
  return [min.x, -max.y, max.x, -min.y];
};

const expectSame = (file: string, digits = 6): void => {
  const other = otherBox(file);
  for (const [side, value] of boxOf(file).entries()) expect(value).toBeCloseTo(other[side] ?? Number.NaN, digits);
};

describe('the unit of a DXF', () => {
  it('is $INSUNITS, whatever $MEASUREMENT says', () => {
    const short = polyline(true, [0, 0], [DRAWN_IN_INCHES.units, 0], [DRAWN_IN_INCHES.units, 0.1]);
    for (const measurement of [0, 1]) {
      const [first] = readFile(dxf([short], { units: 1, measurement })).outlines;
      expect(first?.across).toBeCloseTo(DRAWN_IN_INCHES.mm, 9);
    }
  });

  it('is asked where the file has none', () => {
    for (const measurement of [0, 1]) expect(readFile(dxf([BAR], { units: 0, measurement })).needs).toBe('unit');
    const bare =
      text([
        [0, 'SECTION'],
        [2, 'ENTITIES'],
      ]) +
      BAR +
      text([
        [0, 'ENDSEC'],
        [0, 'EOF'],
      ]);
    expect(readFile(bare).needs).toBe('unit');
    expect(readFile(bare, { by: 'unit', unit: 'cm' }).outlines[0]?.across).toBe(1500);
    // A choice of pixels answers nothing here.
    expect(readFile(bare, { by: 'dpi', dpi: 96 }).needs).toBe('unit');
  });
});

describe('the lines of a DXF', () => {
  it.each(BULGES)('a bulge of $bulge is a true arc of $degrees°', ({ bulge, degrees, radius, sagitta }) => {
    // Along the foot of a box from left to right, y up: a positive bulge hangs below it.
    const file = dxf([polyline(true, [0, 0, bulge], [10, 0], [10, 30], [0, 30])]);
    const [first] = readFile(file).outlines;
    const [start, arc] = [first?.path.start, first?.path.segments.find(({ kind }) => kind === 'arc')];
    if (start === undefined || arc?.kind !== 'arc') throw new Error('No arc was found.');
    const geometry = arcGeometry(start, arc);
    expect(geometry.radius).toBeCloseTo(radius, 6);
    expect((Math.abs(geometry.sweep) * 180) / Math.PI).toBeCloseTo(degrees, 3);
    expect(foundBox(readFile(file)).maxY).toBeCloseTo(sagitta, 6);
  });

  it('old polylines have their vertices, without those of a frame', () => {
    const vertex = (x: number, y: number, ...more: readonly Pair[]) => entity('VERTEX', [10, x], [20, y], ...more);
    const old = entity('POLYLINE', [66, 1], [70, 1]);
    const corners =
      vertex(0, 0) + vertex(500, 500, [70, 16]) + vertex(100, 0, [42, 1]) + vertex(100, 40) + vertex(0, 40);
    expect(boxOf(dxf([old + corners + entity('SEQEND')]))).toEqual([0, -40, 120, 0]);
    // Without its end, before another entity.
    expect(readFile(dxf([old + corners, BAR])).outlines).toHaveLength(2);
  });

  it('what stands between vertices does not disturb them', () => {
    const named = entity(
      'LWPOLYLINE',
      ...[
        [90, 3],
        [70, 1],
        [10, 0],
        [20, 0],
        [91, 7],
        [10, 100],
        [20, 0],
        [91, 8],
        [10, 100],
        [20, 50],
        [210, 0],
        [220, 0],
        [230, 1],
      ].map(([code = 0, value = 0]): Pair => [code, value]),
    );
    expect(boxOf(dxf([named]))).toEqual([0, -50, 100, 0]);
  });

  it('agrees with another reader on what a third one writes', () => {
    const drawing = new Writer();
    drawing.setUnits('Millimeters');
    drawing.drawPolyline(
      [
        [3, 4],
        [120.5, 8],
        [140, 40.25],
        [20, 35],
      ],
      true,
    );
    drawing.drawRect(10, 12, 60, 30);
    drawing.drawLine(5, 5, 25, 60);
    expectSame(drawing.toDxfString());
    const round = new Writer();
    round.setUnits('Millimeters');
    round.drawCircle(20, 30, 40);
    round.drawArc(60, 30, 40, 200, 20);
    // The other reader draws 72 chords to a circle: up to 0.04 mm short on 40 mm.
    expectSame(round.toDxfString(), 1);
  });

  it('agrees with another reader on blocks within blocks, turned, stretched, mirrored and in rows', () => {
    const blocks =
      block('INNER', 10, 5, BAR) +
      block('OUTER', 0, 0, entity('INSERT', [2, 'INNER'], [10, 7], [20, 3], [41, -1.5], [42, 0.5], [50, 20]));
    expectSame(dxf([entity('INSERT', [2, 'OUTER'], [10, 50], [20, -20], [41, 1.2], [42, 0.8], [50, 33])], { blocks }));
    const rows: Pair[] = [
      [70, 3],
      [71, 2],
      [44, 160],
      [45, 40],
    ];
    expectSame(dxf([entity('INSERT', [2, 'INNER'], [10, 0], [20, 0], ...rows)], { blocks }));
  });

  it('turns over what is drawn from behind', () => {
    // Arbitrary axis algorithm (Autodesk's DXF reference): for the extrusion 0, 0, −1 the own x axis is the world's −x.
    expect(
      boxOf(
        dxf([
          BAR +
            text([
              [210, 0],
              [220, 0],
              [230, -1],
            ]),
        ]),
      ),
    ).toEqual([-150, -30, 0, 0]);
  });

  it('leaves out paper space, what is hidden, and what leans or is no line, and says so', () => {
    const tables =
      text([
        [0, 'TABLE'],
        [2, 'LAYER'],
      ]) +
      entity('LAYER', [2, 'Off'], [70, 0], [62, -7]) +
      entity('LAYER', [2, 'Cold'], [70, 1], [62, 7]) +
      entity('ENDTAB');
    const large = (...more: readonly Pair[]) => polyline(true, [0, 0], [300, 0], [300, 99]) + text(more);
    const file = dxf(
      [
        large([67, 1]),
        large([60, 1]),
        large([8, 'OFF']),
        large([8, 'cold']),
        large([210, 0], [220, 1], [230, 0]),
        entity('TEXT', [10, 0], [20, 0], [1, 'bridge']),
        entity('INSERT', [2, 'NOWHERE'], [10, 0], [20, 0]),
        entity('SPLINE', [71, 3], [11, 0], [21, 0], [11, 9], [21, 9]),
        entity('CIRCLE', [10, 'x'], [20, 0], [40, 5]),
        BAR,
      ],
      { tables },
    );
    const found = readFile(file);
    expect(found.outlines).toHaveLength(1);
    expect(foundBox(found)).toEqual({ minX: 0, minY: -30, maxX: 150, maxY: 0 });
    expect(found.leftOut).toEqual([
      '1 × piece that leans out of the drawing',
      '1 × text',
      '1 × block that the file does not hold',
      '1 × spline told by points on it alone',
      '1 × piece with damaged numbers',
    ]);
  });
});

describe('a DXF that cannot be read', () => {
  it('says why', () => {
    expect(refusalOf('AutoCAD Binary DXF\r\n\x1a\0').message).toContain('save it as text (ASCII) DXF');
    const whole = dxf([BAR]);
    expect(refusalOf(whole.slice(0, -30)).message).toBe(
      'The file was cut short: it ends within a section. Save it again.',
    );
    expect(refusalOf(whole.replace('90\n4', 'ninety\n4')).message).toMatch(
      /^The file is damaged in line \d+: expected the code of a group, a whole number, got "ninety"\.$/,
    );
    const knot = block('A', 0, 0, entity('INSERT', [2, 'B'])) + block('B', 0, 0, entity('INSERT', [2, 'A']));
    expect(refusalOf(dxf([entity('INSERT', [2, 'A'])], { blocks: knot })).message).toContain('block that holds itself');
    const rows = entity('INSERT', [2, 'BAR'], [70, 30000], [71, 30000]);
    expect(refusalOf(dxf([rows], { blocks: block('BAR', 0, 0, BAR) })).code).toBe('import.tooMany');
  });
});
