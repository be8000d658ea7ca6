import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { createSideStep } from '../../../../src/core/derive/createSideStep';
import { fieldAt } from '../../../../src/core/document/fieldAt';
import type { Sole } from '../../../../src/core/document/soleTypes';
import type { Project } from '../../../../src/core/document/types';
import type { PlotPicture } from '../../../../src/core/drawing/plots/types';
import { itemBounds } from '../../../../src/core/drawing/shapePreview/itemBounds';
import { drawSaddleBlank } from '../../../../src/core/drawing/sideView/drawSaddleBlank';
import { sideLength } from '../../../../src/core/drawing/sideView/sideLength';
import { sideSection } from '../../../../src/core/drawing/sideView/sideSection';
import type { Item } from '../../../../src/core/drawing/types';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import type { Bounds, Point } from '../../../../src/core/geom/types';
import { KINDS } from '../../../../src/core/kinds/kinds';
import type { LengthStyle } from '../../../../src/core/units/formatLength';
import { chooseSole } from '../../../../src/store/commands/sole/chooseSole';
import { steelWith } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { FLAT_SOLE, FOOT, soleWith } from '../../height/sole/soleCase';

const MM: LengthStyle = { unit: 'mm', decimals: 1 };
const INCHES: LengthStyle = { unit: 'in', denominator: 64 };

const partsOf = (project: Project) => {
  const derived = createDerive()(project);
  const side = createSideStep()(project, derived);
  return {
    heights: answerOf(side.heights),
    blank: answerOf(side.blank),
    fit: side.fit === null ? null : answerOf(side.fit),
    saddle: answerOf(derived.saddle),
    slot: answerOf(derived.slot),
    place: answerOf(derived.bridge),
    scaleLength: answerOf(derived.scale).scaleLength,
  };
};

const section = (project: Project, string: number | null = null, style: LengthStyle = MM): PlotPicture => {
  const picture = sideSection({ project, limits: project.limits, ...partsOf(project), string }, style);
  if (picture === null) throw new Error('There is no section.');
  return picture;
};

const length = (project: Project, style: LengthStyle = MM): PlotPicture => {
  const { fit, blank, saddle } = partsOf(project);
  if (fit === null) throw new Error('Nothing was said of the sole.');
  const { bridge, height, instrument } = project;
  const picture = sideLength({ bridge, height, fit, blank, slope: saddle.slope, hand: instrument.hand }, style);
  if (picture === null) throw new Error('There is no view.');
  return picture;
};

const blankOf = (project: Project, style: LengthStyle = MM): PlotPicture =>
  drawSaddleBlank(partsOf(project).blank, style, project.instrument.hand);

const boundsOf = ({ items }: PlotPicture, id: string): Bounds => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'path') throw new Error(`There is no line "${id}".`);
  return pathBounds(item.path);
};
const startOf = ({ items }: PlotPicture, id: string): Point => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'path') throw new Error(`There is no line "${id}".`);
  return item.path.start;
};
const textOf = ({ items }: PlotPicture, id: string): string => {
  const item = items.find((each) => each.id === id);
  return item?.kind === 'text' ? item.text : '';
};
const xOf = ({ items }: PlotPicture, id: string): number => {
  const item = items.find((each) => each.id === id);
  return item?.kind === 'text' ? item.at.x : Number.NaN;
};

const sides = (value: number) => ({ treble: value, bass: value });
/** 3.5 over the frets by 0.5 + 2·(2 − 0.5), 0.5 over the bridge: 4 proud; slot 6.5 deep, 9.525 thick. */
const plain = (sole: Sole | null = null, hand: 'right' | 'left' = 'right'): Project =>
  steelWith({
    instrument: { hand },
    setup: { nutHeight: sides(0.5), action: sides(2), relief: 0 },
    compensation: { rule: { treble: 0, bass: 0, reach: 'break-point', source: '' } },
    height: { straightedge: 0.5, run: 11.1 },
    bridge: { sole },
  });

const overlaps = (a: Bounds, b: Bounds): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

/** Words that lie on other words, by their ids. */
const collisions = ({ items }: PlotPicture): readonly string[] => {
  const words = items.filter(({ kind }) => kind === 'text');
  return words.flatMap((one, index) =>
    words
      .slice(index + 1)
      .flatMap((other) => (overlaps(itemBounds(one), itemBounds(other)) ? [`${one.id} ${other.id}`] : [])),
  );
};

const outside = ({ items, width, height }: PlotPicture): readonly string[] =>
  items.flatMap((item: Item) => {
    const { minX, minY, maxX, maxY } = itemBounds(item);
    return minX < 0 || minY < 0 || maxX > width + 1e-9 || maxY > height ? [item.id] : [];
  });

const pictures = KINDS.flatMap(({ id, make }) => {
  const begun = make('p', '2026-01-01T00:00:00Z');
  const told = answerOf(chooseSole(begun, true));
  const left: Project = { ...told, instrument: { ...told.instrument, hand: 'left' } };
  return [MM, INCHES].flatMap((style) => [
    [`${id} section ${style.unit}`, told, section(told, null, style)] as const,
    [`${id} length ${style.unit}`, told, length(told, style)] as const,
    [`${id} length ${style.unit}, left`, told, length(left, style)] as const,
    [`${id} blank ${style.unit}`, told, blankOf(told, style)] as const,
  ]);
});

describe('side views of every kind', () => {
  it.each(pictures)('%s: legible, upright, each item once, figures lead to fields', (_, project, picture) => {
    expect(collisions(picture)).toEqual([]);
    expect(outside(picture)).toEqual([]);
    const ids = picture.items.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const item of picture.items) {
      if (item.kind === 'text') expect(item.angle).toBe(0);
      if (item.part.includes('.')) expect(fieldAt(project, item.part), item.part).not.toBeNull();
    }
    expect(picture.summary).toMatch(/\.$/);
  });
});

describe('sideSection', () => {
  it('is drawn to scale', () => {
    const picture = section(plain());
    const bridge = boundsOf(picture, 'bridge');
    const saddle = boundsOf(picture, 'saddle');
    // 9.525 thick; the belly bridge is 34.925 from front to back on the centreline.
    expect(bridge.maxY - bridge.minY).toBeCloseTo(9.525, 6);
    expect(bridge.maxX - bridge.minX).toBeCloseTo(34.925, 4);
    // 4 proud, 6.5 in the slot, 3.175 less 0.05 thick, 7.4 behind the front edge and 0.025 of play.
    expect(bridge.minY - saddle.minY).toBeCloseTo(4, 6);
    expect(saddle.maxY - saddle.minY).toBeCloseTo(10.5, 6);
    expect(saddle.maxX - saddle.minX).toBeCloseTo(3.125, 6);
    expect(saddle.minX - bridge.minX).toBeCloseTo(7.425, 4);
    // The straightedge 0.5 over the bridge.
    expect(bridge.minY - startOf(picture, 'straightedge').y).toBeCloseTo(0.5, 9);
    // Over 11.1 from 4 up: atan = 19.8°.
    expect(textOf(picture, 'break-text')).toBe('breaks by 19.8°');
    const string = boundsOf(picture, 'string');
    expect(string.maxY).toBeCloseTo(bridge.minY, 6);
    expect(string.maxX - (saddle.minX + saddle.maxX) / 2).toBeCloseTo(11.1, 6);
  });

  it('tells what it draws', () => {
    const picture = section(plain());
    expect(textOf(picture, 'thickness-text')).toBe('9.5 thick');
    expect(textOf(picture, 'wood-text')).toBe('3.0 of wood');
    expect(textOf(picture, 'slot-depth-text')).toBe('slot 6.5 deep');
    expect(textOf(picture, 'proud-text')).toBe('saddle 4.0 proud');
    expect(textOf(picture, 'over-frets-text')).toBe('3.5 over the frets’ line');
    expect(textOf(picture, 'airspace-text')).toBe('straightedge 0.5 over');
    expect(textOf(picture, 'run-text')).toBe('11.1 to the pin');
    expect(picture.summary).toContain('breaks by 19.8 degrees');
    expect(textOf(section({ ...plain(), height: { ...plain().height, straightedge: null } }), 'airspace-text')).toBe(
      'straightedge 1.0 over, taken',
    );
    expect(textOf(section({ ...plain(), height: { ...plain().height, straightedge: -0.5 } }), 'airspace-text')).toBe(
      'straightedge 0.5 below',
    );
  });

  it('follows the chosen string: action 2 at the treble, 3 at the bass', () => {
    const uneven: Project = { ...plain(), setup: { ...plain().setup, action: { treble: 2, bass: 3 } } };
    // 0.5 + 2·1.5 = 3.5 and 0.5 + 2·2.5 = 5.5; half way 4.5; 0.5 of airspace each.
    expect(textOf(section(uneven, 0), 'proud-text')).toBe('saddle 4.0 proud');
    expect(textOf(section(uneven, 5), 'proud-text')).toBe('saddle 6.0 proud');
    expect(textOf(section(uneven), 'proud-text')).toBe('saddle 5.0 proud');
    expect(section(uneven, 5).title).toBe('Section along string 6 (E)');
  });

  it('shows a tie hole where it is drilled, from the block to the back edge', () => {
    const ties = { kind: 'tie-block' as const, from: 12, spread: 50, hole: 2, rise: 5 };
    const tied: Project = { ...plain(), bridge: { ...plain().bridge, pins: null, ties } };
    const picture = section(tied);
    const bridge = boundsOf(picture, 'bridge');
    const low = boundsOf(picture, 'tie-low');
    // 5 − 1 and 5 + 1 over the sole; 7.4 + 3.175 + 12 behind the front edge.
    expect(bridge.maxY - low.minY).toBeCloseTo(4, 6);
    expect(bridge.maxY - boundsOf(picture, 'tie-high').minY).toBeCloseTo(6, 6);
    expect(low.minX - bridge.minX).toBeCloseTo(22.575, 4);
    expect(low.maxX).toBeCloseTo(bridge.maxX, 6);
    expect(textOf(picture, 'run-text')).toBe('11.1 behind');
    expect(picture.items.some(({ id }) => id.startsWith('pin-'))).toBe(false);
  });

  it('leans its sides, hollows its sole and lays it on the dome', () => {
    // Nothing of this is in the plain section; 9.525·tan 10° = 1.6795.
    const picture = section(plain(soleWith({ draft: Math.PI / 18, along: 500, top: { along: 500 } })));
    const bridge = picture.items.find(({ id }) => id === 'bridge');
    if (bridge?.kind !== 'path') throw new Error('There is no bridge.');
    const points = [bridge.path.start, ...bridge.path.segments.map(({ to }) => to)];
    const top = Math.min(...points.map(({ y }) => y));
    const upper = points.filter(({ y }) => Math.abs(y - top) < 1e-9).map(({ x }) => x);
    const all = points.map(({ x }) => x);
    expect(Math.min(...upper) - Math.min(...all)).toBeCloseTo(1.6795, 4);
    expect(Math.max(...all) - Math.max(...upper)).toBeCloseTo(1.6795, 4);
    // 17.4625²/(2·500) = 0.3049, on the circle 0.30504
    const bottom = points.filter(({ y }) => y - top > 9);
    expect(Math.max(...bottom.map(({ y }) => y)) - Math.min(...bottom.map(({ y }) => y))).toBeCloseTo(0.30504, 4);
  });
});

describe('sideLength', () => {
  const domed = soleWith({ top: { across: 25 * FOOT } });

  it('is drawn to scale, with the gap 20 times as high', () => {
    const picture = length(plain(domed));
    const bridge = boundsOf(picture, 'bridge');
    expect(bridge.maxX - bridge.minX).toBeCloseTo(152.4, 4);
    expect(bridge.maxY - bridge.minY).toBeCloseTo(9.525, 6);
    const gap = boundsOf(picture, 'gap');
    // 0.381 · 20
    expect(Math.abs(gap.maxY - gap.minY - 7.62)).toBeLessThan(0.01);
    expect(gap.maxX - gap.minX).toBeCloseTo(152.4, 4);
    const texts = ['bassTip', 'bassWing', 'centre', 'trebleWing', 'trebleTip'].map((name) =>
      textOf(picture, `gap-${name}-text`),
    );
    expect(texts).toEqual(['0.38', '0.10', '0.00', '0.10', '0.38']);
    expect(textOf(picture, 'thick-bassTip-text')).toBe('4.0');
    expect(textOf(picture, 'thick-centre-text')).toBe('9.5');
    // The top beneath: 0.381 lower under the tips than under the centre.
    const top = boundsOf(picture, 'top');
    expect(top.maxY - top.minY).toBeGreaterThan(0.38);
    expect(top.minY).toBeCloseTo(bridge.maxY, 6);
  });

  it('magnifies a large gap less, so that the strip keeps within 24 mm', () => {
    const wide = length(plain(soleWith({ top: { across: 1000 } })));
    // 76.2²/(2·1000) = 2.90; five times is 14.5, ten times 29.
    expect(textOf(wide, 'gap-words')).toBe('Gap, drawn 5 times as high');
    const gap = boundsOf(wide, 'gap');
    expect(Math.abs(gap.maxY - gap.minY - 14.54)).toBeLessThan(0.05);
  });

  it('shows the saddle over the bridge as high as the strings want it', () => {
    const picture = length(plain(FLAT_SOLE));
    const bridge = boundsOf(picture, 'bridge');
    expect(bridge.minY - boundsOf(picture, 'saddle').minY).toBeCloseTo(4, 6);
    expect(boundsOf(picture, 'saddle-in-slot').maxY - bridge.minY).toBeCloseTo(6.5, 6);
  });

  it('turns over with the hand, its words upright', () => {
    const uneven = soleWith({
      top: { from: 'gaps', gaps: { bassTip: 0.5, bassWing: 0.1, centre: 0, trebleWing: 0.1, trebleTip: 0.2 } },
    });
    const right = length(plain(uneven));
    const left = length(plain(uneven, 'left'));
    expect(xOf(right, 'bass')).toBeLessThan(xOf(right, 'treble'));
    expect(xOf(left, 'bass')).toBeGreaterThan(xOf(left, 'treble'));
    for (const id of ['gap-bassTip-text', 'gap-trebleTip-text']) expect(textOf(left, id)).toBe(textOf(right, id));
    const middle = (xOf(right, 'gap-bassTip-text') + xOf(left, 'gap-bassTip-text')) / 2;
    expect(middle).toBeCloseTo(xOf(right, 'gap-centre-text'), 6);
  });
});

describe('drawSaddleBlank', () => {
  it('has every string’s height on its top, over a flat foot', () => {
    const project: Project = { ...plain(), setup: { ...plain().setup, action: { treble: 2, bass: 3 } } };
    const picture = blankOf(project);
    const blank = boundsOf(picture, 'blank');
    expect(blank.maxX - blank.minX).toBeCloseTo(76, 6);
    // 6.5 + 0.5 + 3.5 at the treble, 2 more at the bass, evenly over 54: 12.5 − 10.5 carried on to ±38: 12.907 and 10.093.
    expect(textOf(picture, 'height-1')).toBe('10.5');
    expect(textOf(picture, 'height-6')).toBe('12.5');
    expect(blank.maxY - blank.minY).toBeCloseTo(12.907, 2);
    expect(textOf(picture, 'length-text')).toBe('76.0 long, 3.13 thick');
    expect(picture.summary).toContain('its top straight');
    expect(xOf(picture, 'height-1')).toBeGreaterThan(xOf(picture, 'height-6'));
    expect(blank.maxY - startOf(picture, 'face').y).toBeCloseTo(6.5, 9);
  });

  it('lies the other way about for a left hand', () => {
    const left = blankOf(plain(null, 'left'));
    expect(xOf(left, 'height-1')).toBeLessThan(xOf(left, 'height-6'));
    expect(xOf(left, 'treble')).toBeLessThan(xOf(left, 'bass'));
  });
});
