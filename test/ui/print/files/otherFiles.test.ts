import { describe, expect, it } from 'vitest';
import { deriveAreas } from '../../../../src/core/derive/deriveAreas';
import { demoProject } from '../../../../src/core/kinds/demo';
import type { DrawingFormat, FileDrawing, Workshop } from '../../../../src/core/ports';
import { fail, ok } from '../../../../src/core/result';
import { createStore } from '../../../../src/store/createStore';
import { makeAround } from '../../../../src/store/makeAround';
import { otherFiles } from '../../../../src/ui/print/files/otherFiles';
import type { Services } from '../../../../src/ui/services';
import { repairWith, rowWith, slotWith } from '../../../core/repair/formerCase';

interface Download {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

/** The work on a store of the demo, with what it downloads and what it asks the workshop for. */
const start = (made: ReturnType<Workshop['makeDrawing']> = Promise.resolve(ok(new Uint8Array([1])))) => {
  const downloads: Download[] = [];
  const asked: [FileDrawing, DrawingFormat][] = [];
  const clock = { now: () => '2026-11-25T12:00:00Z', today: () => '2026-11-25' };
  const memory = { read: () => null, write: () => undefined };
  const store = createStore({
    start: demoProject('demo', clock.now()),
    clock,
    memory,
    deriveAreas,
    loadAround: async (arrived) => makeAround(arrived),
  });
  const services = {
    store,
    clock,
    files: {
      download: (name: string, type: string, bytes: Uint8Array) =>
        downloads.push({ name, type, text: new TextDecoder().decode(bytes) }),
    },
    workshop: async () => ({
      makeDrawing: (drawing: FileDrawing, format: DrawingFormat) => {
        asked.push([drawing, format]);
        return made;
      },
    }),
  } as unknown as Services;
  return { store, downloads, asked, work: otherFiles(services), told: () => store.getState().message };
};

describe('files for other programs', () => {
  it.each([
    [{ kind: 'svg' }, 'Wren 14 drawing.svg', 'image/svg+xml'],
    [{ kind: 'dxf', version: 'R12' }, 'Wren 14 drawing.dxf', 'image/vnd.dxf'],
    [{ kind: 'png', dpi: 300 }, 'Wren 14 drawing.png', 'image/png'],
  ] as const)('are named after the instrument: %j', async (format, name, type) => {
    const { work, downloads, asked, told } = start();
    await work.drawing(format);
    expect(downloads).toEqual([{ name, type, text: '\u0001' }]);
    expect(asked.map(([, other]) => other)).toEqual([format]);
    expect(told().kind).toBe('status');
  });

  it('wait for what comes after the first drawing, and leave out the marks of design checks', async () => {
    const { store, work, asked } = start();
    store.actions.change('Rim', (project) => ok({ ...project, bridge: { ...project.bridge, rim: 1.5 } }));
    expect(store.getState().around).toBeNull();
    await work.drawing({ kind: 'svg' });
    const roles = asked[0]?.[0].items.map(({ role }) => role) ?? [];
    expect(roles).toContain('finish-line');
    expect(roles).not.toContain('mark');
    // Locating pins of 9 mm are too wide for the slot: the checks that find it put marks on the drawing.
    store.actions.change('Far too wide', (project) =>
      ok({ ...project, bridge: { ...project.bridge, locating: { ...project.bridge.locating, drill: 9 } } }),
    );
    await work.drawing({ kind: 'svg' });
    expect(store.getState().drawing.some(({ role }) => role === 'mark')).toBe(true);
    expect(asked[1]?.[0].items.some(({ role }) => role === 'mark')).toBe(false);
  });

  it('hold the bridge that was there, with what will show of it, and how far its holes are off', async () => {
    const { store, work, asked } = start();
    const repair = repairWith({ holes: rowWith(), slot: slotWith() });
    store.actions.change('Repair', (project) => ok({ ...project, repair }));
    await work.drawing({ kind: 'svg' });
    const ids = asked[0]?.[0].items.map(({ id }) => id) ?? [];
    expect(ids).toEqual(
      expect.arrayContaining(['old-bridge', 'old-slot', 'off-pin-1', 'showing-0', 'showing-hatch-0']),
    );
  });

  it('follow the hand, and say whose they are', async () => {
    const { store, work, asked } = start();
    store.actions.setHand('left');
    await work.drawing({ kind: 'svg' });
    const [drawing] = asked[0] ?? [];
    expect(drawing?.title).toBe('Wren 14: bridge, left hand');
    expect(drawing?.description).toContain('2026-11-25');
    const pin = drawing?.items.find(({ id }) => id === 'pin-1');
    expect(pin?.kind === 'path' && pin.path.start.x < 0).toBe(true);
  });

  it('tell the numbers as a table', () => {
    const { work, downloads } = start();
    work.placement('decimal-comma');
    expect(downloads[0]?.name).toBe('Wren 14 placement.csv');
    // The demo reads 316.0 to the 12th fret, so that the octave line lies at 632.
    expect(downloads[0]?.text).toContain('Octave line;632,000;316,000;');
  });

  it('are not made, with the reason, where they cannot be', async () => {
    const failing = start(Promise.resolve(fail('', 'worker.failed', 'It broke down.')));
    await failing.work.drawing({ kind: 'png', dpi: 300 });
    expect(failing.downloads).toEqual([]);
    expect(failing.told()).toMatchObject({ kind: 'alert', text: 'No PNG. It broke down.' });
    const { store, work, downloads, told } = start();
    store.actions.change('Corners', (project) => {
      const { outline } = project.bridge;
      if (outline.kind === 'drawn') throw new Error('expected a shape');
      const parameters = { ...outline.parameters, corner: 999 };
      return ok({ ...project, bridge: { ...project.bridge, outline: { ...outline, parameters } } });
    });
    await work.drawing({ kind: 'svg' });
    expect(told().text).toMatch(/^No SVG\. .+/);
    work.placement('comma');
    expect(told().text).toMatch(/^No CSV\. .+/);
    expect(downloads).toEqual([]);
  });
});
