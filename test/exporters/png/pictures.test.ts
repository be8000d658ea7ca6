import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { type Canvas2D, paintItems } from '../../../src/exporters/png/paintItems';
import { pictureSize } from '../../../src/exporters/png/pictureSize';
import { withResolution } from '../../../src/exporters/png/withResolution';
import { ITEMS } from '../../reference/fileDrawing';
import { unwrap } from '../pdf/unwrap';
import { chunksOf } from './pngChunks';

const chunk = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

/** One white pixel, 8 bits of grey: made by hand after the PNG specification. */
const PIXEL = new Uint8Array(
  Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', Uint8Array.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
    chunk('IDAT', deflateSync(Uint8Array.from([0, 255]))),
    chunk('IEND', new Uint8Array()),
  ]),
);

describe('the resolution of a PNG', () => {
  // dpi / 0.0254, to whole pixels a metre.
  it.each([
    [300, 11811],
    [150, 5906],
    [600, 23622],
  ])('%i pixels to an inch are %i to a metre, in a sound chunk ahead of the pixels', (dpi, perMetre) => {
    const chunks = chunksOf(withResolution(PIXEL, dpi));
    expect(chunks.map(({ type }) => type)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND']);
    expect(chunks.every(({ data, type, check }) => check === crc32(Buffer.concat([Buffer.from(type), data])))).toBe(
      true,
    );
    const { data } = chunks[1] ?? { data: Buffer.alloc(0) };
    expect([data.length, data.readUInt32BE(0), data.readUInt32BE(4), data[8]]).toEqual([9, perMetre, perMetre, 1]);
  });

  it('is not given to what is no PNG', () => {
    expect(() => withResolution(new Uint8Array(100), 300)).toThrow(RangeError);
    expect(() => withResolution(PIXEL.subarray(0, 20), 300)).toThrow(RangeError);
  });
});

describe('the pixels of a picture', () => {
  const frame = { minX: -40, minY: 485, maxX: 55, maxY: 545 };

  it('are mm × dpi / 25.4, rounded', () => {
    // 95 · 300/25.4 = 1122.05 and 60 · 300/25.4 = 708.66.
    expect(unwrap(pictureSize(frame, 300))).toEqual({ width: 1122, height: 709 });
    // A4 at 300: 2480.3 × 3507.9.
    expect(unwrap(pictureSize({ minX: 0, minY: 0, maxX: 210, maxY: 297 }, 300))).toEqual({ width: 2480, height: 3508 });
  });

  it('are refused where there are more than a browser paints', () => {
    const codeOf = (dpi: number, side: number): string | undefined => {
      const size = pictureSize({ minX: 0, minY: 0, maxX: side, maxY: side }, dpi);
      return size.ok ? undefined : size.issues[0]?.code;
    };
    expect(codeOf(1200, 300)).toBe('picture.tooLarge');
    expect(codeOf(300, 2000)).toBe('picture.tooLarge');
    expect(codeOf(Number.NaN, 10)).toBe('picture.dpi');
    expect(codeOf(10, 10)).toBe('picture.dpi');
    expect(codeOf(600, 300)).toBeUndefined();
  });
});

describe('painting', () => {
  it('keeps arcs and curves, in millimetres from the top left of the frame', () => {
    const calls: unknown[][] = [];
    const canvas = new Proxy({} as Record<string, unknown>, {
      get:
        (_, name) =>
        (...given: unknown[]) =>
          calls.push([name, ...given]),
      set: (_, name, value) => {
        calls.push([name, value]);
        return true;
      },
    }) as unknown as Canvas2D;
    paintItems(canvas, ITEMS, { minX: -40, minY: 485, maxX: 55, maxY: 545 }, 10, 'Face');
    const of = (name: string) => calls.filter(([called]) => called === name).map(([, ...given]) => given);
    expect(of('setTransform')[0]).toEqual([10, 0, 0, 10, 400, -4850]);
    // White first, the frame and a pixel about it.
    expect(calls.slice(0, 3).map(([name]) => name)).toEqual(['setTransform', 'fillStyle', 'fillRect']);
    expect(of('fillRect')).toEqual([[-40.1, 484.9, 95.2, 60.2]]);
    const [corner] = of('arc');
    expect(corner?.slice(0, 3)).toEqual([30, 505, 5]);
    expect(corner?.[3]).toBeCloseTo(-Math.PI / 2, 12);
    expect(corner?.[4]).toBeCloseTo(0, 12);
    expect(corner?.[5]).toBe(false);
    expect(of('bezierCurveTo')).toHaveLength(2);
    expect(of('setLineDash')[3]).toEqual([[7, 1.2, 0.8, 1.2]]);
    // Words in pixels: 32 for 3.2 mm, upright at (35 + 40, 495 − 485) · 10.
    expect(of('font')[0]).toEqual(['bold 32px Face']);
    expect(of('setTransform').some((given) => given.join() === '1,0,0,1,750,100')).toBe(true);
    expect(of('fillText').map(([text]) => text)).toEqual(['TREBLE', '⌀ 5 ± 0.1, <3/16″> & 90° 100%% ^ Ω']);
  });
});
