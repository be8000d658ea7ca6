import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Hand, Project } from '../../../src/core/document/types';
import type { Item } from '../../../src/core/drawing/types';
import { KINDS } from '../../../src/core/kinds/kinds';
import { tapeDownTemplate } from '../../../src/core/sheets/tapeDownTemplate';
import { bodyWith } from '../body/bodyCase';
import { valueOf as answerOf } from '../document/valueOf';
import { itemBox } from './itemBox';
import { MM } from './parts/partCase';

const A4 = { id: 'a4', name: 'A4', width: 210, height: 297 };
const kind = KINDS.find(({ name }) => name === 'Soprano ukulele');
if (kind === undefined) throw new Error('There is no soprano ukulele.');
const soprano = kind.make('uke', '2026-01-01T00:00:00.000Z');

const withBody = (
  across: number | null,
  tail: number | null = null,
  hand: Hand = 'right',
  seamOffset = 0,
): Project => ({
  ...soprano,
  instrument: { ...soprano.instrument, hand, seamOffset },
  body: bodyWith({ across, tail }),
});
const itemsOf = (project: Project): readonly Item[] =>
  answerOf(tapeDownTemplate(project, createDerive()(project), { paper: A4, style: MM, date: '2026-01-02' })).pages[0]
    ?.items ?? [];
const find = (items: readonly Item[], id: string): Item => {
  const item = items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`There is no ${id}.`);
  return item;
};
const boxOf = (items: readonly Item[], id: string) => itemBox(find(items, id));
const trims = (items: readonly Item[]) => items.filter(({ id }) => id.startsWith('trim-')).map(({ id }) => id);

// A4 upright leaves 20 to 200 across: its middle is 110. A body of 165 reaches 82.5 to either side, 27.5 and 192.5.
describe('the trim lines of a small body', () => {
  it('stand at both edges of the body, dotted as all that is cut, from the top of the sheet to its foot', () => {
    const items = itemsOf(withBody(165));
    expect(trims(items)).toEqual(['trim-left', 'trim-left-name', 'trim-right', 'trim-right-name']);
    const [left, right, foot] = ['trim-left', 'trim-right', 'scissors-foot'].map((id) => boxOf(items, id));
    expect(left?.minX).toBeCloseTo(27.5, 9);
    expect(right?.minX).toBeCloseTo(192.5, 9);
    for (const side of [left, right]) {
      expect(side?.minY).toBeCloseTo(10, 9);
      expect(side?.maxY).toBeCloseTo(foot?.minY ?? 0, 9);
    }
    expect(find(items, 'trim-left').role).toBe('scissors');
  });

  it('leave all words of the taped sheet on the body, in one column where two have no room', () => {
    for (const across of [165, 140, 110]) {
      const items = itemsOf(withBody(across));
      const [from, to] = [110 - across / 2, 110 + across / 2];
      const foot = boxOf(items, 'scissors-foot').minY;
      for (const item of items.filter(
        ({ id, kind: what }) => what === 'text' && /^(note|holes|square-line)-/.test(id),
      )) {
        const { minX, maxX, maxY } = itemBox(item);
        expect(minX, item.id).toBeGreaterThan(from);
        expect(maxX, item.id).toBeLessThan(to);
        expect(maxY, item.id).toBeLessThan(foot);
      }
      expect(boxOf(items, 'square-line').minX).toBeGreaterThan(from);
    }
  });

  it('go by the seam, which lies to the treble or the bass of the board', () => {
    const places = (hand: Hand) => {
      const items = itemsOf(withBody(160, null, hand, 2));
      return [boxOf(items, 'trim-left').minX, boxOf(items, 'trim-right').minX];
    };
    // 110 ± 80, and 2 to the treble side: to the right on a right-handed instrument.
    expect(places('right')).toEqual([expect.closeTo(32, 9), expect.closeTo(192, 9)]);
    expect(places('left')).toEqual([expect.closeTo(28, 9), expect.closeTo(188, 9)]);
  });

  it('are drawn only within the sheet: none on a body as wide as it or not measured', () => {
    for (const across of [null, 182, 380]) expect(trims(itemsOf(withBody(across)))).toEqual([]);
    // With the seam 4 aside, one edge of a body of 176 lies at 110 + 4 + 88 = 202, off the sheet, the other at 26.
    expect(trims(itemsOf(withBody(176, null, 'right', 4)))).toEqual(['trim-left', 'trim-left-name']);
    expect(itemsOf(withBody(null))).toEqual(itemsOf({ ...soprano, body: null }));
  });

  it('end at the tail of a body that ends within the sheet', () => {
    const short = itemsOf(withBody(150, 40));
    const front = createDerive()(soprano).bridge;
    const line = createDerive()(soprano).placement;
    if (!front.ok || !line.ok) throw new Error('Expected a bridge.');
    // From the square line, which stands in the drawing, back to the front edge and 40 behind it.
    const tail = boxOf(short, 'square-line').minY + front.value.front - line.value.squareLine.mm.fromNut + 40;
    expect(boxOf(short, 'trim-tail').minY).toBeCloseTo(tail, 6);
    expect(boxOf(short, 'trim-tail')).toMatchObject({ minX: expect.closeTo(35, 9), maxX: expect.closeTo(185, 9) });
    expect(boxOf(short, 'trim-left').maxY).toBeCloseTo(tail, 6);
    expect(trims(itemsOf(withBody(150, 400)))).not.toContain('trim-tail');
  });
});
