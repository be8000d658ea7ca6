import { LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Role } from '../../core/drawing/types';

/** A line type of a DXF. pattern: lengths in mm, + drawn, − gap. */
export interface DxfLineType {
  readonly name: string;
  readonly description: string;
  readonly pattern: readonly number[];
}

/** The line types of ISO 128-20 that the roles are drawn with, by their numbers there; all other roles are continuous. */
const ISO_TYPES: Partial<Readonly<Record<Role, readonly [number: string, name: string]>>> = {
  beneath: ['02', 'dashed'],
  'plot-reach': ['03', 'dashed spaced'],
  centreline: ['04', 'long-dashed dotted'],
  'board-edge': ['05', 'long-dashed double-dotted'],
  scissors: ['07', 'dotted'],
  'finish-line': ['08', 'long-dashed short-dashed'],
  former: ['12', 'dashed double-dotted'],
};

export const CONTINUOUS = 'CONTINUOUS';

/** The name of a role's line type. */
export const lineTypeOf = (role: Role): string => {
  const iso = ISO_TYPES[role];
  return iso === undefined ? CONTINUOUS : `ISO_128_${iso[0]}`;
};

/** Every line type but the continuous one, at the lengths of paper and screen. */
export const LINE_TYPES: readonly DxfLineType[] = Object.entries(ISO_TYPES).map(([role, [number, name]]) => ({
  name: `ISO_128_${number}`,
  description: `ISO 128 type ${number}, ${name}`,
  pattern: LINE_STYLES[role as Role].dash.map((length, index) => (index % 2 === 0 ? length : -length)),
}));
