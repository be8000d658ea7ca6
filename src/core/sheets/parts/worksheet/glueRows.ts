import type { Placement } from '../../../placement/types';
import { showLength } from '../../../units/showLength';
import { fineLength } from '../items/fineLength';
import type { SheetContext } from '../types';
import { breakRows } from './placeRows';
import { blanks, type RowsByStep, readings, type WorksheetRow } from './worksheetRows';

/** Blanks for cents in one row at most. */
const A_ROW = 6;

/** A blank for every string, in rows. */
const centsRows = (count: number): readonly WorksheetRow[] => {
  const rows = Math.ceil(count / A_ROW);
  const each = Math.ceil(count / rows);
  return Array.from({ length: rows }, (_, row) =>
    blanks(
      ...Array.from(
        { length: Math.min(each, count - row * each) },
        (_string, index) => `${row === 0 && index === 0 ? 'cents at 12: ' : ''}${row * each + index + 1}`,
      ),
    ),
  );
};

/** Glue, read wet, cure; the slot where it is cut then; strings. */
export const glueRows = (context: SheetContext, placement: Placement, holes: number): RowsByStep => {
  const { project, style } = context;
  const { action, relief } = project.setup;
  return {
    'glue-on': [blanks('glue', 'open minutes, label', 'begun at', '°C', '% RH')],
    'read-wet': breakRows(context, placement),
    'pins-out': [blanks(`pins out, of ${holes}`, 'clamps tight at')],
    cure: [blanks('clamps off not before', 'strings on not before', 'label says')],
    'find-line': breakRows(context, placement),
    fence: [blanks('fence, treble', 'bass', 'cutter', 'base')],
    'cut-slot': [blanks('depth treble', 'bass', 'width', 'passes')],
    string: [
      readings(
        'Action at the 12th fret',
        { name: 'treble', expected: showLength(action.treble, style) },
        { name: 'bass', expected: showLength(action.bass, style) },
      ),
      readings(
        'Neck relief',
        { name: '', expected: `${fineLength(relief, style.unit)} ${style.unit}` },
        { name: '% RH, which meter', expected: null },
      ),
      ...centsRows(project.strings.length),
    ],
  };
};
