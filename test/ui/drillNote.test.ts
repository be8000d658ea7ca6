import { describe, expect, it } from 'vitest';
import { drillNote as noteOf } from '../../src/ui/draw/drillNote';

/** The note with plain spaces; a drill and its figure stand on one line by spaces that do not break. */
const drillNote = (...given: Parameters<typeof noteOf>): string => noteOf(...given).replaceAll('\u00a0', ' ');

// Diameters as in test/reference/drills.ts; differences by hand.
describe('drillNote', () => {
  it.each([
    [4.7625, 'Nearest drills: 3/16 in (0.00), #12 (+0.04), 4.8 mm (+0.04)'],
    [1.5875, 'Nearest drills: 1/16 in (0.00), #52 (+0.03), 1.6 mm (+0.01)'], // 1.6129
    [5.4, 'Nearest drills: 7/32 in (+0.16), #3 (+0.01), 5.4 mm (0.00)'], // 5.55625, 5.4102
    [6.35, 'Nearest drills: 1/4 in (0.00), letter E (0.00), 6.3 mm (−0.05)'],
    [5, 'Nearest drills: 13/64 in (+0.16), #9 (−0.02), 5 mm (0.00)'],
    [12, 'Nearest drills: 15/32 in (−0.09), 12 mm (0.00)'], // 11.90625
  ])('%d mm in millimetres', (diameter, text) => expect(drillNote(diameter, 'mm')).toBe(text));

  // 0.189 − 0.1875 = 1.5 thousandths; 4.8 / 25.4 = 0.188976.
  it('tells thousandths of an inch to a maker in inches', () => {
    expect(drillNote(4.7625, 'in')).toBe('Nearest drills, thousandths: 3/16 in (0.0), #12 (+1.5), 4.8 mm (+1.5)');
    expect(drillNote(5, 'in')).toBe('Nearest drills, thousandths: 13/64 in (+6.3), #9 (−0.9), 5 mm (0.0)');
  });

  it('breaks lines between drills alone', () => {
    expect(noteOf(12, 'mm').split(' ')).toEqual([
      'Nearest',
      'drills:',
      '15/32\u00a0in\u00a0(−0.09),',
      '12\u00a0mm\u00a0(0.00)',
    ]);
  });

  it('names only families that have such a drill', () => {
    expect(drillNote(0.5, 'mm')).toBe('Nearest drills: 1/64 in (−0.10), #76 (+0.01), 0.5 mm (0.00)'); // 0.396875, 0.508
    expect(drillNote(10, 'mm')).toContain('letter X (+0.08)'); // 10.0838
    expect(drillNote(10, 'mm')).not.toContain('#');
  });
});
