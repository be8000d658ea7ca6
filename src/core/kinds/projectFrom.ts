import { DEFAULT_AUDIT, DEFAULT_FIT, DEFAULT_SETUP, DEFAULT_SHEETS } from '../document/defaultGroups';
import type { Project } from '../document/types';
import type { KindRow } from './kindRow';
import { stringsOfSet } from './stringsOfSet';
import { usualBridge } from './usualBridge';

/** A new project of a kind. */
export const projectFrom = (row: KindRow, id: string, now: string): Project => {
  const bridge = usualBridge(row.shape);
  return {
    format: 'saddlemark-project',
    version: 1,
    id,
    revision: 0,
    about: { name: `New ${row.name.toLowerCase()}`, notes: '', created: now, changed: now, parent: null, pictures: [] },
    instrument: {
      hand: 'right',
      frets: row.frets,
      widths: { ...row.widths, last: null },
      boardRadius: row.boardRadius,
      nut: { datum: 'front', offset: 0, face: 0 },
      scale: { from: 'entered', entered: row.scaleLength, readings: [] },
      margins: { treble: row.margin, bass: row.margin },
      gapRule: 'equal-gaps',
      pairGap: 2,
      spread: { from: 'own', own: row.spread },
      seamOffset: 0,
    },
    strings: stringsOfSet(row.stringSet),
    setup: {
      ...DEFAULT_SETUP,
      action: row.action,
      nutHeight: row.nutHeight,
      relief: row.relief,
      // A straightedge cannot rest on a fret that is not there.
      reliefFrets: { from: 1, to: Math.min(DEFAULT_SETUP.reliefFrets.to, row.frets.count) },
    },
    compensation: { by: 'rule', rule: row.rule, own: {}, fit: DEFAULT_FIT, learned: null },
    bridge: {
      ...bridge,
      pins: bridge.pins === null ? null : { ...bridge.pins, ...row.pins },
      ties: bridge.ties && { ...bridge.ties, spread: row.spread },
      slot: { ...bridge.slot, depth: row.slotDepth },
      thickness: row.thickness,
    },
    height: { ...row.height, straightedge: null, pickup: 0 },
    audit: DEFAULT_AUDIT,
    body: null,
    repair: null,
    dimensions: [],
    sheets: DEFAULT_SHEETS,
    doubts: {},
    limits: {},
    build: null,
  };
};
