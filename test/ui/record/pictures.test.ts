import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { KINDS } from '../../../src/core/kinds/kinds';
import { entryOf } from '../../../src/core/library/entryOf';
import { ok } from '../../../src/core/result';
import { overlay } from '../../../src/ui/record/compare/overlay';
import { smallPicture } from '../../../src/ui/record/shelf/smallPicture';
import { createSmallPictures } from '../../../src/ui/record/shelf/smallPictures';

const MORNING = '2026-03-01T09:00:00.000Z';
const demo = demoProject('demo', MORNING);
const lefty: Project = { ...demo, instrument: { ...demo.instrument, hand: 'left' } };
const broken: Project = {
  ...demo,
  instrument: { ...demo.instrument, scale: { ...demo.instrument.scale, readings: [] } },
};

const numbers = (text: string): readonly number[] => (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

describe('smallPicture', () => {
  it('shows the whole bridge, with room around it', () => {
    const picture = smallPicture(demo);
    const [left = 0, , width = 0] = numbers(picture?.viewBox ?? '');
    // Symmetric about the centreline; 4 mm to either side of a bridge of 6 to 6 1/4 in, as belly bridges are (from memory).
    expect(width - 8).toBeGreaterThan(152);
    expect(width - 8).toBeLessThan(159);
    expect(left).toBeCloseTo(-width / 2, 1);
    expect(picture?.outline.startsWith('M')).toBe(true);
    expect(picture?.inside.length).toBeGreaterThan(100);
  });

  it('mirrors a left-handed bridge', () => {
    const [right, left] = [smallPicture(demo), smallPicture(lefty)];
    expect(left?.viewBox).toBe(right?.viewBox);
    expect(left?.inside).not.toBe(right?.inside);
  });

  it('is none where the bridge cannot be computed', () => {
    expect(smallPicture(broken)).toBeNull();
  });
});

describe('createSmallPictures', () => {
  const start = (projects: readonly Project[]) => {
    const read: string[] = [];
    const waiting: (() => void)[] = [];
    const pictures = createSmallPictures(
      async (id) => {
        read.push(id);
        return ok(projects.find((project) => project.id === id) ?? demo);
      },
      (work) => waiting.push(work),
    );
    /** Lets everything that waits for its turn have it. */
    const idle = async (): Promise<void> => {
      for (let turns = 0; turns < 50; turns += 1) {
        waiting.shift()?.();
        await Promise.resolve();
      }
    };
    return { pictures, read, idle };
  };

  it('makes nothing before the browser is idle, and each picture once', async () => {
    const { pictures, read, idle } = start([demo]);
    const entry = entryOf(demo, false);
    let made = 0;
    const count = (): void => {
      made += 1;
    };
    pictures.want(entry, count);
    expect(pictures.known(entry)).toBeUndefined();
    await idle();
    expect(pictures.known(entry)?.outline).toBeTruthy();
    pictures.want(entry, count);
    await idle();
    expect({ made, read }).toEqual({ made: 2, read: ['demo'] });
  });

  it('makes it anew for another state, and skips what nobody wants any more', async () => {
    const { pictures, read, idle } = start([demo]);
    const entry = entryOf(demo, false);
    pictures.want(entry, () => {});
    await idle();
    expect(pictures.known({ ...entry, revision: 1 })).toBeUndefined();
    pictures.want({ ...entry, revision: 1 }, () => {});
    pictures.want({ ...entry, id: 'other' }, () => {})();
    await idle();
    expect(read).toEqual(['demo', 'demo']);
  });

  it('remembers that there can be none', async () => {
    const { pictures, idle } = start([broken]);
    const entry = entryOf(broken, false);
    pictures.want(entry, () => {});
    await idle();
    expect(pictures.known(entry)).toBeNull();
  });
});

describe('overlay', () => {
  const classical = KINDS.find(({ id }) => id === 'classical')?.make('other', MORNING) ?? demo;

  it('lays both where they lie from their nuts, or their break points together', () => {
    const byNut = overlay(demo, classical, 'nut');
    expect(byNut?.drawings.map(({ moved }) => moved)).toEqual([0, 0]);
    // A scale of 650 against one of 632: the break points lie about 18 mm apart, but for their compensation.
    const moved = overlay(demo, classical, 'break-point')?.drawings[1]?.moved ?? 0;
    expect(moved).toBeLessThan(-14);
    expect(moved).toBeGreaterThan(-22);
  });

  it('is none where one cannot be computed', () => {
    expect(overlay(demo, broken, 'nut')).toBeNull();
  });
});
