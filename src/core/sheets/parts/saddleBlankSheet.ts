import { drawSaddleBlank } from '../../drawing/sideView/drawSaddleBlank';
import { fail, ok, type Result } from '../../result';
import { showLength } from '../../units/showLength';
import { fineLength } from './items/fineLength';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** The saddle's profile at true size. Codes: those of the heights and of saddleBlank. */
const make = ({ project, around, style }: SheetContext): Result<readonly SheetPart[]> => {
  if (around === null) return fail('height', 'sheet.noHeights', 'The heights were not computed yet. Try again.');
  const { blank, heights } = around.side;
  if (!blank.ok) return blank;
  const { hand } = project.instrument;
  const read = heights.ok && heights.value.read;
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  return ok([
    partOfItems(
      'saddle-blank',
      'Saddle blank',
      withNotes(
        drawSaddleBlank(blank.value, style, hand).items,
        `SADDLE, seen from the tail, TREBLE and BASS as marked · ${hand} hand`,
        [
          `True size. Thickness ${fineLength(blank.value.thickness, style.unit)} ${unit}, by calliper and by the slot: it slides in by hand and stands without leaning.`,
          ...(read
            ? []
            : ['The straightedge was NOT READ: the heights rest on the middle of its limits. Leave the blank higher.']),
          `Leave ${showLength(0.5, style)} over on top, string up, then come down to the action. Paste the print on the blank; cut outside the line, file to it; foot flat on a plate first.`,
          'Bone, horn and shell dust: wet it, extraction and a respirator. Work held in a vice, not in the hand.',
        ],
      ),
    ),
  ]);
};

/** The saddle blank. */
export const saddleBlankSheet: SheetKind = {
  id: 'saddle-blank',
  name: 'Saddle blank',
  about: 'The profile of the saddle at true size, with its height under every string.',
  make,
};
