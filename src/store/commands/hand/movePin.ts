import { fieldAt } from '../../../core/document/fieldAt';
import type { Project } from '../../../core/document/types';
import type { Point } from '../../../core/geom/types';
import { fail, ok, type Result } from '../../../core/result';
import { setField } from '../setField';

const PIN = /^pin (\d+)$/;

/** Which pin a part is, counted from 1 at the treble; null when it is none. */
export const pinOfPart = (part: string): number | null => {
  const number = PIN.exec(part)?.[1];
  return number === undefined ? null : Number(number);
};

const grown = (project: Project, path: string, by: number, now: number): Result<Project> =>
  by === 0 ? ok(project) : setField(project, { field: fieldAt(project, path), value: now + by });

/**
 * A pin moved by hand: its row goes along the centreline with it; an outer pin sets how far the row spreads, its fellow
 * at the other end the same way out. Codes: pin.none, pin.inner (across, at an inner pin), else those of setField.
 */
export const movePin = (project: Project, number: number, by: Point): Result<Project> => {
  const { pins } = project.bridge;
  const count = project.strings.length;
  if (pins === null || number < 1 || number > count) return fail('bridge.pins', 'pin.none', 'There is no such pin.');
  const outer = number === 1 ? 1 : number === count ? -1 : 0;
  if (outer === 0 && by.y === 0)
    return fail('bridge.pins', 'pin.inner', 'Inner pins are spaced between the outer ones. Move an outer pin across.');
  const moved = grown(project, 'bridge.pins.from', by.y, pins.from);
  return moved.ok ? grown(moved.value, 'bridge.pins.spread', 2 * outer * by.x, pins.spread) : moved;
};
