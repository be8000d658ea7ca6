import { describe, expect, it } from 'vitest';
import { foundBox, readFile, refusalOf } from './foundBox';

const NAMESPACE = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
const svg = (head: string, body: string): string => `<svg ${NAMESPACE} ${head}>${body}</svg>`;
/** A drawing whose units are millimetres. */
const mm = (body: string): string => svg('width="200mm" height="100mm" viewBox="0 0 200 100"', body);
const sides = (file: string, scale?: Parameters<typeof readFile>[1]): [number, number] => {
  const [first] = readFile(file, scale).outlines;
  return [first?.across ?? Number.NaN, first?.along ?? Number.NaN];
};
const BAR = '<rect x="10" y="20" width="150" height="30"/>';

describe('the size that an SVG says', () => {
  // 1 in = 2.54 cm = 72 pt = 6 pc = 101.6 Q (CSS Values and Units, 5.2), worked by hand.
  it.each([
    ['150mm', 150],
    ['15cm', 150],
    ['6in', 152.4],
    ['432pt', 152.4],
    ['36pc', 152.4],
    ['600Q', 150],
  ])('width %s', (width, across) => {
    const [found] = sides(svg(`width="${width}" viewBox="0 0 300 60"`, '<rect width="300" height="60"/>'));
    expect(found).toBeCloseTo(across, 9);
  });

  // Published faults of other importers: a 90-dpi program's 100 mm file, and a page of 612 pt, which is 8.5 in.
  it.each([
    ['width="100mm" viewBox="0 0 354.33071 70"', 354.33071, 100],
    ['width="612pt" viewBox="0 0 612 792"', 612, 215.9],
  ])('%s', (head, units, across) => {
    const [found] = sides(svg(head, `<rect width="${units}" height="60"/>`));
    expect(found).toBeCloseTo(across, 9);
  });

  it('is kept by a height alone, and by preserveAspectRatio where the shapes differ', () => {
    expect(sides(svg('height="60mm" viewBox="0 0 300 60"', BAR))).toEqual([150, 30]);
    // 200 × 200 mm for 400 × 100 units: the narrower fit is 0.5, the wider 2 (SVG 2, 8.2).
    const page = (aspect: string) =>
      sides(svg(`width="200mm" height="200mm" viewBox="0 0 400 100" ${aspect}`, '<rect width="60" height="20"/>'));
    expect(page('')).toEqual([30, 10]);
    expect(page('preserveAspectRatio="xMinYMax slice"')).toEqual([120, 40]);
    expect(page('preserveAspectRatio="none"')).toEqual([30, 40]);
  });
});

describe('what an SVG leaves open is asked', () => {
  // 850.39 px are 299.999 mm at 72 dpi and 225.0 mm at 96: 850.39 × 25.4 / 72 and / 96.
  const pixels = svg('width="850.39px" height="200px" viewBox="0 0 850.39 200"', '<rect width="850.39" height="200"/>');
  it.each([
    [72, 299.9987],
    [90, 239.999],
    [96, 224.999],
  ] as const)('pixels at %d to an inch', (dpi, across) => {
    const asked = readFile(pixels);
    expect(asked.needs).toBe('dpi');
    expect(sides(pixels, { by: 'dpi', dpi })[0]).toBeCloseTo(across, 3);
    // What the dialog shows before it is answered.
    const [first] = asked.outlines;
    expect(((first?.across ?? 0) / asked.perUnit) * (25.4 / dpi)).toBeCloseTo(across, 3);
  });

  it.each([
    ['pixels without a viewBox', 'width="300" height="100"', 'dpi'],
    ['paper without a viewBox: what a pixel is differs by program', 'width="300mm" height="100mm"', 'dpi'],
    ['paper across and pixels down', 'width="300mm" height="100" viewBox="0 0 300 100"', 'dpi'],
    ['per cent', 'width="100%" height="100%" viewBox="0 0 300 100"', 'size'],
    ['no width at all', 'viewBox="0 0 300 100"', 'size'],
    ['nothing', '', 'size'],
    ['a unit of type', 'width="30em" viewBox="0 0 300 100"', 'size'],
    ['no width to speak of', 'width="0" height="0" viewBox="0 0 300 100"', 'size'],
  ])('%s', (_, head, needs) => {
    expect(readFile(svg(head, BAR)).needs).toBe(needs);
  });

  it('a known length fixes the outline offered first, and wins over the file', () => {
    const file = svg('viewBox="0 0 300 100"', `${BAR}<rect width="60" height="20"/>`);
    const found = readFile(file, { by: 'length', longest: 152.4 });
    expect(found.needs).toBeNull();
    expect(found.outlines.map(({ across }) => Number(across.toFixed(6)))).toEqual([152.4, 60.96]);
    expect(sides(mm(BAR), { by: 'length', longest: 300 })[0]).toBeCloseTo(300, 9);
    expect(refusalOf(file, { by: 'length', longest: 4 }).code).toBe('scale.longest');
  });

  it('units of the drawing can be named', () => {
    expect(sides(svg('viewBox="0 0 300 100"', BAR), { by: 'unit', unit: 'mm' })[0]).toBeCloseTo(150, 9);
    expect(sides(svg('', '<rect width="6" height="1"/>'), { by: 'unit', unit: 'in' })[0]).toBeCloseTo(152.4, 9);
  });
});

describe('the shapes of an SVG', () => {
  it.each([
    ['rect', '<rect x="5" y="6" width="150" height="30"/>', [5, 6, 155, 36]],
    ['circle', '<circle cx="50" cy="40" r="30"/>', [20, 10, 80, 70]],
    ['ellipse', '<ellipse cx="50" cy="40" rx="30" ry="10"/>', [20, 30, 80, 50]],
    ['polygon, its last odd number left out', '<polygon points="0,0 100-10,90.5.5 50,30 7"/>', [0, -10, 100, 30]],
    ['loose lines', '<line x2="100"/><line x1="100" x2="90" y2="30"/><path d="M90 30L0 0"/>', [0, 0, 100, 30]],
    // A quadratic from 0 to 100 with its control at 80 in y peaks at half of it: 40.
    ['quadratic', '<path d="M0 0Q50 80 100 0Z"/>', [0, 0, 100, 40]],
    // The second control is the first mirrored in (100, 0): (150, −80), so that the curve dips to −40.
    ['quadratics in a row', '<path d="M0 0Q50 80 100 0T200 0L200 50L0 50Z"/>', [0, -40, 200, 50]],
    ['millimetres in a drawing of pixels', '<rect width="25.4mm" height="1in"/>', [0, 0, 96, 96]],
    ['per cent of the viewBox', '<rect width="50%" height="40%"/>', [0, 0, 100, 40]],
  ])('%s', (_, body, box) => {
    const { minX, minY, maxX, maxY } = foundBox(readFile(mm(body)));
    for (const [side, value] of [minX, minY, maxX, maxY].entries()) expect(value).toBeCloseTo(box[side] ?? 0, 9);
  });

  it('keeps what is round as true arcs, also turned and evenly stretched, and else as cubics of 30°', () => {
    const kinds = (body: string) =>
      readFile(mm(body))
        .outlines[0]?.path.segments.map(({ kind }) => kind)
        .join(' ');
    expect(kinds('<circle r="30"/>')).toBe('arc arc');
    expect(kinds('<circle r="30" transform="rotate(20) scale(-1.5 1.5)"/>')).toBe('arc arc');
    expect(kinds('<ellipse rx="30" ry="15" transform="scale(1 2)"/>')).toBe('arc arc');
    expect(kinds('<path d="M0 0A20 20 0 0 1 40 0Z"/>')).toBe('arc line');
    expect(kinds('<circle r="30" transform="scale(1 .9)"/>')).toBe(Array(12).fill('cubic').join(' '));
    expect(kinds('<rect width="100" height="30" rx="5"/>')).toBe('line arc line arc line arc line arc');
  });

  it('has radii of a rect by SVG 2: one stands for both, at most half of a side', () => {
    const [first] = readFile(mm('<rect width="100" height="30" ry="40"/>')).outlines;
    // Radii 40 and 15: the corners are quarter ellipses, so the area is 100·30 − (4 − π)·40·15.
    expect(first?.area).toBeCloseTo(3000 - (4 - Math.PI) * 600, 2);
  });

  it('follows nested groups, windows and uses', () => {
    // By hand: 100 × 20, turned by 90° to 20 × 100, doubled to 40 × 200, moved by 7, 9 and halved by the window.
    const nested = `<defs><symbol id="s" viewBox="0 0 400 400"><g transform="translate(7 9)"><g transform="scale(2)">
      <rect id="r" width="100" height="20" transform="rotate(90)"/></g></g></symbol></defs>
      <use xlink:href="#s" width="200" height="200" x="30"/>`;
    const { minX, minY, maxX, maxY } = foundBox(readFile(mm(nested)));
    expect([minX, minY, maxX, maxY]).toEqual([30 + 3.5 - 20, 4.5, 30 + 3.5, 104.5]);
    expect(
      sides(mm('<svg x="20" width="50%" viewBox="0 0 10 10" height="50"><rect width="10" height="5"/></svg>')),
    ).toEqual([50, 25]);
  });

  it('leaves out what is not seen, and what only serves others', () => {
    const hidden = [
      '<g display="none"><rect width="180" height="90"/></g>',
      '<rect width="180" height="90" style="fill:red; display : none"/>',
      '<g visibility="hidden"><rect width="180" height="90"/></g>',
      '<style>.off{display:none} #x{visibility:hidden}</style><rect class="a off" width="180" height="90"/><rect id="x" width="180" height="90"/>',
      ...['defs', 'clipPath', 'mask', 'pattern', 'marker', 'symbol'].map(
        (name) => `<${name}><rect width="180" height="90"/></${name}>`,
      ),
      '<other:g xmlns:other="urn:other"><rect width="180" height="90"/></other:g>',
    ];
    for (const part of hidden) expect(sides(mm(part + BAR)), part).toEqual([150, 30]);
    const shown = '<g visibility="hidden"><rect width="180" height="90" visibility="visible"/></g>';
    expect(sides(mm(shown + BAR))).toEqual([180, 90]);
  });

  it('says what it did not read', () => {
    const body = `<text>bridge</text><image href="x.png"/><rect width="3em" height="1"/><use href="other.svg#a"/>
      <use id="u" href="#u"/><path d="M0 0L1 x"/><g transform="spin(4)"><rect width="99" height="9"/></g>${BAR}`;
    expect(readFile(mm(body)).leftOut).toEqual([
      '1 × text',
      '1 × picture',
      '1 × shape told in a unit that depends on type or window (em, ex, vw)',
      '1 × part that is not in the file',
      '1 × part that repeats itself within itself',
      '1 × shape with damaged numbers',
      '1 × part with a transform that is not read',
    ]);
  });

  it('reads other encodings, and names that a file declares for plain text', () => {
    const body = mm(`<title>Bridge, Große</title>${BAR}`);
    const latin = Uint8Array.from(`<?xml version="1.0" encoding="ISO-8859-1"?>${body}`, (letter) =>
      letter.charCodeAt(0),
    );
    const wide = new Uint8Array(new Uint16Array(Array.from(`\ufeff${body}`, (letter) => letter.charCodeAt(0))).buffer);
    for (const file of [latin, wide]) expect(readFile(file).outlines[0]?.across).toBeCloseTo(150, 9);
    const named = `<!DOCTYPE svg [<!ENTITY ns "http://www.w3.org/2000/svg"><!ENTITY w '150'>]><svg xmlns="&ns;" width="200mm" viewBox="0 0 200 100"><rect width="&w;" height="30"/></svg>`;
    expect(sides(named)).toEqual([150, 30]);
  });
});
