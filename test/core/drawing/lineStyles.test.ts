import { describe, expect, it } from 'vitest';
import { isBold, LINE_STYLES } from '../../../src/core/drawing/lineStyles';
import { TEXT_HEIGHT } from '../../../src/core/drawing/textHeights';

const WORDS = ['label', 'note', 'key', 'heading'];
const lines = Object.entries(LINE_STYLES).filter(([role]) => !WORDS.includes(role));

describe('line styles', () => {
  // ISO 128-20, from memory: 0.13, 0.18, 0.25, 0.35, 0.5, 0.7 mm and on; a plain printer may lose the thinnest.
  it('take their widths from the standard series, none under 0.18 mm', () => {
    for (const [, { width }] of lines) expect([0.18, 0.25, 0.35, 0.5, 0.7]).toContain(width);
  });

  it('give each dash pattern one meaning', () => {
    const dashed = lines.filter(([, { dash }]) => dash.length > 0).map(([role, { dash }]) => [dash.join(' '), role]);
    expect(new Set(dashed.map(([pattern]) => pattern)).size).toBe(dashed.length);
    expect(dashed.map(([, role]) => role).sort()).toEqual([
      'beneath',
      'board-edge',
      'centreline',
      'finish-line',
      'former',
      'plot-reach',
      'scissors',
    ]);
  });

  // ISO 128-20, from memory: type 08 is a long dash, a gap, a short dash, a gap.
  it('draw the line of the finish long-dash-short-dash', () => {
    const [long = 0, gap = 0, short = 0, again = 0, ...rest] = LINE_STYLES['finish-line'].dash;
    expect(rest).toEqual([]);
    expect(again).toBe(gap);
    expect(long).toBeGreaterThan(short);
    expect(short).toBeGreaterThan(gap);
  });

  // ISO 128-20, from memory: type 04 is dash, dot; type 05 dash, dot, dot; type 07 dots; each with a gap after it.
  it('draw centrelines long-dash-dot, board edges long-dash-double-dot, cuts dotted', () => {
    expect(LINE_STYLES.centreline.dash).toHaveLength(4);
    expect(LINE_STYLES['board-edge'].dash).toHaveLength(6);
    expect(LINE_STYLES.scissors.dash).toHaveLength(2);
    for (const role of ['centreline', 'board-edge'] as const) {
      const [long = 0, ...rest] = LINE_STYLES[role].dash;
      for (const each of rest) expect(long).toBeGreaterThan(4 * each);
    }
  });

  it('draw the cut edge wide and unbroken, the square line boldest', () => {
    expect(LINE_STYLES.outline.dash).toEqual([]);
    for (const [role, { width }] of lines)
      if (role !== 'square-line') expect(width).toBeLessThan(LINE_STYLES['square-line'].width);
  });

  it('set key figures and headings bold', () => {
    expect(WORDS.filter((role) => isBold(role as keyof typeof LINE_STYLES))).toEqual(['key', 'heading']);
  });

  // The smallest print that makers read at the bench, and figures read at arm's length: this project's own rule.
  it('print no words under 2.9 mm, key figures at 4.6', () => {
    expect(Math.min(...Object.values(TEXT_HEIGHT))).toBe(2.9);
    expect(TEXT_HEIGHT.key).toBe(4.6);
  });
});
