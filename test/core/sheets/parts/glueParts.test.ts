import { describe, expect, it } from 'vitest';
import { bodyFromSet } from '../../../../src/core/body/bodyFromSet';
import { BRACING_SETS } from '../../../../src/core/body/bracingSets';
import { createDerive } from '../../../../src/core/derive/createDerive';
import type { Hand, Project } from '../../../../src/core/document/types';
import { LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { usualSole } from '../../../../src/core/height/sole/usualSole';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { clampingCauls } from '../../../../src/core/sheets/parts/clampingCauls';
import { finishMask } from '../../../../src/core/sheets/parts/finishMask';
import { insideCaul } from '../../../../src/core/sheets/parts/insideCaul';
import { windowSheet } from '../../../../src/core/sheets/parts/windowSheet';
import { bodyWith } from '../../body/bodyCase';
import { valueOf as answerOf } from '../../document/valueOf';
import { itemBox, overlap, textBox } from '../itemBox';
import { contextOf, INCH, MM } from './partCase';

const SHEETS = [windowSheet, finishMask, insideCaul, clampingCauls];

/** A kind of instrument with a sole, a rim and what lies beneath. */
const furnished = (project: Project, hand: Hand): Project => {
  const derived = createDerive()(project);
  const [board, bridge] = [answerOf(derived.board), answerOf(derived.bridge)];
  const set = BRACING_SETS[project.height.kind === 'classical' ? 1 : project.height.kind === 'ukulele' ? 2 : 0];
  if (set === undefined) throw new Error('There is no bracing.');
  return {
    ...project,
    instrument: { ...project.instrument, hand },
    body: bodyWith(bodyFromSet(set, board.octave, board.octave)),
    bridge: {
      ...project.bridge,
      rim: 0.8,
      sole: usualSole(project, pathBounds(bridge.footprint.outline).maxX),
    },
  };
};

const CASES = KINDS.flatMap(({ name, make }) =>
  (['right', 'left'] as const).flatMap((hand) =>
    [MM, INCH].map((style) => ({ name, hand, style, unit: style.unit, project: make('p', '2026-01-01T00:00:00Z') })),
  ),
);

describe.each(CASES)('the sheets around the glue of $name, $hand hand, $unit', ({ hand, style, project }) => {
  const all = async () => {
    const context = await contextOf(furnished(project, hand), style);
    return SHEETS.flatMap((kind) => answerOf(kind.make(context)));
  };

  it('lie within their own room, each id once, no words under 2.9 mm, no line under 0.18 mm', async () => {
    const parts = await all();
    expect(new Set(parts.map(({ id }) => id)).size).toBe(8);
    for (const { items, width, height } of parts) {
      expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
      for (const item of items) {
        const { minX, minY, maxX, maxY } = itemBox(item);
        expect(Math.min(minX, minY, width - maxX, height - maxY), item.id).toBeGreaterThan(0.4);
        if (item.kind === 'text') expect(item.height).toBeGreaterThanOrEqual(item.role === 'key' ? 4.6 : 2.9);
        else expect(LINE_STYLES[item.role].width).toBeGreaterThanOrEqual(0.18);
      }
    }
  });

  it('fit A4 and Letter, upright or on their side, with room for a title', async () => {
    // Upright Letter leaves 185.9 × 239.4 inside the strips for the long lines, on its side 249.4 × 185.9; A4 180 × 257 and 267 × 180.
    for (const { id, width, height } of await all())
      expect((width <= 180 && height <= 215) || (width <= 249 && height <= 150), `${id} ${width} ${height}`).toBe(true);
  });

  it('print no words over others', async () => {
    for (const { items } of await all()) {
      const texts = items.flatMap((item) => (item.kind === 'text' && item.text !== '' ? [item] : []));
      const boxes = texts.map((text) => ({ id: text.id, box: textBox(text, false) }));
      for (const [index, a] of boxes.entries())
        for (const b of boxes.slice(index + 1)) expect(overlap(a.box, b.box), `${a.id}, ${b.id}`).toBeLessThan(0.05);
    }
  });

  it('all tell the nut side or how they are seen, treble and bass, and the hand', async () => {
    for (const { id, items } of await all()) {
      const said = items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
      expect(said, id).toMatch(/NUT SIDE|Seen from the tail/);
      for (const words of ['BASS', 'TREBLE', `${hand} hand`]) expect(said, id).toContain(words);
    }
  });
});
