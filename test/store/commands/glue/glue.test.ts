import { describe, expect, it } from 'vitest';
import { fieldAt } from '../../../../src/core/document/fieldAt';
import type { FieldValue } from '../../../../src/core/document/fieldValue';
import type { Project } from '../../../../src/core/document/types';
import type { Result } from '../../../../src/core/result';
import { chooseGrain } from '../../../../src/store/commands/glue/chooseGrain';
import { setClamps } from '../../../../src/store/commands/glue/setClamps';
import { setGlueField } from '../../../../src/store/commands/glue/setGlueField';
import { steelProject } from '../../../core/document/steelProject';
import { valueOf as answerOf, codesOf } from '../../../core/document/valueOf';
import { expectReversible } from '../../expectReversible';

const set = (project: Project, path: string, value: FieldValue): Result<Project> => {
  const field = fieldAt(project, path);
  if (field === null) throw new Error(`There is no ${path}.`);
  return setGlueField(project, field, value);
};

describe('setGlueField', () => {
  it('begins the instrument with nothing invented', () => {
    const after = expectReversible('Open time 5 min', (actions) => {
      actions.change('Open time 5 min', (project) => set(project, 'build.glue.times.open', 5));
    });
    expect(after.build?.glue).toEqual({
      adhesive: '',
      pressure: null,
      times: { open: 5, closed: null, clamp: null, cure: null },
      clamps: null,
      reach: 200,
    });
    expect(after.build?.shop).toBeNull();
  });

  it('keeps air and grain, each in its own group', () => {
    const after = ['build.shop.humidity', 'build.kept.celsius', 'build.movement.top.radial'].reduce(
      (project, path) => answerOf(set(project, path, path.endsWith('radial') ? 0.0015 : 25)),
      steelProject,
    );
    expect(after.build).toMatchObject({
      shop: { humidity: 25 },
      kept: { celsius: 25 },
      movement: { top: { wood: 'sitka-spruce', radial: 0.0015, tangential: null } },
    });
  });

  it.each([
    ['build.glue.times.cure', -1],
    ['build.glue.pressure', 900],
    ['build.shop.humidity', 101],
    ['build.kept.celsius', 90],
    ['build.movement.bridge.radial', 0.5],
  ] as const)('refuses %s of %d', (path, value) => {
    expect(codesOf(set(steelProject, path, value))).toEqual(['field.range']);
  });
});

describe('setClamps', () => {
  const places = [
    { x: 0, y: 16 },
    { x: -50, y: 12 },
  ];

  it('keeps places in order, and takes the proposed ones again', () => {
    const after = expectReversible('Clamps', (actions) => {
      actions.change('Clamps', (project) => setClamps(project, places));
    });
    expect(after.build?.glue?.clamps).toEqual(places);
    expect(answerOf(set(after, 'build.glue.clamps.1.x', -52)).build?.glue?.clamps?.[1]).toEqual({ x: -52, y: 12 });
    expect(answerOf(setClamps(after, null)).build?.glue?.clamps).toBeNull();
  });

  it('refuses none, too many, and what lies far off', () => {
    expect(codesOf(setClamps(steelProject, []))).toEqual(['glue.clamps']);
    expect(
      codesOf(
        setClamps(
          steelProject,
          Array.from({ length: 13 }, () => ({ x: 0, y: 0 })),
        ),
      ),
    ).toEqual(['glue.clamps']);
    expect(codesOf(setClamps(steelProject, [{ x: 400, y: Number.NaN }]))).toEqual(['field.kind', 'field.range']);
  });
});

describe('chooseGrain', () => {
  it('takes a wood, whose figures take the place of the maker’s', () => {
    const own = answerOf(set(steelProject, 'build.movement.bridge.radial', 0.002));
    const after = expectReversible(
      'Wood of the bridge: Mahogany',
      (actions) => {
        actions.change('Wood of the bridge: Mahogany', (project) => chooseGrain(project, 'bridge', 'mahogany'));
      },
      own,
    );
    expect(after.build?.movement?.bridge).toEqual({ wood: 'mahogany', radial: null, tangential: null });
    expect(after.build?.movement?.top.wood).toBe('sitka-spruce');
  });

  it('refuses a wood that is not in the table', () => {
    expect(codesOf(chooseGrain(steelProject, 'top', 'ebony'))).toEqual(['glue.wood']);
  });
});
