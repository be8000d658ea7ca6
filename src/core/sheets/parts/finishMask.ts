import { ok, type Result } from '../../result';
import { bareArea } from './finish/bareArea';
import { finishItems } from './finish/finishItems';
import { clearingNotes, maskNotes } from './finish/finishNotes';
import { partOfItems } from './items/partOfItems';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** Mask and clearing line. Codes: those of bareArea. */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const area = bareArea(context);
  if (!area.ok) return area;
  const mask = { heading: 'FINISH MASK, THIS SIDE UP', notes: maskNotes(context), hatched: false };
  const clearing = { heading: 'CLEARING LINE, THIS SIDE UP', notes: clearingNotes(context), hatched: true };
  return ok([
    partOfItems('finish-mask', 'Finish mask, before spraying', finishItems(context, area.value, mask)),
    partOfItems('clearing-line', 'Clearing line, finish to take off', finishItems(context, area.value, clearing)),
  ]);
};

/** The finish mask and the clearing line. */
export const finishMask: SheetKind = {
  id: 'finish-mask',
  name: 'Finish mask and clearing line',
  about: 'What stays bare while the finish is sprayed, and how far it is cleared under the bridge.',
  make,
};
