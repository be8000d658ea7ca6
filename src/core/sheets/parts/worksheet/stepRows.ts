import type { Placement } from '../../../placement/types';
import type { SheetContext } from '../types';
import { drillRows } from './drillRows';
import { glueRows } from './glueRows';
import { placeRows } from './placeRows';
import { readyRows } from './readyRows';
import type { RowsByStep } from './worksheetRows';

/** Figures to expect and blanks for what is read, by the id of the step. holes: how many locating pins. */
export const stepRows = (context: SheetContext, placement: Placement, holes: number): RowsByStep => ({
  ...readyRows(context),
  ...placeRows(context, placement),
  ...drillRows(context),
  ...glueRows(context, placement, holes),
});
