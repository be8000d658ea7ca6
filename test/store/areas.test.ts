import { describe, expect, it } from 'vitest';
import type { Areas } from '../../src/core/derive/deriveAreas';
import { pathBounds } from '../../src/core/geom/pathBounds';
import { rectanglePath } from '../../src/core/geom/rectanglePath';
import { fail, ok, type Result } from '../../src/core/result';
import type { DeriveAreas } from '../../src/store/keepAreas';
import { startStore } from './startStore';

/** Areas that are told apart by their glue area, with a line of the finish. */
const areas = (glue: number): Areas => ({
  footprint: 1000,
  holes: 0,
  underRim: 1000 - glue,
  glue,
  shareLost: 1 - glue / 1000,
  centroidFromFront: 10,
  weight: 30,
  finishLine: [rectanglePath(0, 600, glue / 10, 10)],
  checks: [],
});

/** A store whose areas are answered by hand, in any order. */
const startAsked = () => {
  const asked: { rim: number; answer: (result: Result<Areas>) => void }[] = [];
  const derive: DeriveAreas = ({ rim }) => new Promise((answer) => asked.push({ rim, answer }));
  const { store } = startStore(null, undefined, derive);
  return { asked, store, ...store };
};

const RIM = 'bridge.rim';
const finishLines = ({ store }: ReturnType<typeof startAsked>) =>
  store.getState().drawing.filter(({ role }) => role === 'finish-line');
const arrived = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('areas', () => {
  it('are asked for on Place, where the glue card needs them', () => {
    const { asked, actions } = startAsked();
    actions.setDevice({ station: 'print' });
    expect(asked).toEqual([]);
    actions.setDevice({ station: 'place' });
    expect(asked).toHaveLength(1);
  });

  it('are not asked for until Draw is open or finish is left under the rim', () => {
    const { asked, actions } = startAsked();
    actions.setField('bridge.thickness', 8);
    expect(asked).toEqual([]);
    actions.setField(RIM, 1);
    expect(asked).toHaveLength(1);
    const draw = startAsked();
    draw.actions.setDevice({ station: 'draw' });
    expect(draw.asked).toHaveLength(1);
  });

  it('come later than the drawing, which then shows the line of the finish', async () => {
    const started = startAsked();
    const { asked, actions, getState } = started;
    actions.setField(RIM, 1);
    const before = getState().drawing;
    expect(getState().areas).toBeNull();
    expect(finishLines(started)).toEqual([]);
    asked[0]?.answer(ok(areas(900)));
    await arrived();
    expect(getState().areas).toEqual(ok(areas(900)));
    expect(finishLines(started)).toHaveLength(1);
    expect(getState().drawing.slice(0, before.length)).toEqual(before);
  });

  it('of a bridge that was changed in the meantime are dropped, whichever comes first', async () => {
    for (const order of [
      [0, 1],
      [1, 0],
    ]) {
      const { asked, actions, getState } = startAsked();
      actions.setField(RIM, 1);
      actions.setField(RIM, 2);
      expect(asked.map(({ rim }) => rim)).toEqual([1, 2]);
      for (const index of order) {
        asked[index]?.answer(ok(areas(index === 0 ? 900 : 800)));
        await arrived();
        const { areas: shown } = getState();
        if (shown !== null) expect(shown).toEqual(ok(areas(800)));
      }
      expect(getState().areas).toEqual(ok(areas(800)));
    }
  });

  it('follow a drag a frame or two behind, and are exact once it ends', async () => {
    const { asked, actions, getState } = startAsked();
    actions.setField(RIM, 1);
    asked[0]?.answer(ok(areas(900)));
    await arrived();
    const rim = (value: number) =>
      actions.preview((project) => ok({ ...project, bridge: { ...project.bridge, rim: value } }));
    rim(2);
    rim(3);
    expect(getState().areas).toEqual(ok(areas(900)));
    asked[1]?.answer(ok(areas(800)));
    await arrived();
    expect(getState().areas).toEqual(ok(areas(800)));
    expect(getState().preview?.bridge.rim).toBe(3);
    rim(4);
    asked[3]?.answer(ok(areas(600)));
    asked[2]?.answer(ok(areas(700)));
    await arrived();
    expect(getState().areas).toEqual(ok(areas(600)));
    actions.preview(null);
    expect(asked.map(({ rim: each }) => each)).toEqual([1, 2, 3, 4, 1]);
    expect(getState().areas).toBeNull();
    asked[4]?.answer(ok(areas(900)));
    await arrived();
    expect(getState().areas).toEqual(ok(areas(900)));
  });

  it('are gone as soon as the bridge changes', async () => {
    const started = startAsked();
    const { asked, actions, getState } = started;
    actions.setField(RIM, 1);
    asked[0]?.answer(ok(areas(900)));
    await arrived();
    actions.setField(RIM, 2);
    expect(getState().areas).toBeNull();
    expect(finishLines(started)).toEqual([]);
  });

  it('are asked for once while the bridge stays, and stay through units and stations', async () => {
    const started = startAsked();
    const { asked, actions, getState } = started;
    actions.setDevice({ station: 'draw' });
    actions.setField(RIM, 1);
    asked[1]?.answer(ok(areas(900)));
    await arrived();
    const right = finishLines(started);
    actions.setDevice({ units: 'in' });
    actions.setField('height.pickup', 0.5);
    actions.setDevice({ station: 'measure' });
    expect(asked).toHaveLength(2);
    expect(getState().areas).toEqual(ok(areas(900)));
    expect(finishLines(started)).toEqual(right);
  });

  it('lie on the side of the hand', async () => {
    const started = startAsked();
    const { asked, actions } = started;
    const boundsOf = async (index: number) => {
      asked[index]?.answer(ok(areas(900)));
      await arrived();
      return finishLines(started).map((item) => item.kind === 'path' && pathBounds(item.path));
    };
    actions.setField(RIM, 1);
    expect(await boundsOf(0)).toMatchObject([{ minX: 0, maxX: 90 }]);
    actions.setHand('left');
    expect(await boundsOf(1)).toMatchObject([{ minX: -90, maxX: 0 }]);
  });

  it('that failed say why and leave the drawing as it is', async () => {
    const started = startAsked();
    const { asked, actions, getState } = started;
    actions.setField(RIM, 1);
    const { drawing } = getState();
    asked[0]?.answer(fail('', 'offset.notLoaded', 'Not loaded.'));
    await arrived();
    expect(getState().areas).toMatchObject({ ok: false, issues: [{ code: 'offset.notLoaded' }] });
    expect(getState().drawing).toEqual(drawing);
  });
});
