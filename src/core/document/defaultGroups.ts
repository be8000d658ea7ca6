import type { Audit, Compensation, HeightGate, Project } from './types';

/** Groups that older files lack, as they stand when nothing was said about them. */
export const DEFAULT_FIT: Compensation['fit'] = {
  firstFret: 1,
  lastFret: 12,
  match: 'range',
  nut: 'stays',
  line: 'least-squares',
};

export const DEFAULT_HEIGHT: HeightGate = { kind: 'steel', straightedge: null, pickup: 0, run: 9.5 };

/** Glue to the very edge, and rosewood. */
export const DEFAULT_RIM = 0;
export const DEFAULT_DENSITY = 870;

/** Room for the caul over a locating pin; its source stands beside the field. */
export const DEFAULT_CLEARANCE = 0.5;

/** Reamer and pin; their source stands beside the fields. */
export const DEFAULT_TAPER = 3;
export const DEFAULT_UNDER_HEAD = 5.4;

export const DEFAULT_AUDIT: Audit = {
  from: 'nut',
  treble: null,
  bass: null,
  centsTreble: null,
  centsBass: null,
  actionTreble: null,
  actionBass: null,
  saddleThickness: 3.175,
  crown: 1.6,
  slotWidth: 3.175,
  pinSpread: null,
  pinsFromSlot: null,
  pinsToBack: null,
  ahead: null,
};

export const DEFAULT_SETUP: Omit<Project['setup'], 'action' | 'relief'> = {
  nutHeight: { treble: 0.3, bass: 0.4 },
  reliefFrets: { from: 1, to: 14 },
  fingerDistance: 0,
  pushDown: 0,
};

/** The template alone. */
export const DEFAULT_SHEETS: Project['sheets'] = { chosen: ['tape-down'] };
