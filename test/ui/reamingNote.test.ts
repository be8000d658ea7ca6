import { describe, expect, it } from 'vitest';
import { degreesOfRatio } from '../../src/ui/draw/degreesOfRatio';
import { reamingNote } from '../../src/ui/draw/reamingNote';
import { RATIOS } from '../reference/drills';

const pins = {
  from: 9.525,
  spread: 54,
  row: 'parallel',
  hole: 4.7625,
  stagger: 0,
  taper: 3,
  underHead: 5.4,
  rise: 0,
  ramp: null,
} as const;

describe('reamingNote', () => {
  // 0.6375 · 19.09423 = 12.17 mm; 0.1 · 19.09423 = 1.91 mm.
  it('tells the mouth, the depth and what a tenth costs', () => {
    expect(reamingNote(pins, 'mm')).toBe(
      'Ream until the mouth of the hole reads 5.40 mm: the reamer goes 12.2 mm deeper from where it first touches the rim of the pilot hole. 0.1 mm on the diameter is 1.9 mm of depth at 3° (1:19.1).',
    );
  });

  // 0.5375 · 11.45188 = 6.155 mm; 0.1145 mm for a hundredth.
  it('follows the reamer and the pilot hole', () => {
    const other = reamingNote({ ...pins, taper: 5, hole: 4.8625 }, 'mm');
    expect(other).toContain('6.2 mm deeper');
    expect(other).toContain('0.1 mm on the diameter is 1.1 mm of depth at 5° (1:11.5)');
  });

  // 5.4 / 25.4 = 0.2126 in; 12.17257 / 25.4 = 0.4792 in; 0.005 · 19.09423 = 0.0955 in.
  it('speaks inches', () => {
    const inches = reamingNote(pins, 'in');
    expect(inches).toContain('reads 0.213″: the reamer goes 0.479″ deeper');
    expect(inches).toContain('0.005″ on the diameter is 0.095″ of depth at 3° (1:19.1)');
  });

  it.each([5.4, 5.5])('says that a pilot hole of %d mm leaves nothing to ream', (hole) => {
    const text = reamingNote({ ...pins, hole }, 'mm');
    expect(text).toContain(`A pilot hole of ${hole.toFixed(2)} mm is no smaller than the pin under its head, 5.40 mm`);
    expect(text).toContain('Drill a smaller pilot hole.');
  });
});

describe('degreesOfRatio', () => {
  it.each(RATIOS)('reads 1:%d as %d°', (ratio, angle) => {
    for (const text of [`1:${ratio}`, ` 1 : ${ratio} `, `1 in ${ratio}`, `1:${String(ratio).replace('.', ',')}`])
      expect(Number(degreesOfRatio(text))).toBeCloseTo(angle, 5);
  });

  it.each(['3', '2,5', '', '1:', '1:0', '1:x', '2:40', '1:20 mm', '-1:20', '11:20'])('leaves "%s" as it is', (text) => {
    expect(degreesOfRatio(text)).toBe(text);
  });
});
