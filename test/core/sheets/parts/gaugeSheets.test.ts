import { describe, expect, it } from 'vitest';
import type { Hand } from '../../../../src/core/document/types';
import { gaugeEnds } from '../../../../src/core/sheets/parts/gaugeEnds';
import { octaveStick } from '../../../../src/core/sheets/parts/octaveStick';
import { spacingRule } from '../../../../src/core/sheets/parts/spacingRule';
import type { SheetKind } from '../../../../src/core/sheets/parts/types';
import { GAUGE, SPACING, STICK } from '../../../reference/cards';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { boxIn, contextOf, INCH, middleOf, partNamed, proseOn } from './partCase';
import { cellsOf, textOf } from './readCard';

const partsOf = async (kind: SheetKind, hand: Hand = 'right') =>
  answerOf(kind.make(await contextOf(steelWith({ instrument: { hand } }))));

const PLACES = ['treble', 'centre', 'bass'] as const;

describe('the placing gauge', () => {
  it('has its witness lines at true size from the square line, for either hand', async () => {
    for (const hand of ['right', 'left'] as const) {
      const end = partNamed(await partsOf(gaugeEnds, hand), 'gauge-saddle');
      const line = boxIn(end, 'square-line');
      const middle = middleOf(line).x;
      expect(line.maxX - middle).toBeCloseTo(GAUGE.pieceHalf, 5);
      for (const place of PLACES) {
        const side = { treble: 27, centre: 0, bass: -27 }[place] * (hand === 'right' ? 1 : -1);
        const front = boxIn(end, `front-${place}`);
        expect(front.minY - line.minY).toBeCloseTo(GAUGE.slotFront[place], 5);
        expect(middleOf(front).x - middle).toBeCloseTo(side, 6);
        expect(boxIn(end, `break-${place}`).minY - line.minY).toBeCloseTo(GAUGE.breakPoint[place], 5);
      }
      expect(cellsOf(end, 'lengths', 'front')).toEqual(hand === 'right' ? GAUGE.rightTable : GAUGE.leftTable);
      const words = proseOn(end);
      for (const said of ['THIS SIDE UP', 'NUT SIDE', 'TREBLE', 'BASS', `${hand} hand`, 'square line 620.0 mm'])
        expect(words).toContain(said);
      expect(words).toMatch(/Paper carries no length/);
    }
  });

  it('keeps both ends short: no print of it carries the length', async () => {
    for (const { height, whole } of await partsOf(gaugeEnds)) {
      expect(whole).toBe(true);
      expect(height).toBeLessThan(150);
    }
  });

  it('names its datum, and butts behind a zero fret', async () => {
    const front = partNamed(await partsOf(gaugeEnds), 'gauge-nut');
    expect(boxIn(front, 'piece').minY).toBeCloseTo(boxIn(front, 'datum').minY, 9);
    expect(boxIn(front, 'piece').maxX - boxIn(front, 'piece').minX).toBeCloseTo(54, 9);
    expect(proseOn(front)).toContain('measured from the front face of the nut');
    const zero = steelWith({ instrument: { nut: { datum: 'zero-fret', offset: 0, face: 4 } } });
    const crown = partNamed(answerOf(gaugeEnds.make(await contextOf(zero))), 'gauge-nut');
    expect(boxIn(crown, 'datum').minY - boxIn(crown, 'piece').minY).toBeCloseTo(4, 9);
    expect(proseOn(crown)).toContain('4.0 mm behind the crown of the zero fret');
  });

  it('says in inches where the square line stands', async () => {
    const end = partNamed(answerOf(gaugeEnds.make(await contextOf(steelProject, INCH))), 'gauge-saddle');
    expect(proseOn(end)).toContain('square line 24 1/2″');
  });

  it('is none for a bridge that cannot be computed', async () => {
    const short = steelWith({ bridge: { slot: { ...steelProject.bridge.slot, length: 2 } } });
    for (const kind of [gaugeEnds, spacingRule])
      expect(codesOf(kind.make(await contextOf(short)))).toContain('slot.short');
  });
});

describe('the octave stick', () => {
  it('has octave line and break points at true size, their lengths as numbers', async () => {
    const far = partNamed(await partsOf(octaveStick), 'stick-far');
    const octave = boxIn(far, 'octave').minY;
    expect(boxIn(far, 'break-treble').minY - octave).toBeCloseTo(STICK.breakTreble.beyond, 6);
    expect(boxIn(far, 'break-bass').minY - octave).toBeCloseTo(STICK.breakBass.beyond, 6);
    expect(textOf(far, 'octave-figure')).toBe(STICK.octave);
    expect(textOf(far, 'break-treble-figure')).toBe(STICK.breakTreble.figure);
    expect(textOf(far, 'break-bass-figure')).toBe(STICK.breakBass.figure);
    expect(far.items.some(({ id }) => id === 'stick-far-twelfth')).toBe(false);
  });

  it('marks the fret apart where the nut was moved', async () => {
    const moved = steelWith({ instrument: { nut: { datum: 'front', offset: -0.5, face: 0 } } });
    const far = partNamed(answerOf(octaveStick.make(await contextOf(moved))), 'stick-far');
    expect(textOf(far, 'twelfth-figure')).toBe(STICK.movedTwelfth);
    expect(boxIn(far, 'octave').minY - boxIn(far, 'twelfth').minY).toBeCloseTo(0.5, 9);
    expect(textOf(far, 'octave-figure')).toBe(STICK.octave);
    expect(textOf(far, 'break-treble-figure')).toBe(STICK.breakTreble.figure);
  });
});

describe('the spacing rule', () => {
  it('has centres and sides of the strings at true size, for either hand', async () => {
    for (const hand of ['right', 'left'] as const) {
      const part = partNamed(await partsOf(spacingRule, hand), 'spacing');
      const side = hand === 'right' ? 1 : -1;
      const nut = boxIn(part, 'nut-piece');
      const middle = middleOf(nut).x;
      expect(nut.maxX - nut.minX).toBeCloseTo(46, 9);
      expect(boxIn(part, 'nut-1-centre').minX - middle).toBeCloseTo(side * SPACING.nutTreble, 6);
      expect(boxIn(part, 'nut-6-centre').minX - middle).toBeCloseTo(side * SPACING.nutBass, 6);
      const edges = ['treble', 'bass'].map((edge) => boxIn(part, `nut-1-${edge}-edge`).minX);
      expect(((edges[0] ?? 0) - (edges[1] ?? 0)) * side).toBeCloseTo(0.3048, 9);
      const span = boxIn(part, 'saddle-1-centre').minX - boxIn(part, 'saddle-6-centre').minX;
      expect(span * side).toBeCloseTo(SPACING.saddleSpan, 5);
    }
  });

  it('tells the same places as figures', async () => {
    const part = partNamed(await partsOf(spacingRule), 'spacing');
    const rows = [1, 2, 3, 4, 5, 6].map((row) => cellsOf(part, 'places', `${row}`));
    expect(rows.map((row) => row[1])).toEqual(SPACING.fromEnd);
    expect(rows.map((row) => row[2])).toEqual(SPACING.fromFirst);
  });
});
