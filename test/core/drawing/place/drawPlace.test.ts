import { describe, expect, it } from 'vitest';
import { drawPlace, type PlaceShown } from '../../../../src/core/drawing/place/drawPlace';
import { itemBounds } from '../../../../src/core/drawing/shapePreview/itemBounds';
import type { Item, TextItem } from '../../../../src/core/drawing/types';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { steelProject } from '../../document/steelProject';
import { linesOf, readCaseOf } from '../../placement/reading/readCaseOf';

const MM = { unit: 'mm', decimals: 1 } as const;
const IN_FRONT = [
  'margin-treble',
  'margin-bass',
  'stick-treble',
  'stick-bass',
  'edge-treble',
  'twelfth-treble-to-front-bass',
];

const shownOf = (project: typeof steelProject, change: Partial<PlaceShown> = {}): PlaceShown => {
  const read = readCaseOf(project);
  const lines = linesOf(read);
  const numbered = IN_FRONT.flatMap((id) => lines.find((line) => line.id === id) ?? []).map((line, index) => ({
    number: index + 1,
    line,
    read: index === 0,
  }));
  return { read, numbered, inHand: numbered[1]?.line ?? null, sits: null, hand: 'right', style: MM, ...change };
};

const texts = (items: readonly Item[]): readonly TextItem[] =>
  items.flatMap((item) => (item.kind === 'text' ? [item] : []));
const find = (items: readonly Item[], id: string): Item => {
  const item = items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`There is no ${id}.`);
  return item;
};
/** 0.8 to the bass, 0.5 to the tail, 0.3°. */
const taped = { x: -0.8, y: 647.778125 + 0.5, angle: (0.3 * Math.PI) / 180 };

describe('drawPlace', () => {
  const projects = [steelProject, ...KINDS.map(({ make }) => make('k', '2026-01-01T00:00:00.000Z'))];
  it.each(projects.map((project) => [project.about.name, project] as const))(
    'keeps everything of %s in the picture, and its numbers apart',
    (_, project) => {
      const { scale } = readCaseOf(project);
      for (const sits of [null, { ...taped, y: readCaseOf(project).saddle.centre + 0.5 }])
        for (const hand of ['right', 'left'] as const) {
          const { plot, spots } = drawPlace(shownOf(project, { sits, hand }));
          for (const item of plot.items) {
            const { minX, maxX, minY, maxY } = itemBounds(item);
            expect([item.id, minX > -0.5, maxX < plot.width + 0.5]).toEqual([item.id, true, true]);
            expect([item.id, minY > -0.5, maxY < plot.height + 0.5]).toEqual([item.id, true, true]);
          }
          for (const [index, one] of spots.entries())
            for (const other of spots.slice(index + 1))
              expect(Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y)).toBeGreaterThan(5.4);
        }
      expect(scale.scaleLength).toBeGreaterThan(0);
    },
  );

  it('mirrors the picture for the left hand and never a word', () => {
    const right = drawPlace(shownOf(steelProject, { sits: taped }));
    const left = drawPlace(shownOf(steelProject, { sits: taped, hand: 'left' }));
    const { width } = right.plot;
    expect(texts(left.plot.items).map(({ text }) => text)).toEqual(texts(right.plot.items).map(({ text }) => text));
    for (const id of ['treble', 'bass', 'margin-treble-number', 'stick-bass-number', 'move-0-by']) {
      const [one, other] = [find(right.plot.items, id), find(left.plot.items, id)] as [TextItem, TextItem];
      expect(other.at.x).toBeCloseTo(width - one.at.x, 6);
      expect(other.angle).toBe(0);
    }
    expect((find(right.plot.items, 'treble') as TextItem).at.x).toBeGreaterThan(width / 2);
    expect((find(left.plot.items, 'treble') as TextItem).at.x).toBeLessThan(width / 2);
  });

  it('picks out the line in hand with its figure, and greys what was read', () => {
    const { plot } = drawPlace(shownOf(steelProject));
    const roles = (id: string): string => find(plot.items, id).role;
    expect(roles('margin-bass-0')).toBe('square-line');
    expect(roles('margin-treble-0')).toBe('rule-line');
    expect(roles('margin-treble-spot')).toBe('plot-bar');
    expect(roles('stick-treble-spot')).toBe('window');
    const line = linesOf(readCaseOf(steelProject)).find(({ id }) => id === 'margin-bass');
    expect((find(plot.items, 'expected') as TextItem).text).toBe(line?.expected.toFixed(1));
    expect(find(plot.items, 'meant').role).toBe('outline');
  });

  it('says how far each wing has to go, in the instrument’s own millimetres', () => {
    const { plot } = drawPlace(shownOf(steelProject, { sits: taped }));
    expect(find(plot.items, 'meant').role).toBe('former');
    expect(find(plot.items, 'sits').role).toBe('outline');
    // Front edge ends at ±74.2 (152.4/2 less a corner of 2), 9 mm ahead of the break points: turned by 0.3° they go
    // ±74.2 · 0.005236 = ±0.388 along and +0.047 aside. Treble: √(0.753² + 0.888²) = 1.16; bass: √(0.753² + 0.112²) = 0.76.
    const by = texts(plot.items).filter(({ id }) => /^move-\d-by$/.test(id));
    expect(by.map(({ text }) => text).sort()).toEqual(['0.8', '1.2']);
    expect((find(plot.items, 'times') as TextItem).text).toContain('10 times as far off');
  });
});
