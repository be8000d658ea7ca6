import type { TrebleBass } from '../document/types';
import { type Issue, issue } from '../result';
import type { AuditPins, BridgeAuditArguments } from './types';

const above0 = (value: number): boolean => value > 0 && Number.isFinite(value);
const from0 = (value: number): boolean => value >= 0 && Number.isFinite(value);
const both = (sides: TrebleBass, good: (value: number) => boolean): boolean => good(sides.treble) && good(sides.bass);

const soundPins = ({ spread, spacing, hole, fromSlot, toBack }: AuditPins): boolean =>
  above0(spread) && above0(spacing) && above0(hole) && both(fromSlot, above0) && above0(toBack);

/** Everything that keeps an audit from being made; empty when nothing does. Codes: as bridgeAudit. */
export const auditProblems = (args: BridgeAuditArguments): readonly Issue[] => {
  const { scaleLength, nutOffset, strings, saddle, slotWidth, pins, ahead, behind, action, limits } = args;
  const found: Issue[] = [];
  const expect = (good: boolean, path: string, code: string, message: string): void => {
    if (!good) found.push(issue(path, code, message));
  };
  expect(above0(scaleLength), 'scaleLength', 'audit.scale', 'Expected a scale length above 0.');
  expect(Math.abs(nutOffset) < scaleLength / 20, 'nutOffset', 'audit.nutOffset', 'Expected a small nut offset in mm.');
  const last = strings.length - 1;
  expect(strings.length >= 2, 'strings', 'audit.strings', 'Expected at least the two outer strings.');
  for (const [index, { x, wanted, distance, cents }] of strings.entries()) {
    const path = `strings.${index}`;
    const before = strings[index - 1]?.x ?? Number.POSITIVE_INFINITY;
    expect(
      Number.isFinite(x) && x < before,
      `${path}.x`,
      'audit.place',
      'Expected places from the treble to the bass.',
    );
    expect(
      Math.abs(wanted) < scaleLength / 10,
      `${path}.wanted`,
      'audit.wanted',
      'Expected the compensation wanted, a small length in mm.',
    );
    expect(
      distance === null ? index > 0 && index < last : above0(distance),
      `${path}.distance`,
      'audit.distance',
      'Expected a reading above 0 to the break point; both outer strings need one.',
    );
    expect(cents === null || Math.abs(cents) <= 100, `${path}.cents`, 'audit.cents', 'Expected at most 100 cents.');
  }
  const { thickness, crown } = saddle;
  expect(
    thickness > 2 * limits.land.value && Number.isFinite(thickness),
    'saddle.thickness',
    'audit.saddle',
    'Expected a saddle thicker than the land kept on both sides.',
  );
  expect(
    both(crown, (at) => at >= 0 && at <= thickness),
    'saddle.crown',
    'audit.crown',
    'Expected the break point on the saddle: from 0 at its front face to its thickness.',
  );
  expect(above0(slotWidth), 'slotWidth', 'audit.slot', 'Expected a slot width above 0.');
  expect(pins === null || soundPins(pins), 'pins', 'audit.pins', 'Expected lengths above 0 for the pins.');
  expect(ahead === null || both(ahead, from0), 'ahead', 'audit.room', 'Expected 0 or more ahead of the slot.');
  expect(behind === null || both(behind, from0), 'behind', 'audit.room', 'Expected 0 or more behind the slot.');
  expect(
    action === null || (both(action.present, from0) && both(action.wanted, from0)),
    'action',
    'audit.action',
    'Expected actions of 0 or more.',
  );
  for (const [name, { value }] of Object.entries(limits))
    expect(from0(value), `limits.${name}`, 'audit.limits', 'Expected a limit of 0 or more.');
  return found;
};
