import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { TEMPLATES } from '../reference/templates';
import type { ExpectedPage } from '../reference/templates-expected';
import { darkness, type GreyPicture, lineAlong, readPgm } from './readPicture';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

const PIXELS_PER_MM = 600 / 25.4;
/** Pixels to each side of a line that hold nothing else: 0.9 mm. */
const REACH = 21;
/** Pixels from a corner along its sides where neither its diagonal mark nor the first tick comes near: 4 to 8 mm. */
const ALONG = Array.from({ length: 95 }, (_, index) => 95 + index);
/** Degrees clear of the cross through a hole, in each quarter. */
const RAYS = [0, 90, 180, 270].flatMap((quarter) => Array.from({ length: 51 }, (_, index) => quarter + 20 + index));

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** How far the farther of the two sides that meet in a corner of the square lies off, pixels. inX, inY: toward the inside. */
function cornerOff(picture: GreyPicture, x: number, y: number, inX: number, inY: number): number {
  const across = mean(ALONG.map((a) => lineAlong(REACH, (off) => darkness(picture, x + off, y + inY * a))));
  const down = mean(ALONG.map((a) => lineAlong(REACH, (off) => darkness(picture, x + inX * a, y + off))));
  return Math.max(Math.abs(across), Math.abs(down));
}

/** How far a circle lies off, pixels: its centre from the even and odd parts of its radius all round, and the radius. */
function circleOff(picture: GreyPicture, x: number, y: number, radius: number): number {
  const rays = RAYS.map((degrees) => {
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const at = (off: number) => darkness(picture, x + (radius + off) * cos, y + (radius + off) * sin);
    return { cos, sin, off: lineAlong(12, at) };
  });
  const centre = Math.hypot(
    2 * mean(rays.map(({ cos, off }) => cos * off)),
    2 * mean(rays.map(({ sin, off }) => sin * off)),
  );
  return Math.max(centre, Math.abs(mean(rays.map(({ off }) => off))));
}

const marksOff = ({ points, holes }: ExpectedPage, picture: GreyPicture) => [
  ...points.flatMap(([mark, x, y]) => {
    if (!/^square, (top|foot) /u.test(mark)) return [];
    const [inX, inY] = [mark.includes('left') ? 1 : -1, mark.includes('top') ? 1 : -1];
    return [{ mark, off: cornerOff(picture, x * PIXELS_PER_MM, y * PIXELS_PER_MM, inX, inY) }];
  }),
  ...holes.flatMap(([mark, x, y, radius]) => {
    if (!mark.startsWith('pin ')) return [];
    return [{ mark, off: circleOff(picture, x * PIXELS_PER_MM, y * PIXELS_PER_MM, radius * PIXELS_PER_MM) }];
  }),
];

describe("poppler's picture at 600 dots an inch", () => {
  const { fileNamed, templateFile } = temporaryFolder();
  const all: { readonly mark: string; readonly off: number }[] = [];
  afterAll(() => {
    const { mark, off } = all.reduce((most, each) => (each.off > most.off ? each : most));
    console.info(`poppler's picture: largest deviation of ${all.length} marks ${off.toFixed(3)} pixel (${mark})`);
  });

  it.each(TEMPLATES)('has square and pins of $instrument, $paper, $unit within half a pixel', (template) => {
    const file = templateFile(template);
    const found = template.pages.flatMap((page, index) => {
      const number = String(index + 1);
      runReader('pdftoppm', ['-r', '600', '-gray', '-singlefile', '-f', number, '-l', number, file, fileNamed('page')]);
      return marksOff(page, readPgm(readFileSync(fileNamed('page.pgm'))));
    });
    expect(found.filter(({ mark }) => mark.startsWith('square'))).toHaveLength(4);
    all.push(...found);
    expect(found.filter(({ off }) => !(off <= 0.5))).toEqual([]);
  });
});
