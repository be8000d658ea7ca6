import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBridgeAtHand } from '../../../src/core/derive/createBridgeAtHand';
import { createCheckStep } from '../../../src/core/derive/createCheckStep';
import { createDerive } from '../../../src/core/derive/createDerive';
import { buildDrawing } from '../../../src/core/drawing/buildDrawing';
import { tapeDownTemplate } from '../../../src/core/sheets/tapeDownTemplate';
import { steelProject, steelWith } from '../document/steelProject';
import { anyProject } from './randomProject';

const PAPER = { id: 'a4', name: 'A4', width: 210, height: 297 };
const STYLE = { unit: 'mm', decimals: 1 } as const;

/** Every number in a derived part, however deep. */
const numbersIn = (part: unknown): readonly number[] => {
  if (typeof part === 'number') return [part];
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(numbersIn) : [];
};

describe('derive is total', () => {
  it('answers for any project whose fields keep their ranges, drawing and sheet included', () => {
    let whole = 0;
    fc.assert(
      fc.property(anyProject, (project) => {
        const derived = createDerive()(project);
        const { scale, board, strings, saddle, slot, bridge, placement } = derived;
        const parts = [scale, board, strings, saddle, slot, bridge, placement];
        const good = parts.every(({ ok }) => ok);
        expect(derived.issues.length === 0).toBe(good);
        for (const { message, path, code } of derived.issues)
          expect([message, code].every((text) => text !== '') && !/NaN|undefined/.test(message + path)).toBe(true);
        const { models, survey, taper } = derived;
        const atHand = createBridgeAtHand();
        const [height, audit] = [atHand.height(project, derived), atHand.audit(project, derived)];
        for (const part of [models, height, audit, survey, taper, saddle])
          if (part?.ok) expect(numbersIn(part.value).every(Number.isFinite)).toBe(true);
        const items = buildDrawing(derived, { hand: project.instrument.hand, datum: 'front', style: STYLE });
        expect(items.length > 0).toBe(good);
        for (const item of items)
          expect(Object.values(item.kind === 'path' ? item.path.start : item.at).every(Number.isFinite)).toBe(true);
        const sheet = tapeDownTemplate(project, derived, { paper: PAPER, style: STYLE, date: '2026-01-02' });
        if (sheet.ok) whole += 1;
        else expect(sheet.issues.length).toBeGreaterThan(0);
      }),
      { seed: 41, numRuns: 1500 },
    );
    // Else the run would have tried nothing but refusals.
    expect(whole).toBeGreaterThan(150);
  });
});

describe('derive, a part that fails', () => {
  const outline = (shape: 'belly' | 'small-ukulele', parameters: Readonly<Record<string, number>>) =>
    createDerive()(steelWith({ bridge: { outline: { shape, parameters } } }));

  it('loses bridge and placement to a bad outline, and keeps the rest', () => {
    const derived = outline('belly', { full: 20 });
    expect(derived.bridge.ok).toBe(false);
    expect(derived.placement.ok).toBe(false);
    for (const part of [derived.scale, derived.board, derived.strings, derived.saddle, derived.slot])
      expect(part.ok).toBe(true);
    expect(derived.issues.map(({ code, path }) => [code, path])).toEqual([
      ['belly.flat', 'bridge.outline.parameters.full'],
    ]);
    // What can be checked still is.
    const checks = createCheckStep()(
      steelWith({ bridge: { outline: { shape: 'belly', parameters: { full: 20 } } } }),
      derived,
    );
    expect(checks.map(({ id }) => id)).toEqual(['strings-board', 'crown', 'crown-model']);
  });

  it('says so when a rounding shrinks to nothing', () => {
    expect(outline('belly', { corner: 1e-8 }).issues.map(({ code }) => code)).toEqual(['outline.degenerate']);
    expect(outline('small-ukulele', { length: 20, full: 20, end: 10.0000000001 }).bridge.ok).toBe(false);
  });

  it('loses everything to a scale that should come from readings and has none', () => {
    const scale = { from: 'readings' as const, entered: 645, readings: [] };
    const derived = createDerive()(steelWith({ instrument: { scale } }));
    const { board, strings, saddle, slot, bridge, placement } = derived;
    expect([derived.scale, board, strings, saddle, slot, bridge, placement].some(({ ok }) => ok)).toBe(false);
    expect(derived.issues.map(({ code }) => code)).toEqual(['scale.none']);
  });

  it('keeps scale and board when there are no strings', () => {
    const derived = createDerive()({ ...steelProject, strings: [] });
    expect([derived.scale.ok, derived.board.ok, derived.strings.ok, derived.saddle.ok]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(derived.issues.map(({ code }) => code)).toEqual(['strings.few']);
  });

  it('keeps the saddle when the slot is shorter than wide', () => {
    const { slot } = steelProject.bridge;
    const derived = createDerive()(steelWith({ bridge: { slot: { ...slot, length: 10, width: 12 } } }));
    expect([derived.saddle.ok, derived.slot.ok, derived.bridge.ok]).toEqual([true, false, false]);
    expect(derived.issues.map(({ code }) => code)).toEqual(['slot.short']);
  });

  it('says that outer pin holes need pins', () => {
    const locating = { site: 'outer-pin-holes' as const, drill: 2, points: null, clearance: 0.5 };
    const derived = createDerive()(steelWith({ bridge: { pins: null, locating } }));
    expect(derived.issues.map(({ code, path }) => [code, path])).toEqual([['locating.pins', 'bridge.locating.site']]);
  });
});

describe('derive remembers', () => {
  const derive = createDerive();
  const measured = steelWith({
    instrument: {
      widths: { nut: 46, twelfth: 57, last: 60.6 },
      scale: { from: 'readings', entered: 645, readings: [{ fret: 12, value: 322.5 }] },
    },
    height: { straightedge: 1 },
    audit: { treble: 646.6, bass: 649 },
  });
  const before = derive(measured);

  it('every part when only the name changes', () => {
    const renamed = derive({ ...measured, about: { ...measured.about, name: 'Other' } });
    for (const part of Object.keys(before) as (keyof typeof before)[])
      if (part !== 'issues') expect(renamed[part], part).toBe(before[part]);
  });

  // The model wants another setback of every string; the rule's saddle stays where it is.
  it('heights and audit of the bridge at hand until something that they hang on changes', () => {
    const [fresh, atHand] = [createDerive(), createBridgeAtHand()];
    const renamed = { ...measured, about: { ...measured.about, name: 'Other' } };
    const bowed = { ...measured, setup: { ...measured.setup, relief: 0.2 } };
    for (const part of ['height', 'audit'] as const) {
      const first = atHand[part](measured, fresh(measured));
      expect(first).toMatchObject({ ok: true });
      expect(atHand[part](renamed, fresh(renamed))).toBe(first);
      expect(atHand[part](bowed, fresh(bowed))).not.toBe(first);
    }
  });

  it('what the heights do not touch when the relief changes', () => {
    const bowed = derive({ ...measured, setup: { ...measured.setup, relief: 0.2 } });
    for (const part of ['scale', 'board', 'strings', 'survey', 'taper'] as const)
      expect(bowed[part], part).toBe(before[part]);
    for (const part of ['models', 'saddle'] as const) expect(bowed[part], part).not.toBe(before[part]);
    expect(bowed.placement).toEqual(before.placement);
  });

  it('all of it, so that nothing above stands for a part that is not there', () => {
    for (const [part, value] of Object.entries(before))
      if (part !== 'checks' && part !== 'issues') expect(value, part).toMatchObject({ ok: true });
  });

  it('what does not follow from the bridge when the bridge changes', () => {
    const { pins } = steelProject.bridge;
    const moved = derive({ ...measured, bridge: { ...measured.bridge, pins: pins && { ...pins, from: 12 } } });
    expect(moved.scale).toBe(before.scale);
    expect(moved.strings).toBe(before.strings);
    expect(moved.bridge).not.toBe(before.bridge);
    expect(moved.bridge).not.toEqual(before.bridge);
  });

  it('nothing wrong: the same project derives alike in a fresh one', () => {
    derive(steelWith({ instrument: { frets: { count: 20, bodyJoin: 12 } } }));
    expect(derive(steelProject)).toEqual(createDerive()(steelProject));
  });
});
