import { Resvg } from '@resvg/resvg-js';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { mirrorPath } from '../../../src/core/geom/mirrorPath';
import { makeSvg } from '../../../src/exporters/svg/makeSvg';
import { ITEMS, OUTLINE, OUTLINE_AREA } from '../../reference/fileDrawing';
import { unwrap } from '../pdf/unwrap';

const TITLE = { title: 'Wren <14> & "co"\u0000', description: 'true size' };
const svg = (items = ITEMS): string => unwrap(makeSvg({ ...TITLE, items }));

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Every element by saxes, a strict XML parser. */
const elementsOf = (text: string): readonly Element[] => {
  const elements: Element[] = [];
  const open: Element[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element = { name, attributes: attributes as Record<string, string>, text: '' };
    elements.push(element);
    open.push(element);
  });
  parser.on('text', (part) => {
    const last = open.at(-1);
    if (last !== undefined) last.text += part;
  });
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  return elements;
};

const named = (name: string, text = svg()): readonly Element[] =>
  elementsOf(text).filter((element) => element.name === name);

describe('an SVG', () => {
  it('is in millimetres, in the frame of the drawing', () => {
    // The farthest points: the footprint at x −35 with half a line of 0.35, the window at 50 and the centreline at y 490 and
    // 540 with half a line of 0.18; a margin of 4, then out to whole millimetres.
    const [root] = named('svg', svg(ITEMS.filter(({ id }) => id !== 'note')));
    expect(root?.attributes).toMatchObject({ width: '95mm', height: '60mm', viewBox: '-40 485 95 60' });
  });

  it('has a group a layer, named after it, in painting order', () => {
    expect(named('g').map(({ attributes }) => attributes.id)).toEqual([
      'windows',
      'bridge',
      'slot',
      'pins',
      'text',
      'board',
    ]);
  });

  it('keeps lines, arcs and curves as they are', () => {
    expect(named('path').map(({ attributes }) => attributes.d)).toEqual([
      'M 40 500 L 50 500 L 50 510 L 40 510 Z',
      'M -30 500 L 30 500 A 5 5 0 0 1 35 505 L 35 515 A 5 5 0 0 1 30 520 C 20 520 12 528 0 528 C -12 528 -20 520 -30 520 A 5 5 0 0 1 -35 515 L -35 505 A 5 5 0 0 1 -30 500 Z',
      // Half a turn is told as two quarters.
      'M -18 505 L 22 505 A 1.5 1.5 0 0 1 23.5 506.5 A 1.5 1.5 0 0 1 22 508 L -18 508 A 1.5 1.5 0 0 1 -19.5 506.5 A 1.5 1.5 0 0 1 -18 505 Z',
      'M 0 490 L 0 540',
    ]);
    expect(named('circle').map(({ attributes }) => attributes)).toMatchObject([{ cx: '12', cy: '514', r: '2.5' }]);
  });

  it('mirrors arcs with their turn', () => {
    const items = ITEMS.map((item) => (item.kind === 'path' ? { ...item, path: mirrorPath(item.path) } : item));
    expect(named('path', svg(items))[1]?.attributes.d).toMatch(/^M 30 500 L -30 500 A 5 5 0 0 0 -35 505 L -35 515 A/);
  });

  // Line types after ISO 128 and weights of the drawing: see the drawing's own tests.
  it('has the weight and dashes of each line', () => {
    const look = ({ attributes }: Element) => [
      attributes.class,
      attributes['stroke-width'],
      attributes['stroke-dasharray'],
      attributes.fill,
    ];
    expect(named('path').map(look)).toEqual([
      ['window', '0.18', undefined, 'rgb(237,237,237)'],
      ['outline', '0.35', undefined, undefined],
      ['slot', '0.25', undefined, undefined],
      ['centreline', '0.18', '7 1.2 0.8 1.2', undefined],
    ]);
  });

  it('has its words as text, at their font size, their capitals midway about the place', () => {
    const [side, note] = named('text');
    expect(side?.text).toBe('TREBLE');
    // Half of the capitals' height, 1493 of 2048 units of the font size, below the place: 495 + 0.36450195·3.2.
    expect(side?.attributes).toMatchObject({
      x: '35',
      y: '496.166406',
      'font-size': '3.2',
      'text-anchor': 'middle',
      'font-weight': 'bold',
    });
    expect(note?.text).toBe('⌀ 5 ± 0.1, <3/16″> & 90° 100%% ^ Ω');
    expect(note?.attributes.transform).toBe('rotate(-90 -45 510)');
  });

  it('holds names that XML cannot, and nothing that runs or is fetched', () => {
    expect(named('title')[0]?.text).toBe('Wren <14> & "co"\ufffd');
    expect(named('desc')[0]?.text).toBe('true size');
    const names = new Set(elementsOf(svg()).map(({ name }) => name));
    expect([...names].sort()).toEqual(['circle', 'desc', 'g', 'path', 'svg', 'text', 'title']);
    const attributes = elementsOf(svg()).flatMap((element) => Object.keys(element.attributes));
    expect(attributes.filter((name) => /^on|href|style|src/i.test(name))).toEqual([]);
  });

  it('is refused without a line, or with a number that is none', () => {
    const codes = (items: typeof ITEMS) => {
      const made = makeSvg({ ...TITLE, items });
      return made.ok ? [] : made.issues.map(({ code }) => code);
    };
    expect(codes([])).toEqual(['drawing.empty']);
    expect(codes(ITEMS.filter(({ kind }) => kind === 'text'))).toEqual(['drawing.empty']);
    const bad = { ...OUTLINE, start: { x: Number.NaN, y: 0 } };
    expect(
      codes(ITEMS.map((item) => (item.id === 'footprint' ? { ...item, kind: 'path', path: bad } : item) as never)),
    ).toEqual(['drawing.number']);
  });
});

describe('an SVG as resvg draws it', () => {
  it('has the size that it says', () => {
    const [root] = named('svg');
    // So many pixels to an inch that rounding to whole ones is no matter.
    const drawn = new Resvg(svg(), { dpi: 9600 });
    for (const side of ['width', 'height'] as const) {
      const [, mm = ''] = /^(\d+)mm$/.exec(root?.attributes[side] ?? '') ?? [];
      expect(Math.abs(drawn[side] / ((Number(mm) * 9600) / 25.4) - 1)).toBeLessThan(1e-4);
    }
  });

  it('covers the area worked by hand', () => {
    const alone = svg(ITEMS.filter(({ id }) => id === 'footprint'));
    const filled = alone.replace('fill="none" stroke="#000"', 'fill="#000" stroke="none"');
    expect(filled).not.toBe(alone);
    // 40 pixels to a millimetre, so that the straight edges lie between pixels.
    const [, across = ''] = /viewBox="\S+ \S+ (\S+) /.exec(alone) ?? [];
    const { pixels } = new Resvg(filled, { fitTo: { mode: 'width', value: Number(across) * 40 } }).render();
    let covered = 0;
    for (let alpha = 3; alpha < pixels.length; alpha += 4) covered += (pixels[alpha] ?? 0) / 255;
    expect(Math.abs(covered / 1600 / OUTLINE_AREA - 1)).toBeLessThan(1e-4);
  });
});
