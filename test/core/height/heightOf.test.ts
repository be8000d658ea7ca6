import { describe, expect, it } from 'vitest';
import { createBridgeAtHand } from '../../../src/core/derive/createBridgeAtHand';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { HEIGHT_LIMITS } from '../../../src/core/height/heightLimits';
import { heightLimitsInUse } from '../../../src/core/height/limitsInUse';
import type { HeightChain } from '../../../src/core/height/types';
import { PROUD_645 } from '../../reference/bench';
import { steelProject, steelWith } from '../document/steelProject';

const sides = (value: number) => ({ treble: value, bass: value });
const steel = (straightedge: number | null, change: Partial<Project['height']> = {}): Project =>
  steelWith({
    setup: { nutHeight: sides(0.5), action: sides(2.2), relief: 0.15 },
    compensation: { rule: { treble: 0, bass: 0, reach: 'break-point', source: '' } },
    height: { straightedge, ...change },
  });
const heightOfProject = (project: Project) => createBridgeAtHand().height(project, createDerive()(project));
const chain = (project: Project): HeightChain => {
  const height = heightOfProject(project);
  if (height === null || !height.ok) throw new Error('There is no chain of heights.');
  return height.value;
};
const codes = (project: Project): readonly string[] => chain(project).reasons.map(({ code }) => code);

describe('heightOf', () => {
  it('is silent until the straightedge was read', () => {
    expect(heightOfProject(steel(null))).toBeNull();
  });

  it.each(PROUD_645.proud)('airspace %d: the saddle stands up %d, a go', (airspace, proud) => {
    const found = chain(steel(airspace));
    expect(found.strings).toHaveLength(6);
    for (const string of found.strings) {
      expect(string.height).toBeCloseTo(PROUD_645.atSaddle, 2);
      expect(Math.abs(string.proud - proud)).toBeLessThan(0.05);
    }
    expect(found.verdict).toBe('go');
    // Bridge 9.525, slot 6.5 deep.
    expect(found.woodUnder).toBeCloseTo(3.025, 9);
  });

  // Only that they are taken; the figures themselves are tested with the chain. A radius lifts the middle strings.
  it('takes the radius of the board, the pickup and the run to the pins', () => {
    const flat = chain(steel(1));
    const round = chain({ ...steel(1), instrument: { ...steelProject.instrument, boardRadius: 300 } });
    expect(flat.strings[2]?.lift).toBeCloseTo(0, 9);
    expect(round.strings[2]?.lift).toBeGreaterThan(0.5);
    expect(chain(steel(1, { pickup: 1.5 })).pickup).toEqual({ lift: 1.5, actionRise: 0.75 });
    // 4.783 proud over 11.1: atan(4.783 / 11.1) = 23.3°.
    expect(flat.strings[0]?.breakDeg).toBeCloseTo(23.3, 1);
    expect(chain(steel(1, { run: 20 })).strings[0]?.breakDeg).toBeCloseTo(13.4, 1);
  });

  // Behind the octave line by 10: 0.5 + 3.283039 · 655 / 645 = 3.833939.
  it('takes the saddle where the compensation puts it', () => {
    const far = steel(1);
    const rule = { treble: 10, bass: 10, reach: 'break-point', source: '' } as const;
    const found = chain({ ...far, compensation: { ...far.compensation, rule } });
    expect(found.strings[3]?.height).toBeCloseTo(3.833939, 4);
  });

  // A classical's straightedge meets the bridge below its top: fine there, not on a steel-string.
  it('goes by the limits of its kind', () => {
    expect(codes(steel(-2))).toContain('airspace-low');
    expect(codes(steel(-2, { kind: 'classical' }))).not.toContain('airspace-low');
  });

  it('goes by the maker’s own limits, and says so', () => {
    const own = { ...steel(1), limits: { proudMost: 4, woodUnder: 3.5 } };
    const reasons = chain(own).reasons.filter(({ code }) => code === 'proud-high' || code === 'wood-thin');
    expect(reasons.map(({ limit, source }) => [limit, source])).toEqual([
      [4, 'set by the maker'],
      [3.5, 'set by the maker'],
    ]);
    expect(codes(steel(1))).not.toContain('proud-high');
  });
});

describe('heightLimitsInUse', () => {
  it('are the usual ones without any of the maker’s', () => {
    for (const kind of ['steel', 'classical', 'ukulele'] as const)
      expect(heightLimitsInUse(kind, {})).toEqual(HEIGHT_LIMITS[kind]);
  });

  it('take one end of a range and leave the other', () => {
    const { airspace, proud } = heightLimitsInUse('classical', { airspaceMost: 1 });
    expect(airspace).toEqual({ least: -4, most: 1, source: 'set by the maker' });
    expect(proud).toEqual(HEIGHT_LIMITS.classical.proud);
  });

  it('take every limit that can be set', () => {
    const own = {
      airspaceLeast: 1,
      airspaceMost: 2,
      proudLeast: 3,
      proudMost: 4,
      thicknessLeast: 5,
      thicknessMost: 6,
      woodUnder: 7,
      share: 0.8,
      shareAim: 0.9,
      breakDeg: 10,
    };
    const source = 'set by the maker';
    expect(heightLimitsInUse('ukulele', own)).toEqual({
      airspace: { least: 1, most: 2, source },
      proud: { least: 3, most: 4, source },
      thickness: { least: 5, most: 6, source },
      woodUnder: { least: 7, source },
      share: { least: 0.8, source },
      shareAim: { least: 0.9, source },
      breakDeg: { least: 10, source },
    });
  });
});
