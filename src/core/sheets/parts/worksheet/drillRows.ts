import { showLength } from '../../../units/showLength';
import { showArea } from '../finish/showArea';
import { fineLength } from '../items/fineLength';
import type { SheetContext } from '../types';
import { blanks, note, type RowsByStep, readings } from './worksheetRows';

/** Locating-pin holes, finish, dry run. */
export const drillRows = ({ project, areas, style }: SheetContext): RowsByStep => {
  const { locating, rim } = project.bridge;
  const drill = `${fineLength(locating.drill, style.unit)} ${style.unit}`;
  return {
    'first-hole': [
      readings('Drill, tried in waste', { name: '', expected: drill }, { name: 'depth stop', expected: null }),
    ],
    'other-holes': [blanks('break point treble', 'bass', 'holes drilled')],
    finish: [
      readings('Finish left under the rim', { name: '', expected: rim === 0 ? 'none' : showLength(rim, style) }),
      ...(areas === null ? [] : [note(`Glue area ${showArea(areas.glue, style.unit)}, all of it bare wood.`)]),
    ],
    'dry-run': [blanks('clamps', 'minutes', 'reach tried', 'brace under load')],
  };
};
