import { describe, expect, it } from 'vitest';
import { chooseRepair } from '../../../../src/store/commands/repair/chooseRepair';
import { tickStep } from '../../../../src/store/commands/run/tickStep';
import { steelProject } from '../../../core/document/steelProject';
import { valueOf as answerOf, codesOf } from '../../../core/document/valueOf';
import { expectReversible } from '../../expectReversible';
import { NOON } from '../../startStore';

describe('tickStep', () => {
  it('keeps when a step was done, and takes it back', () => {
    const after = expectReversible('Done: Neck angle and height pass', (actions) => {
      actions.change('Done: Neck angle and height pass', (project) => tickStep(project, 'neck', NOON));
    });
    expect(after.build?.steps).toEqual({ neck: NOON });
    const both = answerOf(tickStep(after, 'sole', NOON));
    expect(both.build?.steps).toEqual({ neck: NOON, sole: NOON });
    expect(answerOf(tickStep(both, 'neck', null)).build?.steps).toEqual({ sole: NOON });
  });

  it('knows the steps of this work alone, and keeps ticks of another kind', () => {
    expect(codesOf(tickStep(steelProject, 'old-off', NOON))).toEqual(['run.noStep']);
    const repair = answerOf(tickStep(answerOf(chooseRepair(steelProject, true)), 'old-off', NOON));
    const fresh = answerOf(chooseRepair(repair, false));
    expect(fresh.build?.steps).toEqual({ 'old-off': NOON });
    expect(codesOf(tickStep(steelProject, '__proto__', NOON))).toEqual(['run.noStep']);
  });
});
