import { describe, expect, it } from 'vitest';
import { BRACING_SETS } from '../../../src/core/body/bracingSets';
import { createAround } from '../../../src/core/derive/createAround';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import { chooseBody } from '../../../src/store/commands/body/chooseBody';
import { takeBracing } from '../../../src/store/commands/body/takeBracing';
import { clampPicture } from '../../../src/ui/place/glue/clampPicture';
import { clampTroubles, clampWhere, reachWords } from '../../../src/ui/place/glue/clampWords';
import { widestGap } from '../../../src/ui/place/glue/widestGap';
import { steelProject, steelWith } from '../../core/document/steelProject';
import { valueOf as answerOf } from '../../core/document/valueOf';

const show = (mm: number): string => `${mm.toFixed(1)} mm`;

const braced = answerOf(takeBracing(answerOf(chooseBody(steelProject, true)), BRACING_SETS[0]?.id ?? ''));

/** Two clamps, on the centreline and 50 to the treble side. */
const pictureOf = (project: Project, hand: 'right' | 'left' = 'right') => {
  const derived = createDerive()(project);
  const bridge = answerOf(derived.bridge);
  const body = createAround(() => null)(project, derived).body?.place ?? null;
  const clamps = [
    { x: 0, y: bridge.front + 15 },
    { x: 50, y: bridge.front + 12 },
  ];
  return clampPicture({ bridge, slot: answerOf(derived.slot), body, clamps, hand });
};

const textAt = (picture: ReturnType<typeof pictureOf>, text: string): number => {
  const item = picture.items.find((each) => each.kind === 'text' && each.text === text);
  if (item?.kind !== 'text') throw new Error(`There is no ${text}.`);
  return item.at.x;
};

describe('the picture of the clamps', () => {
  it('numbers them in order of tightening, on the bridge', () => {
    const picture = pictureOf(steelProject);
    const middle = picture.width / 2;
    expect(textAt(picture, '1')).toBeCloseTo(middle, 9);
    expect(textAt(picture, '2') - middle).toBeCloseTo(50, 9);
    expect(textAt(picture, 'TREBLE')).toBeGreaterThan(middle);
    expect(new Set(picture.items.map(({ id }) => id)).size).toBe(picture.items.length);
  });

  it('changes sides for a left hand, and stays right to read', () => {
    const picture = pictureOf(steelWith({ instrument: { hand: 'left' } }), 'left');
    const middle = picture.width / 2;
    expect(textAt(picture, '2') - middle).toBeCloseTo(-50, 9);
    expect(textAt(picture, 'TREBLE')).toBeLessThan(middle);
  });

  it('shows what is known of braces, plate and soundhole, and lies within its frame', () => {
    const plain = pictureOf(steelProject);
    const known = pictureOf(braced);
    expect(plain.items.some(({ role }) => role === 'beneath')).toBe(false);
    expect(known.items.filter(({ role }) => role === 'beneath').length).toBe((braced.body?.braces.length ?? 0) + 1);
    expect(known.items.some(({ id }) => id === 'soundhole')).toBe(true);
    for (const { width, height, items } of [plain, known])
      for (const item of items) {
        if (item.kind !== 'path' || item.part !== 'footprint') continue;
        const { minX, maxX, minY, maxY } = pathBounds(item.path);
        expect(Math.min(minX, minY, width - maxX, height - maxY)).toBeGreaterThan(0);
      }
  });
});

describe('clamps in words', () => {
  const place = { at: { x: 0, y: 0 }, onBridge: true, reach: 112.4, inCutaway: false, pin: null };

  it('say where they stand and whether they get there', () => {
    expect(clampWhere({ x: 0, y: 16 }, show)).toBe('centre, 16.0 mm behind the front edge');
    expect(clampWhere({ x: -50, y: -2 }, show)).toBe('50.0 mm bass, 2.0 mm ahead of the front edge');
    expect(reachWords(place, 200, show)).toBe('112.4 mm, reaches');
    expect(reachWords(place, 100, show)).toBe('112.4 mm, too far');
    expect(reachWords({ ...place, reach: null }, 100, show)).toBe('no soundhole entered');
  });

  it('say what to look at', () => {
    expect(clampTroubles(place, 200, show)).toEqual([]);
    const wrong = { ...place, onBridge: false, inCutaway: true, pin: 7 };
    expect(clampTroubles(wrong, 100, show)).toEqual([
      'Off the bridge.',
      'Over the cutaway: nothing is beneath it.',
      'The clamp is 12.4 mm short.',
      'A locating pin 7.0 mm away: leave room to pull it.',
    ]);
  });
});

describe('one clamp more', () => {
  it('goes where there is most room', () => {
    const outline = rectanglePath(-75, 600, 150, 30);
    const at = (x: number) => ({ x, y: 615 });
    expect(widestGap([at(0), at(-50)], outline)).toEqual({ x: 37.5, y: 615 });
    expect(widestGap([at(0), at(-50), at(50)], outline)).toEqual({ x: -25, y: 615 });
  });
});
