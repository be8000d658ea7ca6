import { describe, expect, it } from 'vitest';
import type { AuditReason } from '../../src/core/audit/types';
import type { HeightChain, HeightReason } from '../../src/core/height/types';
import { auditReasonWords, recutWords, saddleChangeWords } from '../../src/ui/measure/auditWords';
import { heightReasonWords, heightVerdictWords } from '../../src/ui/measure/heightWords';

const show = (mm: number): string => `${mm.toFixed(1)} mm`;
const chain = (verdict: HeightChain['verdict'], thickness: HeightChain['thickness']): HeightChain => ({
  verdict,
  thickness,
  strings: [],
  proud: { least: 3, most: 4 },
  woodUnder: 3,
  blankNeeded: 10,
  pickup: { lift: 0, actionRise: 0 },
  reasons: [],
});
const height = (code: HeightReason['code'], value: number, limit: number): string =>
  heightReasonWords({ code, weight: 'wrong', value, limit, source: null }, show);
const audit = (code: AuditReason['code'], value: number, limit: number, string: number | null = null): string =>
  auditReasonWords({ code, string, value, limit, source: null }, ['E', 'B'], show);

describe('heightVerdictWords', () => {
  it('names the thickness that would do, or why another is no help', () => {
    expect(heightVerdictWords(chain('go', { least: 8, most: 9 }), 9, show)).toContain('Go:');
    expect(heightVerdictWords(chain('change-bridge', { least: 8.04, most: 8.96 }), 9.5, show)).toBe(
      'Change the bridge: one 8.0 mm to 9.0 mm thick at the slot would do.',
    );
    expect(heightVerdictWords(chain('change-bridge', { least: 8, most: 10 }), 9.5, show)).toContain('slot is too deep');
    expect(heightVerdictWords(chain('set-neck-first', null), 9.5, show)).toContain('Set the neck first');
  });
});

describe('heightReasonWords', () => {
  it('says below where the straightedge lies below, of the reading and of the limit alike', () => {
    expect(height('airspace-low', -5, -4)).toBe(
      'The straightedge lies 5.0 mm below the top of the bridge; the least is 4.0 mm below the top of the bridge. The neck points too low for it.',
    );
    expect(height('airspace-high', 2, 1.6)).toContain('2.0 mm over the bridge; the most is 1.6 mm over');
  });

  it('writes shares in per cent and angles in degrees', () => {
    expect(height('share-low', 0.45, 0.5)).toContain('Only 45 % of the highest saddle');
    expect(height('break-low', 6.94, 8)).toBe(
      'The strings bend 6.9° over the saddle; 8.0° is usual. Ramps behind it add to that.',
    );
  });
});

describe('auditReasonWords', () => {
  it('says sharp and flat, and the way that a slot moves', () => {
    expect(audit('cents-off', -7.94, 2, 0)).toBe(
      'String 1 (E) is 7.9 cents flat at the 12th fret; up to 2 no one would cut for.',
    );
    expect(audit('reach-short', 3, 2, 1)).toContain('string 2 (B) stays 3.0 cents sharp');
    expect(audit('cents-disagree', 6, 4, 0)).toContain('6.0 cents sharper than the rule says');
    expect(audit('shift-far', -5, 4)).toContain('move 5.0 mm toward the nut');
    expect(audit('pins-aside', -2, 1.5)).toContain('2.0 mm inside their strings');
  });
});

describe('recutWords', () => {
  it('tells the way of both ends, the turn and what becomes of the pins', () => {
    const plan = {
      line: { centre: 3, slope: -0.04 },
      shift: { treble: -0.5, centre: 0.5, bass: 1.5 },
      // One degree.
      turn: -Math.PI / 180,
      thicknessNeeded: 2.4,
      wallAhead: 5,
      wallBehind: 2,
      pins: 'redrill',
      pinMove: 1.2,
    } as const;
    expect(recutWords(plan, show)).toEqual([
      'The middle of the slot moves 0.5 mm toward the nut at string 1 and 1.5 mm away from the nut at the last string; it turns by 1.00°.',
      'Plug the pin holes and drill them 1.2 mm farther back.',
    ]);
  });
});

describe('saddleChangeWords', () => {
  it('says higher and lower', () => {
    expect(saddleChangeWords({ treble: 0.6, bass: -0.4 }, show)).toBe(
      'For the action wanted the saddle must be 0.6 mm higher at the treble and 0.4 mm lower at the bass.',
    );
  });
});
