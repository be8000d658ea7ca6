import type { SlotFill } from '../../../core/derive/deriveRepairAreas';
import type { FormerSlot } from '../../../core/document/repairTypes';

/** What fills an old slot, and how the new one lies to it, in sentences. fill: null until it is known. */
export const fillWords = (
  { width, depth, length, ends }: FormerSlot,
  fill: SlotFill | null,
  show: (mm: number) => string,
): string => {
  const rounded = ends === 'round' ? ', its ends rounded to the slot' : '';
  const strip = `Fill strip: ${show(width)} wide, ${show(depth)} deep, ${show(length)} long${rounded}; grain along the bridge.`;
  if (fill === null) return strip;
  switch (fill.lies) {
    case 'inside':
      return `${strip} The new slot lies wholly in the fill.`;
    case 'partly':
      return `${strip} The new slot lies partly over the fill: ${fill.shared.toFixed(0)} mm² of it in the fill, ${fill.beside.toFixed(0)} mm² in old wood.`;
    case 'clear':
      return `${strip} The new slot is clear of the fill, with ${show(fill.wall)} of wood between them.`;
  }
};
