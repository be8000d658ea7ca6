import type { Role } from '../core/drawing/types';

interface Palette {
  /** What a part is drawn on: the bridge's own face. */
  readonly face: string;
  readonly window: string;
  readonly ink: string;
  readonly soft: string;
  readonly teal: string;
  readonly amber: string;
  readonly blue: string;
  /** Where something is to be looked at: no chosen part has this colour. */
  readonly plum: string;
  /** A chosen part: its lines, and what fills it. */
  readonly chosen: string;
  readonly chosenFill: string;
}

const LIGHT: Palette = {
  face: '#fffdf7',
  window: '#ece5d5',
  ink: '#1d1914',
  soft: '#6a6154',
  teal: '#0a6b6b',
  amber: '#8a5300',
  blue: '#2f5680',
  plum: '#a0105a',
  chosen: '#b3261e',
  chosenFill: '#f6d9d4',
};

const DARK: Palette = {
  face: '#2a2621',
  window: '#38322a',
  ink: '#f1eadc',
  soft: '#b3a894',
  teal: '#5cc4bd',
  amber: '#e0ab57',
  blue: '#8fb8e6',
  plum: '#ff86b8',
  chosen: '#ff9d8a',
  chosenFill: '#552f28',
};

/** Which colour a role takes; its line type and label tell it apart before the colour does. */
const INK: Readonly<Record<Role, keyof Palette>> = {
  outline: 'ink',
  slot: 'ink',
  hole: 'ink',
  centreline: 'amber',
  'board-edge': 'soft',
  'string-line': 'blue',
  'square-line': 'teal',
  'octave-line': 'blue',
  'finish-line': 'teal',
  beneath: 'soft',
  former: 'amber',
  dimension: 'blue',
  mark: 'plum',
  window: 'soft',
  cross: 'blue',
  'rule-line': 'ink',
  frame: 'ink',
  scissors: 'soft',
  'plot-axis': 'soft',
  'plot-line': 'teal',
  'plot-reach': 'teal',
  'plot-mark': 'ink',
  'plot-model': 'ink',
  'plot-bar': 'soft',
  label: 'ink',
  note: 'blue',
  key: 'teal',
  heading: 'ink',
};

const FILL: Partial<Record<Role, keyof Palette>> = { outline: 'face', slot: 'face', hole: 'face', window: 'window' };

/** Whether a line of this role is filled within. */
export const isFilled = (role: Role): boolean => FILL[role] !== undefined;

/** The colours of the drawing on screen. */
export interface Theme {
  line(role: Role): string;
  /** null: not filled. */
  fill(role: Role): string | null;
  readonly chosen: string;
  readonly chosenFill: string;
}

/** The colours for a light or a dark screen; all lines and words pass WCAG 2.2 contrast on the sheet behind them. */
export const themeOf = (scheme: 'light' | 'dark'): Theme => {
  const palette = scheme === 'dark' ? DARK : LIGHT;
  return {
    line: (role) => palette[INK[role]],
    fill: (role) => {
      const name = FILL[role];
      return name === undefined ? null : palette[name];
    },
    chosen: palette.chosen,
    chosenFill: palette.chosenFill,
  };
};
