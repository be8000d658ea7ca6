import { describe, expect, it } from 'vitest';
import { checkMessage } from '../../../src/core/checks/checkMessage';
import type { Mend } from '../../../src/core/checks/types';
import type { Project } from '../../../src/core/document/types';
import { mendDesign } from '../../../src/store/commands/mendDesign';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';
import { checkOf, checksOf } from './checksOf';
import { plainBridge as plain } from './plainBridge';

const toMm = (mm: number) => `${mm.toFixed(1)} mm`;

const mendOf = (project: Project, id: string): Mend => {
  const mend = checkOf(project, id).mend?.() ?? null;
  if (mend === null) throw new Error(`Nothing mends ${id}.`);
  return mend;
};
const words = ({ label, lengths }: Mend): string => checkMessage({ message: label, lengths }, toMm);

const points = { treble: { x: 94, y: 14 }, bass: { x: -94, y: 14 } };
const free = { site: 'free' as const, drill: 1.6, points, clearance: 0.5 };
const ties = { kind: 'tie-block' as const, from: 6, spread: 54, hole: 1.8, rise: 4.5 };

describe('a mend', () => {
  // Hand arithmetic on the plain bridge: slot 2.5 wide 6 behind the front edge of 28, limits 2 around the slot and 3 around pins.
  it.each<[string, string, Project, string]>([
    // 2 − 1 more.
    ['slot-front', 'moves the slot back', plain({ fromFront: 1 }, null), 'Front edge to slot 2.0 mm'],
    // 28 − 2.5 − 2 = 23.5.
    ['slot-back', 'moves the slot forward', plain({ fromFront: 24 }, null), 'Front edge to slot 23.5 mm'],
    // 190 − 2 · 2 = 186.
    ['slot-ends', 'shortens the slot', plain({ length: 188 }, null), 'Slot length 186.0 mm'],
    // Radius 2.5 and 3.
    ['pins-slot', 'moves the pins back', plain({}, { from: 4 }), 'Slot to pin row 5.5 mm'],
    // 28 − 8.5 − 2.5 − 3 = 14.
    ['pins-edge', 'moves the pins forward', plain({}, { from: 16 }), 'Slot to pin row 14.0 mm'],
    // Three gaps of 5 + 2; over 24.3 the wider ones are still within 1.5 of where they were asked for… by strings over 21.
    [
      'pins-apart',
      'spreads the pins',
      { ...plain({}, { spread: 18 }), limits: { pinAside: 20 } },
      'Pin spacing, outer 21.0 mm',
    ],
    // A locating pin of 3 in a slot of 2.5: the usual 1/16 in, 1.5875.
    [
      'locating-hidden',
      'takes the usual drill',
      plain({}, {}, { locating: { site: 'slot-ends', drill: 3, points: null, clearance: 0.5 } }),
      'Locating-pin hole 1.6 mm',
    ],
    ['locating-hidden', 'goes back into the slot', plain({}, {}, { locating: free }), 'Locating pins in the slot ends'],
    // Four fifths of 95 and halfway back.
    [
      'locating-edge',
      'goes to the middle of the wings',
      plain({}, {}, { locating: free }),
      'Locating pins in the middle of the wings',
    ],
    // Five gaps of 1.8 + 2 = 19.
    [
      'ties-apart',
      'spreads the string holes',
      { ...plain({}, null, { ties: { ...ties, spread: 15 } }, 6), limits: { pinAside: 30 } },
      'String hole spacing, outer 19.0 mm',
    ],
    [
      'ties-slot',
      'moves the string holes back',
      plain({}, null, { ties: { ...ties, from: 1 } }),
      'Slot to string holes 2.0 mm',
    ],
    // Half of the thickness 9.525.
    [
      'ties-wall',
      'puts the string holes in the middle',
      plain({}, null, { ties: { ...ties, rise: 1 } }),
      'String holes above the sole 4.8 mm',
    ],
    // Strings 54 apart at 647 and 39.4 at the nut (46 less 3 on each side and a string of 0.6): at the holes, 7.25 behind
    // the break points, 54 + 14.6 · 7.25 / 647 = 54.16.
    [
      'ties-strings',
      'follows the strings',
      plain({}, null, { ties: { ...ties, spread: 48 } }),
      'String hole spacing, outer 54.2 mm',
    ],
    // At the pins, 9.25 behind: 54 + 14.6 · 9.25 / 647 = 54.21.
    ['pins-strings', 'follows the strings', plain({}, { spread: 46 }), 'Pin spacing, outer 54.2 mm'],
    // Board at 647: 68.068 wide, less the margins of 3: 62.07.
    [
      'strings-board',
      'brings the strings over the board',
      (() => {
        const project = plain({}, null);
        return { ...project, instrument: { ...project.instrument, spread: { from: 'own', own: 68.1 } } };
      })(),
      'String spacing at saddle, outer 62.0 mm',
    ],
  ])('of %s %s', (id, _, project, expected) => {
    const before = checkOf(project, id);
    expect(before.verdict).not.toBe('good');
    const mend = mendOf(project, id);
    expect(words(mend)).toBe(expected);
    const after = answerOf(mendDesign(project, mend));
    expect(checkOf(after, id).verdict).toBe('good');
    // Nothing else is spoilt by it.
    const bad = (of: Project) => checksOf(of).flatMap(({ id: name, verdict }) => (verdict === 'good' ? [] : [name]));
    expect(bad(project)).toEqual(expect.arrayContaining([...bad(after)]));
  });

  // Twelve holes of 5.1, reamed to 5.1, over 55: pitch 5. Two rows 7.1 apart across: √(7.1² − 5²) = 5.0409, so 5.1.
  it('of twelve pins in one row sets them in two', () => {
    const twelve = {
      ...plain({ fromFront: 3 }, { spread: 55, hole: 5.1, underHead: 5.1, from: 6 }, {}, 12),
      limits: { pinAsideTwoRows: 9, pinAside: 9 },
    };
    const mend = mendOf(twelve, 'pins-apart');
    expect(words(mend)).toBe('Two pin rows, 5.1 mm apart');
    expect(mend.set).toEqual([{ path: 'bridge.pins.stagger', value: 5.1 }]);
    expect(checkOf(answerOf(mendDesign(twelve, mend)), 'pins-apart').verdict).toBe('good');
  });

  // The second row 5.1 behind 28 − 20 − 2.5 − 2.55 leaves too little at the back; the slot comes forward by what lacks.
  it('of twelve pins makes room behind the second row by moving the slot forward', () => {
    const twelve = {
      ...plain({ fromFront: 10 }, { spread: 55, hole: 5.1, underHead: 5.1, from: 6 }, {}, 12),
      limits: { pinAsideTwoRows: 9, pinAside: 9 },
    };
    const mend = mendOf(twelve, 'pins-apart');
    expect(words(mend)).toMatch(/^Two pin rows, 5\.1 mm apart, front edge to slot \d\.\d mm$/);
    const after = answerOf(mendDesign(twelve, mend));
    for (const id of ['pins-apart', 'pins-edge', 'slot-front']) expect(checkOf(after, id).verdict).toBe('good');
  });

  // By the strings in a slot of 3/32 in one mark lies beyond the land: a wider saddle takes them all.
  it('of the crown makes the slot wide enough', () => {
    const { slot } = steelProject.bridge;
    const project = steelWith({
      compensation: { by: 'strings' },
      bridge: { slot: { ...slot, width: 2 } },
    });
    const mend = mendOf(project, 'crown');
    expect(words(mend)).toMatch(/^Slot \d\.\d mm wide, its marks in the middle/);
    expect(checkOf(answerOf(mendDesign(project, mend)), 'crown').verdict).toBe('good');
  });

  it('of a rule with a minus takes the minus away', () => {
    const project = steelWith({ compensation: { rule: { treble: -2, bass: 3, reach: 'break-point', source: '' } } });
    const mend = mendOf(project, 'compensation-s1');
    expect(mend.set).toEqual([{ path: 'compensation.rule.treble', value: 2 }]);
    expect(checksOf(answerOf(mendDesign(project, mend))).some(({ id }) => id.startsWith('compensation-'))).toBe(false);
  });

  it('is not offered where nothing tried would serve, nor for what is good', () => {
    // A bridge of 28 cannot hold pins 3 from everything with a slot 24 behind its front edge, and 1 cannot be left of it.
    const hopeless = plain(
      { fromFront: 6 },
      { hole: 10, underHead: 12, from: 6 },
      { outline: { shape: 'tie-block', parameters: { length: 190, full: 18, block: 80, corner: 0 } } },
    );
    expect(checkOf(hopeless, 'pins-edge').verdict).toBe('wrong');
    expect(checkOf(hopeless, 'pins-edge').mend?.()).toBeNull();
    expect(checkOf(plain(), 'pins-edge').mend).toBeUndefined();
  });
});
