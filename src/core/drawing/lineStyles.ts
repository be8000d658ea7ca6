import type { Role } from './types';

/** How a role is drawn. width mm; dash: lengths of dash and gap in mm, [] continuous; fill: grey of a filled area or null. */
export interface LineStyle {
  readonly width: number;
  readonly dash: readonly number[];
  readonly fill: number | null;
}

const CONTINUOUS: readonly number[] = [];
/** Long-dash-dot, ISO 128 type 04.1: centrelines. */
const LONG_DASH_DOT = [7, 1.2, 0.8, 1.2];
/** Long-dash-double-dot, ISO 128 type 05.1: outlines of adjacent parts, here the edges of board, soundhole and cutaway. */
const LONG_DASH_DOUBLE_DOT = [9, 1, 0.8, 1, 0.8, 1];
/** Long-dash-short-dash, ISO 128 type 08: here how far the finish is cleared. */
const LONG_DASH_SHORT_DASH = [6, 1.2, 2.4, 1.2];
/** Dotted, ISO 128 type 07: here where the paper is cut. */
const DOTTED = [0.6, 1.4];
/** Dashed, ISO 128 type 02.1: hidden outlines, here what lies beneath the top. */
const DASHED = [3, 0.75];
/** Dashed-double-dotted, ISO 128 type 12: here the bridge that was there before. */
const DASHED_DOTTED = [3, 0.75, 0.4, 0.75, 0.4, 0.75];
/** Dashed, widely spaced, ISO 128 type 03: here how far a crown can be shaped. */
const DASHED_SPACED = [2.4, 1.8];

/**
 * One line type and weight a role. Line types after ISO 128; no line under 0.18 mm so that a plain printer keeps it.
 * Text roles carry the weight of their strokes only for completeness: a text is filled, never stroked.
 */
export const LINE_STYLES: Readonly<Record<Role, LineStyle>> = {
  outline: { width: 0.35, dash: CONTINUOUS, fill: null },
  slot: { width: 0.25, dash: CONTINUOUS, fill: null },
  hole: { width: 0.25, dash: CONTINUOUS, fill: null },
  centreline: { width: 0.18, dash: LONG_DASH_DOT, fill: null },
  'board-edge': { width: 0.18, dash: LONG_DASH_DOUBLE_DOT, fill: null },
  'string-line': { width: 0.18, dash: CONTINUOUS, fill: null },
  'square-line': { width: 0.7, dash: CONTINUOUS, fill: null },
  'octave-line': { width: 0.18, dash: CONTINUOUS, fill: null },
  'finish-line': { width: 0.25, dash: LONG_DASH_SHORT_DASH, fill: null },
  beneath: { width: 0.25, dash: DASHED, fill: null },
  former: { width: 0.25, dash: DASHED_DOTTED, fill: null },
  dimension: { width: 0.18, dash: CONTINUOUS, fill: null },
  mark: { width: 0.5, dash: CONTINUOUS, fill: null },
  window: { width: 0.18, dash: CONTINUOUS, fill: 0.93 },
  cross: { width: 0.18, dash: CONTINUOUS, fill: null },
  'rule-line': { width: 0.25, dash: CONTINUOUS, fill: null },
  frame: { width: 0.35, dash: CONTINUOUS, fill: null },
  scissors: { width: 0.25, dash: DOTTED, fill: null },
  'plot-axis': { width: 0.18, dash: CONTINUOUS, fill: null },
  'plot-line': { width: 0.5, dash: CONTINUOUS, fill: null },
  'plot-reach': { width: 0.25, dash: DASHED_SPACED, fill: null },
  'plot-mark': { width: 0.18, dash: CONTINUOUS, fill: 0 },
  'plot-model': { width: 0.25, dash: CONTINUOUS, fill: null },
  'plot-bar': { width: 0.18, dash: CONTINUOUS, fill: 0.75 },
  label: { width: 0, dash: CONTINUOUS, fill: null },
  note: { width: 0, dash: CONTINUOUS, fill: null },
  key: { width: 0, dash: CONTINUOUS, fill: null },
  heading: { width: 0, dash: CONTINUOUS, fill: null },
};

/** Roles of text that are set in the bold cut of the font. */
export const isBold = (role: Role): boolean => role === 'key' || role === 'heading';
