import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/core/document/types';
import { demoProject } from '../../../../src/core/kinds/demo';
import { chooseSole } from '../../../../src/store/commands/sole/chooseSole';
import { valueOf as answerOf } from '../../../core/document/valueOf';
import { expectReversible } from '../../expectReversible';
import { MORNING, startStore } from '../../startStore';

const demo = demoProject('test', MORNING);
const soled = answerOf(chooseSole(demo, true));

describe('chooseSole', () => {
  it('brings what is usual, and takes it out again', () => {
    const told = expectReversible('Sole', ({ change }) => change('Sole', (project) => chooseSole(project, true)));
    expect(told.bridge.sole?.wing.tip).toBe(3.96875);
    const left = expectReversible('Off', ({ change }) => change('Off', (project) => chooseSole(project, false)), told);
    expect(left.bridge.sole).toBeNull();
  });

  it('keeps what the maker said', () => {
    const { sole } = soled.bridge;
    const own: Project = { ...soled, bridge: { ...soled.bridge, sole: sole && { ...sole, draft: 0.1 } } };
    expect(answerOf(chooseSole(own, true))).toEqual(own);
  });

  it('refuses where there is no outline to lie on the top', () => {
    const bad: Project = {
      ...demo,
      bridge: { ...demo.bridge, outline: { shape: 'rectangular', parameters: { length: 20, full: 10, corner: 9 } } },
    };
    expect(chooseSole(bad, true).ok).toBe(false);
  });
});

describe('the fields of the sole', () => {
  it.each([
    ['bridge.sole.wing.tip', 3.2],
    ['bridge.sole.wing.begin', 50],
    ['bridge.sole.face', 400],
    ['bridge.sole.draft', 0.2],
    ['bridge.sole.sanding', 0.5],
    ['bridge.sole.across', 8534.4],
    ['bridge.sole.top.across', null],
    ['bridge.sole.top.from', 'gaps'],
    ['bridge.sole.top.gaps.bassWing', 0.15],
  ] as const)('%s becomes %s', (path, value) => {
    const { store } = startStore(null, soled);
    expect(store.actions.setField(path, value)).toEqual([]);
    const keys = path.split('.');
    let at: unknown = store.getState().project;
    for (const key of keys) at = (at as Record<string, unknown>)[key];
    expect(at).toBe(value);
  });

  it('are none while nothing was said of the sole, and keep to their limits', () => {
    const { store } = startStore(null, demo);
    expect(store.actions.setField('bridge.sole.wing.tip', 3)[0]?.code).toBe('field.unknown');
    const told = startStore(null, soled).store;
    expect(told.actions.setField('bridge.sole.wing.tip', 0.1)[0]?.code).toBe('field.range');
    expect(told.actions.setField('bridge.sole.top.across', 100)[0]?.code).toBe('field.range');
    expect(told.actions.setField('bridge.sole.top.from', 'guess')[0]?.code).toBe('field.choice');
  });
});
