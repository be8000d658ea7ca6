import { describe, expect, it } from 'vitest';
import type { Anchor } from '../../../../src/core/document/dimensionTypes';
import { demoProject } from '../../../../src/core/kinds/demo';
import { keepNodeAnchors } from '../../../../src/store/commands/dimensions/keepNodeAnchors';
import { pinDimension } from '../../../../src/store/commands/dimensions/pinDimension';
import { unpinDimension } from '../../../../src/store/commands/dimensions/unpinDimension';
import { expectReversible } from '../../expectReversible';
import { MORNING } from '../../startStore';

const demo = demoProject('test', MORNING);
const PIN: Anchor = { kind: 'part', part: 'pin 1', feature: 'centre' };
const node = (number: number): Anchor => ({ kind: 'part', part: `node ${number}`, feature: 'itself' });
const PLACE: Anchor = { kind: 'point', at: { x: 12.5, y: -3 } };

describe('pinned dimensions', () => {
  it('are kept in order, with names of their own', () => {
    const one = expectReversible('Dimension pinned', ({ change }) =>
      change('Dimension pinned', (project) =>
        pinDimension(project, { kind: 'distance', way: 'across', from: PIN, to: PLACE }),
      ),
    );
    expect(one.dimensions).toEqual([{ kind: 'distance', id: 'd1', way: 'across', from: PIN, to: PLACE }]);
    const two = expectReversible(
      'Dimension pinned',
      ({ change }) =>
        change('Dimension pinned', (project) =>
          pinDimension(project, { kind: 'angle', from: PIN, corner: node(2), to: PLACE }),
        ),
      one,
    );
    const three = expectReversible(
      'Dimension pinned',
      ({ change }) =>
        change('Dimension pinned', (project) => pinDimension(project, { kind: 'gap', from: 'slot', to: 'footprint' })),
      two,
    );
    expect(three.dimensions.map(({ id }) => id)).toEqual(['d1', 'd2', 'd3']);
    const fewer = expectReversible(
      'Dimension taken away',
      ({ change }) => change('Dimension taken away', (project) => unpinDimension(project, 'd2')),
      three,
    );
    expect(fewer.dimensions.map(({ id }) => id)).toEqual(['d1', 'd3']);
    const again = pinDimension(fewer, { kind: 'gap', from: 'slot', to: 'pin 1' });
    const ids = again.ok ? again.value.dimensions.map(({ id }) => id) : [];
    expect(new Set(ids).size).toBe(3);
  });

  it('are refused when there are too many, or none of that name', () => {
    const dimensions = Array.from({ length: 100 }, (_, index) => ({
      kind: 'gap' as const,
      id: `g${index}`,
      from: 'slot',
      to: 'footprint',
    }));
    const full = pinDimension({ ...demo, dimensions }, { kind: 'gap', from: 'slot', to: 'footprint' });
    expect(full).toMatchObject({ ok: false, issues: [{ code: 'dimensions.full' }] });
    expect(unpinDimension(demo, 'd1')).toMatchObject({ ok: false, issues: [{ code: 'dimensions.none' }] });
  });
});

describe('keepNodeAnchors', () => {
  const project = {
    ...demo,
    dimensions: [
      { kind: 'distance' as const, id: 'd1', way: 'straight' as const, from: node(1), to: node(3) },
      { kind: 'angle' as const, id: 'd2', from: node(4), corner: node(3), to: PIN },
      { kind: 'distance' as const, id: 'd3', way: 'along' as const, from: PIN, to: PLACE },
      { kind: 'gap' as const, id: 'd4', from: 'slot', to: 'pin 1' },
    ],
  };

  it('follows nodes behind one that was put in', () => {
    // A node put in as number 2 (1 from 0) moves all from there on up by one.
    const kept = keepNodeAnchors(project, (index) => (index >= 1 ? index + 1 : index));
    expect(kept.dimensions[0]).toMatchObject({ from: node(1), to: node(4) });
    expect(kept.dimensions[1]).toMatchObject({ from: node(5), corner: node(4), to: PIN });
    expect(kept.dimensions.slice(2)).toEqual(project.dimensions.slice(2));
  });

  it('drops what was pinned to a node that is gone, and nothing else', () => {
    const kept = keepNodeAnchors(project, (index) => (index === 3 ? null : index));
    expect(kept.dimensions.map(({ id }) => id)).toEqual(['d1', 'd3', 'd4']);
  });
});
