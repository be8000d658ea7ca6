import { showLength } from '../../../units/showLength';
import { showArea } from '../finish/showArea';
import { fineLength } from '../items/fineLength';
import type { SheetContext } from '../types';
import { blanks, note, readings, step, type WorksheetRow } from './worksheetRows';

/** Locating-pin holes, finish, dry run. */
export const drillRows = ({ project, areas, style }: SheetContext, holes: number): readonly WorksheetRow[] => {
  const { locating, rim } = project.bridge;
  const drill = `${fineLength(locating.drill, style.unit)} ${style.unit}`;
  return [
    step('8 First locating hole, through the bridge itself'),
    readings('Drill, tried in waste', { name: '', expected: drill }, { name: 'depth stop', expected: null }),
    note(
      'CAUTION. Braces found first. Back up the plate with a block, never with a hand inside. Drill slowly, square to the top. Dust: draw it off and wear a respirator.',
    ),
    step(`9 Pin in, read again, then the next: ${holes} in all`),
    blanks('break point treble', 'bass', 'holes drilled'),
    step('10 Finish scored and cleared'),
    readings('Finish left under the rim', { name: '', expected: rim === 0 ? 'none' : showLength(rim, style) }),
    ...(areas === null ? [] : [note(`Glue area ${showArea(areas.glue, style.unit)}, all of it bare wood.`)]),
    note(
      'CAUTION. Through the film, not the wood: light passes, cut away from the holding hand. A cut into the top starts a crack. Solvents and strippers burn and attack film: labels and local rules.',
    ),
    step('11 Dry run: pins, cauls, every clamp, by the clock'),
    blanks('clamps', 'minutes', 'reach tried', 'brace under load'),
    note('CAUTION. Clamps snug and even: too tight dents the top, starves the joint and cracks braces.'),
  ];
};
