import { describe, expect, it } from 'vitest';
import { createBench } from '../../../src/store/bench/createBench';
import { codesOf } from '../../core/document/valueOf';

const benchWith = (start: string | null) => {
  let kept = start;
  const bench = createBench({
    read: () => kept,
    write: (text) => {
      kept = text;
    },
  });
  return { bench, kept: () => kept };
};

describe('tools of the bench', () => {
  it('keep their own doubt, and which line they are taken to, from one visit to the next', () => {
    const first = benchWith(null);
    expect(first.bench.getState().tools).toEqual({ sigmas: {}, chosen: {} });
    first.bench.setToolSigma('calliper', 0.03);
    first.bench.chooseTool('margin-treble', 'rule-64');
    const again = benchWith(first.kept()).bench;
    expect(again.getState().tools).toEqual({ sigmas: { calliper: 0.03 }, chosen: { 'margin-treble': 'rule-64' } });
    again.setToolSigma('calliper', null);
    expect(again.getState().tools.sigmas).toEqual({});
  });

  it('refuse a doubt that no tool has', () => {
    const { bench } = benchWith(null);
    for (const sigma of [0, 0.004, 5.1, -1, Number.NaN])
      expect(codesOf(bench.setToolSigma('rule', sigma))).toEqual(['tool.sigma']);
  });

  it.each([
    null,
    3,
    'tools',
    [],
    { sigmas: { calliper: '0.1', laser: 0.1, rule: 99 }, chosen: { 'Not a line!': 'rule', 'stick-bass': 'laser' } },
    { sigmas: null, chosen: 4 },
  ])('leave out what is none of theirs: %j', (tools) => {
    expect(benchWith(JSON.stringify({ tools })).bench.getState().tools).toEqual({ sigmas: {}, chosen: {} });
  });
});
