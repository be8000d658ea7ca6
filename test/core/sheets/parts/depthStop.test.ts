import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { newBuild } from '../../../../src/core/document/newBuild';
import type { Project } from '../../../../src/core/document/types';
import { depthStop, stopAt } from '../../../../src/core/sheets/parts/card/depthStop';
import { stopWords } from '../../../../src/core/sheets/parts/card/depthWords';
import { chooseBody } from '../../../../src/store/commands/body/chooseBody';
import { choosePlate } from '../../../../src/store/commands/body/choosePlate';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { DOME_28_FT, MM } from './partCase';

const placeOf = (project: Project) => answerOf(createDerive()(project).bridge);
const stopOf = (project: Project) => depthStop(project, placeOf(project));

/** The steel-string with a top of 2.8 read and a plate of 2.4 mm entered. */
const read = (project: Project): Project => {
  const plated = answerOf(choosePlate(answerOf(chooseBody(project, true)), true));
  const { body } = plated;
  if (body?.plate == null) throw new Error('There is no plate.');
  return {
    ...plated,
    body: { ...body, plate: { ...body.plate, thickness: 2.4 } },
    build: { ...newBuild(), top: 2.8 },
  };
};

const inWings = (x: number, sole: Project['bridge']['sole']): Project =>
  steelWith({
    bridge: {
      locating: {
        ...steelProject.bridge.locating,
        site: 'free',
        points: { treble: { x, y: 14 }, bass: { x: -x, y: 14 } },
      },
      sole,
    },
  });

describe('depthStop', () => {
  it('tells what is missing instead of a depth', () => {
    const stop = stopOf(steelProject);
    expect(stop).toMatchObject({ top: null, plate: null });
    expect(stopAt(stop, stop.bridge)).toBeNull();
  });

  it('adds up bridge, top, plate and a little', () => {
    const stop = stopOf(read(steelProject));
    // 9.525 + 2.8 + 2.4 + 1 = 15.725; under the floor of a slot of 6.5 the bridge is 3.025 thick: 9.225.
    expect(stopAt(stop, stop.bridge)).toBeCloseTo(15.725, 9);
    expect(stopAt(stop, stop.atLocating)).toBeCloseTo(9.225, 9);
  });

  it('goes by the wing where free pins stand in it', () => {
    const sole = {
      wing: { tip: 4, inner: 9, begin: 46.2 },
      face: null,
      draft: 0,
      sanding: 0,
      across: null,
      along: null,
      top: DOME_28_FT,
    };
    // The wing falls from 9 to 4 over 30 mm, from 46.2 to 76.2: at 61.2, half way, 6.5.
    expect(stopOf(inWings(61.2, sole)).atLocating).toBeCloseTo(6.5, 9);
    expect(stopOf(inWings(20, sole)).atLocating).toBeCloseTo(9.525, 9);
    // Without a sole nothing tells how thick the wing is.
    expect(stopOf(inWings(61.2, null)).atLocating).toBeNull();
  });

  it('is what the printed card says', () => {
    const project = read(steelProject);
    const [sum] = stopWords(project, placeOf(project), MM);
    expect(sum).toContain('bridge 9.5 mm + top 2.8 mm + plate 2.4 mm + 1.0 mm = 15.7 mm');
    const free = stopWords(inWings(61.2, null), placeOf(inWings(61.2, null)), MM);
    expect(free[1]).toBe('Locating pins in the wings: _______ of bridge there, in place of 9.5 mm.');
  });
});
