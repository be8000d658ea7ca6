import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { foundBox, readFile } from './foundBox';

const folder = path.join(path.dirname(createRequire(import.meta.url).resolve('@mdi/svg/package.json')), 'svg');
const all = readdirSync(folder).sort();

const dataOf = (file: string): string => / d="([^"]*)"/.exec(readFileSync(path.join(folder, file), 'utf8'))?.[1] ?? '';
/**
 * Every 25th icon of the set, and every 40th of those with an arc. Not those with quadratic curves, around which this
 * resvg draws boxes that are too wide; readSvg.test.ts has one worked by hand.
 */
const cubic = all.filter((file) => !/[qt]/i.test(dataOf(file)));
const arcs = cubic.filter((file) => /[aA]/.test(dataOf(file))).filter((_, index) => index % 40 === 0);
const icons = [...new Set([...cubic.filter((_, index) => index % 25 === 0), ...arcs])];

/** What the maker is promised, mm. */
const NEAR = 0.01;

/** How the icon stands in its file: upright, and in groups that turn, stretch, slant and mirror it. */
const PLACES = [
  ['upright', ''],
  ['turned and moved', 'translate(3 -2) rotate(37 12 12)'],
  ['stretched', 'scale(1.7 0.6) rotate(-20)'],
  ['slanted and mirrored', 'skewX(25) scale(-1 1) skewY(-10)'],
] as const;

const drawing = (data: string, transform: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="36mm" height="36mm" viewBox="0 0 24 24"><g transform="${transform}"><path d="${data}"/></g></svg>`;

/** 1.5 mm to a unit; resvg answers in units, and makes cubics of a quarter turn of arcs, up to 8 µm off on these. */
const byResvg = (file: string): readonly number[] => {
  const box = new Resvg(file, { font: { loadSystemFonts: false } }).getBBox();
  return box === undefined ? [] : [box.x, box.y, box.x + box.width, box.y + box.height].map((value) => value * 1.5);
};

describe('icon outlines', () => {
  it('are many, and many have arcs', () => {
    expect(icons.length).toBeGreaterThan(200);
    expect(icons.filter((icon) => /[aA]/.test(dataOf(icon))).length).toBeGreaterThan(100);
  });

  it.each(PLACES)('have the box that resvg gives them: %s', (_, transform) => {
    const wrong = icons.flatMap((icon) => {
      const file = drawing(dataOf(icon), transform);
      const { minX, minY, maxX, maxY } = foundBox(readFile(file));
      const expected = byResvg(file);
      const off = [minX, minY, maxX, maxY].map((value, side) => Math.abs(value - (expected[side] ?? Number.NaN)));
      return Math.max(...off) < NEAR ? [] : [`${icon}: off by ${Math.max(...off)} mm`];
    });
    expect(wrong).toEqual([]);
  });
});
