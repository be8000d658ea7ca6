import { describe, expect, it } from 'vitest';
import type { Sole } from '../../../../src/core/document/soleTypes';
import type { Bridge, Hand, Project } from '../../../../src/core/document/types';
import { LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import type { PathItem } from '../../../../src/core/drawing/types';
import { KINDS as INSTRUMENTS } from '../../../../src/core/kinds/kinds';
import { drillCard } from '../../../../src/core/sheets/parts/drillCard';
import { gaugeEnds } from '../../../../src/core/sheets/parts/gaugeEnds';
import { heightCard } from '../../../../src/core/sheets/parts/heightCard';
import { octaveStick } from '../../../../src/core/sheets/parts/octaveStick';
import { saddleBlankSheet } from '../../../../src/core/sheets/parts/saddleBlankSheet';
import { slotCard } from '../../../../src/core/sheets/parts/slotCard';
import { soleProfile } from '../../../../src/core/sheets/parts/soleProfile';
import { spacingRule } from '../../../../src/core/sheets/parts/spacingRule';
import type { SheetKind } from '../../../../src/core/sheets/parts/types';
import { DRILLS_ASKED, HEIGHTS, SLOT, SOLE_CARD } from '../../../reference/cards';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { itemBox, overlap } from '../itemBox';
import { boxIn, contextOf, DOME_28_FT, INCH, itemOf, MM, middleOf, partNamed, proseOn } from './partCase';
import { cellsOf } from './readCard';

const SOLE: Sole = {
  wing: { tip: 4, inner: 9.525, begin: 43 },
  face: null,
  draft: 0,
  sanding: 0,
  across: null,
  along: null,
  top: DOME_28_FT,
};

const withBridge = (bridge: Partial<Bridge>, hand: Hand = 'right'): Project =>
  steelWith({ bridge, instrument: { hand } });

const partOf = async (kind: SheetKind, id: string, project: Project) =>
  partNamed(answerOf(kind.make(await contextOf(project))), id);

describe('the drill card', () => {
  it('tells count, diameter and the nearest drill of every family', async () => {
    const card = await partOf(drillCard, 'drill-card', steelProject);
    expect(cellsOf(card, 'drills', 'pins')).toEqual(['6', '4.76', ...DRILLS_ASKED.pins]);
    expect(cellsOf(card, 'drills', 'locating').slice(0, 3)).toEqual(['2', '1.59', '1/16 in']);
    const words = proseOn(card);
    expect(words).toContain(`${DRILLS_ASKED.reamer} deeper, until the mouth reads 5.40 mm`);
    // The plate was not read: a blank to fill, never a guess.
    expect(words).toContain('bridge 9.5 mm + top _______ + plate _______');
    expect(words).toContain('only 3.0 mm of bridge under its floor');
    expect(words).toMatch(/CAUTION.*braces.*Back up the plate/);
  });

  it('takes string holes in place of pins, and warns of a pilot that is too large', async () => {
    const ties = { kind: 'tie-block', from: 12, spread: 50, hole: 1.5, rise: 4 } as const;
    const tied = await partOf(drillCard, 'drill-card', withBridge({ pins: null, ties }));
    expect(cellsOf(tied, 'drills', 'ties').slice(0, 2)).toEqual(['6', '1.50']);
    expect(proseOn(tied)).not.toContain('Ream');
    const { pins } = steelProject.bridge;
    if (pins === null) throw new Error('There are no pins.');
    const wide = await partOf(drillCard, 'drill-card', withBridge({ pins: { ...pins, hole: 5.5 } }));
    expect(proseOn(wide)).toContain('the pin would be loose');
  });
});

describe('the slot card', () => {
  it('tells front edge to both walls, and the fence for cutter and base', async () => {
    for (const [cutter, passes] of [
      [3.175, { front: SLOT.onePass }],
      [2, { front: SLOT.frontPass, back: SLOT.backPass }],
    ] as const) {
      const card = await partOf(slotCard, 'slot-card', withBridge({ cutting: { cutter, base: 45 } }));
      for (const [place, figures] of Object.entries(SLOT.walls)) expect(cellsOf(card, 'walls', place)).toEqual(figures);
      for (const [wall, figures] of Object.entries(passes)) expect(cellsOf(card, 'fence', wall)).toEqual(figures);
      expect(proseOn(card)).toContain('76.20 long over all · 3.18 wide · 6.50 deep');
      expect(proseOn(card)).toContain('the bass end lies 3.4 mm farther back');
    }
  });

  it('shows the bridge at true size for either hand, and no fence without a cutter', async () => {
    for (const hand of ['right', 'left'] as const) {
      const card = await partOf(slotCard, 'slot-drawing', withBridge({}, hand));
      const footprint = boxIn(card, 'footprint');
      expect(footprint.maxX - footprint.minX).toBeCloseTo(152.4, 6);
      const treble = middleOf(boxIn(card, 'cut-treble-line')).x - middleOf(footprint).x;
      expect(treble).toBeCloseTo(hand === 'right' ? 38.063012 : -38.063012, 5);
      const told = await partOf(slotCard, 'slot-card', withBridge({}, hand));
      expect(proseOn(told)).toContain('No cutter and base were entered');
    }
    const near = await partOf(slotCard, 'slot-drawing', withBridge({ cutting: { cutter: 3.175, base: 45 } }));
    // 36.054689 ahead of the front edge on the centreline.
    expect(boxIn(near, 'footprint').minY - middleOf(boxIn(near, 'fence-front')).y).toBeCloseTo(36.054689, 5);
    const far = await partOf(slotCard, 'slot-drawing', withBridge({ cutting: { cutter: 3.175, base: 90 } }));
    expect(proseOn(far)).toContain('farther ahead than this drawing reaches');
    const wide = await contextOf(withBridge({ cutting: { cutter: 4, base: 45 } }));
    expect(codesOf(slotCard.make(wide))).toEqual(['cutting.wide']);
  });
});

describe('the height card', () => {
  it('tells every string over frets and bridge, and the whole saddle', async () => {
    const card = await partOf(heightCard, 'height-card', steelWith({ height: { straightedge: 1 } }));
    expect(cellsOf(card, 'strings', '1').slice(0, 3)).toEqual(HEIGHTS.first);
    expect(cellsOf(card, 'strings', '6').slice(0, 3)).toEqual(HEIGHTS.last);
    expect(proseOn(card)).toContain('1.0 mm above the top of the bridge (as read)');
  });

  it('decides nothing until the straightedge is read', async () => {
    const card = await partOf(heightCard, 'height-card', steelProject);
    expect(proseOn(card)).toContain('READ THE STRAIGHTEDGE FIRST');
    expect(proseOn(card)).not.toContain('GO:');
  });
});

describe('saddle blank and sole', () => {
  it('draw the saddle as long as its slot less the play', async () => {
    const project = { ...steelWith({ height: { straightedge: 1 } }), limits: { saddlePlay: 0.4 } };
    const part = await partOf(saddleBlankSheet, 'saddle-blank', project);
    const blank = boxIn(part, 'blank');
    expect(blank.maxX - blank.minX).toBeCloseTo(75.8, 9);
    expect(proseOn(part)).not.toContain('NOT READ');
    expect(proseOn(await partOf(saddleBlankSheet, 'saddle-blank', steelProject))).toContain('NOT READ');
  });

  it('give a card whose foot is the dome, for either hand', async () => {
    for (const hand of ['right', 'left'] as const) {
      const card = await partOf(soleProfile, 'sole-card', withBridge({ sole: SOLE }, hand));
      const { path } = itemOf(card, 'card') as PathItem;
      const box = boxIn(card, 'card');
      expect(box.maxX - box.minX).toBeCloseTo(2 * SOLE_CARD.half, 9);
      const foot = [path.start, ...path.segments.map(({ to }) => to)].filter(({ y }) => y > box.minY + 20);
      expect(Math.max(...foot.map(({ y }) => y)) - Math.min(...foot.map(({ y }) => y))).toBeCloseTo(SOLE_CARD.fall, 4);
      const side = middleOf(boxIn(card, 'treble')).x - middleOf(boxIn(card, 'bass')).x;
      expect(Math.sign(side)).toBe(hand === 'right' ? 1 : -1);
    }
    expect(codesOf(soleProfile.make(await contextOf(steelProject)))).toEqual(['sheet.noSole']);
  });
});

describe('every gauge and card', () => {
  const KINDS = [gaugeEnds, octaveStick, drillCard, slotCard, heightCard, spacingRule, saddleBlankSheet, soleProfile];

  it('fits A4 and Letter laid on their side, so that wide and tall parts go into one file', async () => {
    for (const { make } of INSTRUMENTS) {
      const project = make('p', '2026-01-01T00:00:00Z');
      for (const style of [MM, INCH]) {
        const cutting = { cutter: 2, base: 50 };
        const context = await contextOf({ ...project, bridge: { ...project.bridge, cutting } }, style);
        for (const kind of KINDS) {
          const parts = kind.make(context);
          // A4 297 − 30 by 210 − 57, Letter 279.4 − 30 by 215.9 − 57: margins, strips, head and name taken off.
          for (const { id, width, height } of parts.ok ? parts.value : []) {
            expect(width, id).toBeLessThanOrEqual(249.4);
            expect(height, id).toBeLessThanOrEqual(153);
          }
        }
      }
    }
  });

  it('keeps its words apart', async () => {
    for (const hand of ['right', 'left'] as const)
      for (const style of [MM, INCH]) {
        const context = await contextOf(withBridge({ sole: SOLE, cutting: { cutter: 2, base: 45 } }, hand), style);
        for (const part of KINDS.flatMap((kind) => answerOf(kind.make(context)))) {
          const texts = part.items.filter((item) => item.kind === 'text');
          for (const [index, one] of texts.entries())
            for (const other of texts.slice(index + 1))
              expect(overlap(itemBox(one), itemBox(other)), `${one.id} on ${other.id}`).toBeLessThanOrEqual(0.05);
        }
      }
  });

  it('lies within its room, with no id twice, no small print and no fine line, in both units and hands', async () => {
    for (const hand of ['right', 'left'] as const)
      for (const style of [MM, INCH]) {
        const project = withBridge({ sole: SOLE, cutting: { cutter: 2, base: 45 } }, hand);
        const context = await contextOf(project, style);
        for (const part of KINDS.flatMap((kind) => answerOf(kind.make(context)))) {
          expect(new Set(part.items.map(({ id }) => id)).size, part.id).toBe(part.items.length);
          expect(proseOn(part), part.id).toContain(`${hand} hand`);
          for (const item of part.items) {
            const box = itemBox(item);
            expect(
              Math.min(box.minX, box.minY, part.width - box.maxX, part.height - box.maxY),
              item.id,
            ).toBeGreaterThanOrEqual(-1e-9);
            if (item.kind === 'text') expect(item.height, item.id).toBeGreaterThanOrEqual(2.9);
            else expect(LINE_STYLES[item.role].width, item.id).toBeGreaterThanOrEqual(0.18);
          }
        }
      }
  });
});
