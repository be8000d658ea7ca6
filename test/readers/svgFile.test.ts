import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chunksOf } from '../exporters/png/pngChunks';
import { pngPixels } from '../exporters/png/pngPixels';
import { ITEMS, OUTLINE_AREA } from '../reference/fileDrawing';
import { drawingsForReaders, svgOf } from './filesForReaders';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

/** A part in ten thousand. */
const CLOSE = 1e-4;

describe("librsvg's reading of an SVG", () => {
  const { fileNamed } = temporaryFolder();

  it('has the size that the file says', async () => {
    for (const [name, items] of Object.entries(await drawingsForReaders())) {
      const svg = svgOf(items);
      const [, width = '', height = ''] = /width="(\d+)mm" height="(\d+)mm"/.exec(svg) ?? [];
      writeFileSync(fileNamed('one.svg'), svg);
      runReader('rsvg-convert', ['-f', 'pdf', '-o', fileNamed('one.pdf'), fileNamed('one.svg')]);
      const [, across = '', along = ''] =
        /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(runReader('pdfinfo', [fileNamed('one.pdf')])) ?? [];
      // Points of 1/72 in.
      for (const [points, mm] of [
        [across, width],
        [along, height],
      ] as const)
        expect(Math.abs((Number(points) * 25.4) / 72 / Number(mm) - 1), name).toBeLessThan(CLOSE);
    }
  });

  it('has the pixels of that size at 600 to an inch', () => {
    writeFileSync(fileNamed('one.svg'), svgOf(ITEMS));
    runReader('rsvg-convert', ['-d', '600', '-p', '600', '-o', fileNamed('one.png'), fileNamed('one.svg')]);
    const [header] = chunksOf(readFileSync(fileNamed('one.png')));
    const [, width = '', height = ''] = /width="(\d+)mm" height="(\d+)mm"/.exec(svgOf(ITEMS)) ?? [];
    for (const [offset, mm] of [
      [0, width],
      [4, height],
    ] as const)
      expect(Math.abs((header?.data.readUInt32BE(offset) ?? 0) - (Number(mm) * 600) / 25.4)).toBeLessThan(1);
  });

  it('covers the area worked by hand', () => {
    const alone = svgOf(ITEMS.filter(({ id }) => id === 'footprint'));
    writeFileSync(fileNamed('full.svg'), alone.replace('fill="none" stroke="#000"', 'fill="#000" stroke="none"'));
    // 40 pixels to a millimetre, so that the straight edges lie between pixels.
    runReader('rsvg-convert', ['-d', '1016', '-p', '1016', '-o', fileNamed('full.png'), fileNamed('full.svg')]);
    const { rgba } = pngPixels(readFileSync(fileNamed('full.png')));
    let covered = 0;
    for (let alpha = 3; alpha < rgba.length; alpha += 4) covered += (rgba[alpha] ?? 0) / 255 / 1600;
    expect(Math.abs(covered / OUTLINE_AREA - 1)).toBeLessThan(CLOSE);
  });
});
