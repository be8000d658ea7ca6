import { describe, expect, it } from 'vitest';
import { AUDIT_LIMITS } from '../../../src/core/audit/auditLimits';
import { auditLimitsInUse } from '../../../src/core/audit/auditLimitsInUse';
import type { BridgeAudit } from '../../../src/core/audit/types';
import { createBridgeAtHand } from '../../../src/core/derive/createBridgeAtHand';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Audit, Project } from '../../../src/core/document/types';
import { CENTS_PER_MM_645 } from '../../reference/audit';
import { steelProject, steelWith } from '../document/steelProject';

const auditOfProject = (project: Project) => createBridgeAtHand().audit(project, createDerive()(project));

const auditWith = (audit: Partial<Audit>, more: Partial<Project> = {}): BridgeAudit => {
  const found = auditOfProject({ ...steelWith({ audit }), ...more });
  if (found === null || !found.ok) throw new Error('There is no audit.');
  return found.value;
};

describe('auditOf', () => {
  it.each([
    ['nothing', {}],
    ['the treble alone', { treble: 646.5 }],
    ['the bass alone', { bass: 649 }],
  ])('is silent with %s read', (_, audit) => {
    expect(auditOfProject(steelWith({ audit }))).toBeNull();
  });

  // Wanted 1.5875 and 3.96875 behind 645; read 0.5 too far back at the treble, 1 too near at the bass.
  const asRead = { treble: 647.0875, bass: 647.96875 };

  it('sets what is there against what is wanted, in mm and cents', () => {
    const { strings } = auditWith(asRead);
    const [treble, bass] = [strings[0], strings[5]];
    expect(strings).toHaveLength(6);
    expect(treble).toMatchObject({ present: expect.closeTo(2.0875, 9), travel: expect.closeTo(-0.5, 9) });
    expect(treble?.cents).toBeCloseTo(-0.5 * CENTS_PER_MM_645, 5);
    expect(bass).toMatchObject({ present: expect.closeTo(2.96875, 9), travel: expect.closeTo(1, 9) });
    expect(bass?.cents).toBeCloseTo(CENTS_PER_MM_645, 5);
    // Those between lie on the line through the outer ones: string 3, at 5.4, wants 2.54 and has 2.0875 + 0.4 · 0.88125.
    expect(strings[2]?.present).toBeCloseTo(2.44, 9);
    expect(strings[2]?.travel).toBeCloseTo(0.1, 9);
  });

  it('reads from the 12th fret alike', () => {
    const fromTwelfth = auditWith({ from: 'twelfth', treble: 324.5875, bass: 325.46875 });
    for (const [index, { present }] of auditWith(asRead).strings.entries())
      expect(fromTwelfth.strings[index]?.present).toBeCloseTo(present, 9);
  });

  it('asks for the shaping that the saddle allows, and leaves it by the maker’s own limit', () => {
    // The bass is off by 2.68 cents; the usual limit is 2. Crown 1.6 of 3.175: 1.275 behind it less the land would do.
    expect(auditWith(asRead).verdict).toBe('shape-saddle');
    expect(auditWith(asRead, { limits: { leaveCents: 3 } }).verdict).toBe('leave');
    // Land of 1.5 leaves no room: the slot must move.
    expect(auditWith(asRead, { limits: { land: 1.5 } }).verdict).toBe('recut-slot');
  });

  // Action 0.5 too high at the treble: lower the saddle by 0.5 · (645 + 2.0875) / 322.5 = 1.00324; right at the bass.
  it('turns the action as it is into a change of the saddle, once both were read', () => {
    expect(auditWith({ ...asRead, actionTreble: 2.4 }).saddleChange).toBeNull();
    const change = auditWith({ ...asRead, actionTreble: 2.4, actionBass: 2.5 }).saddleChange;
    expect(change?.treble).toBeCloseTo(-1.00324, 5);
    expect(change?.bass).toBeCloseTo(0, 9);
  });

  it('holds cents read at the outer strings against the rule', () => {
    const { strings } = auditWith({ ...asRead, centsTreble: 8 });
    // 8 read against −1.342: 9.342 apart, beyond the usual 4.
    expect(strings[0]?.reading).toMatchObject({ difference: expect.closeTo(9.342042, 5), agrees: false });
    expect(strings[5]?.reading).toBeNull();
  });

  it('asks about the pins once all three figures of them were read', () => {
    const pins = { pinSpread: 60, pinsFromSlot: 9.5, pinsToBack: 9 };
    expect(auditWith({ ...asRead, ...pins, pinsToBack: null }).recut.pins).toBeNull();
    const found = auditWith({ ...asRead, ...pins });
    expect(found.recut.pins).toBe('stay');
    // Strings 54 apart, pins 60: 3 outward on each side.
    expect(found.reasons.find(({ code }) => code === 'pins-aside')?.value).toBeCloseTo(3, 9);
  });
});

describe('auditLimitsInUse', () => {
  it('are the usual ones, but for the maker’s own', () => {
    expect(auditLimitsInUse({})).toEqual(AUDIT_LIMITS);
    const { land, ...rest } = auditLimitsInUse({ land: 0.5 });
    expect(land).toEqual({ value: 0.5, source: 'set by the maker' });
    const { land: usual, ...others } = AUDIT_LIMITS;
    expect(usual.value).toBe(0.3);
    expect(rest).toEqual(others);
  });

  it('pass over what is no limit of theirs', () => {
    expect(auditLimitsInUse({ proudMost: 4, nothing: 1 })).toEqual(AUDIT_LIMITS);
    expect(steelProject.limits).toEqual({});
  });
});
