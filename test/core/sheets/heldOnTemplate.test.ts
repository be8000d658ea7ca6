import { describe, expect, it } from 'vitest';
import { createAround } from '../../../src/core/derive/createAround';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Hand, Project } from '../../../src/core/document/types';
import { drawAround } from '../../../src/core/drawing/drawAround';
import type { Item } from '../../../src/core/drawing/types';
import { tapeDownTemplate } from '../../../src/core/sheets/tapeDownTemplate';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';
import { itemBox } from './itemBox';
import { MM } from './parts/partCase';

const A4 = { id: 'a4', name: 'A4', width: 210, height: 297 };
const HELD = /^tie-|-ramp$/;

const itemsOf = (project: Project): readonly Item[] =>
  answerOf(tapeDownTemplate(project, createDerive()(project), { paper: A4, style: MM, date: '2026-01-02' })).pages[0]
    ?.items ?? [];
const onScreen = (project: Project): readonly Item[] => {
  const derived = createDerive()(project);
  const around = createAround(() => null)(project, derived);
  const view = { hand: project.instrument.hand, datum: project.instrument.nut.datum, style: MM };
  return drawAround(project, derived, around, view).over.filter(({ id }) => HELD.test(id));
};
const boxOf = (items: readonly Item[], id: string) => {
  const item = items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`There is no ${id}.`);
  return itemBox(item);
};

const tied = (kind: 'tie-block' | 'back-edge', hand: Hand) =>
  steelWith({
    instrument: { hand },
    bridge: { pins: null, ties: { kind, from: 6, spread: 58, hole: 1.8, rise: 4.5 } },
  });

describe('how the strings are held', () => {
  it.each(['tie-block', 'back-edge'] as const)('is on the template as on screen: %s', (kind) => {
    for (const hand of ['right', 'left'] as const) {
      const project = tied(kind, hand);
      const items = itemsOf(project);
      const centre = boxOf(items, 'centreline').minX;
      // Six over 58: 29, 17.4 and 5.8 to either side, string 1 on the treble side.
      for (const [index, x] of [29, 17.4, 5.8, -5.8, -17.4, -29].entries()) {
        const side = hand === 'right' ? 1 : -1;
        const [one, other] = ['bass', 'treble'].map((end) => boxOf(items, `tie-${index + 1}-${end}`).minX - centre);
        expect([one, other]).toEqual([expect.closeTo(side * (x - 0.9), 9), expect.closeTo(side * (x + 0.9), 9)]);
      }
      const drawn = onScreen(project);
      expect(items.filter(({ id }) => HELD.test(id)).map(({ id }) => id)).toEqual(drawn.map(({ id }) => id));
      expect(drawn.some(({ role }) => role === 'hole')).toBe(kind === 'back-edge');
      const words = items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
      expect(words).toContain(
        `6 string holes 1.8 mm ${kind === 'back-edge' ? 'to the back edge' : 'through the tie block'}`,
      );
    }
  });

  it('has the string ramps of its pins, and none where none are wanted', () => {
    const { pins } = steelProject.bridge;
    if (pins === null) throw new Error('Expected pins.');
    const ramped = itemsOf(steelWith({ bridge: { pins: { ...pins, ramp: { length: 4, width: 1.5 } } } }));
    const ramps = ramped.filter(({ id }) => id.endsWith('-ramp'));
    expect(ramps).toHaveLength(6);
    for (const { id } of ramps) {
      const pin = boxOf(ramped, id.replace('-ramp', ''));
      // Its tip lies the ramp's length ahead of the hole's rim, toward the saddle and so toward the nut.
      expect(boxOf(ramped, id).minY).toBeLessThan(pin.minY - 3);
      expect(boxOf(ramped, id).minY).toBeGreaterThan(pin.minY - 4.001);
    }
    expect(itemsOf(steelProject).some(({ id }) => HELD.test(id))).toBe(false);
  });
});
