import type { Placement } from '../../../placement/types';
import { showLength } from '../../../units/showLength';
import { fineLength } from '../items/fineLength';
import type { SheetContext } from '../types';
import { breakRows } from './placeRows';
import { blanks, note, readings, step, type WorksheetRow } from './worksheetRows';

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

/** Glue, read wet, cure, string, record. */
export const glueRows = (context: SheetContext, placement: Placement, holes: number): readonly WorksheetRow[] => {
  const { project, style } = context;
  const { action, relief } = project.setup;
  return [
    step('12 Glue on, waxed pins in, clamps on'),
    blanks('glue', 'open minutes, label', 'begun at', '°C', '% RH'),
    step('13 Read again wet, inside the open time'),
    ...breakRows(context, placement),
    step('14 Pins out before the glue grabs; squeeze-out cleaned'),
    blanks(`pins out, of ${holes}`, 'glue left at the edge', 'inside'),
    step('15 Cured'),
    blanks('clamps off not before', 'strings on not before', 'label says'),
    step(project.bridge.pins === null ? '16 Strung, read, recorded' : '16 Holes reamed, strung, read, recorded'),
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
    note('CAUTION. Glue, solvents and heat: follow labels and local rules. No heat near a fresh joint.'),
  ];
};
