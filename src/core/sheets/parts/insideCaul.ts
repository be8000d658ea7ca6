import type { Hand } from '../../document/types';
import type { Item } from '../../drawing/types';
import { fail, ok, type Result } from '../../result';
import { caulFace, clearanceHoles } from './caul/caulFace';
import { clampFaceNotes, plateFaceNotes } from './caul/caulNotes';
import { caulShape } from './caul/caulShape';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const OTHER: Readonly<Record<Hand, Hand>> = { right: 'left', left: 'right' };

/**
 * Both faces of the caul that stands inside under the bridge: the plate face as the template lies, the clamp face mirrored.
 * Codes: those of the bridge, sheet.noBody.
 */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const { project, derived, around, style } = context;
  const { bridge } = derived;
  const { body } = project;
  if (!bridge.ok) return bridge;
  if (body === null || around?.body == null)
    return fail(
      'body',
      'sheet.noBody',
      'Nothing is said of what lies beneath the top. Expected braces, plate and soundhole, found and entered at Draw.',
    );
  const { hand } = project.instrument;
  const { footprint } = bridge.value;
  const shape = caulShape(footprint.outline, around.body.place, project.limits);
  const holes = clearanceHoles(shape, bridge.value, project.bridge.locating.clearance);
  const caul = { body, shape, holes };
  const face = (name: string, on: Hand, seen: boolean): readonly Item[] =>
    caulFace(shape, footprint, holes, { name, hand: on, seen, style });
  return ok([
    partOfItems(
      'caul-plate',
      'Inside caul, PLATE FACE',
      withNotes(
        face('PLATE FACE', hand, true),
        `PLATE FACE, grooves up, nut end away · ${hand} hand`,
        plateFaceNotes(caul, context),
      ),
      false,
    ),
    partOfItems(
      'caul-clamp',
      'Inside caul, CLAMP FACE',
      withNotes(
        face('CLAMP FACE', OTHER[hand], false),
        `CLAMP FACE, grooves down, nut end away · ${hand} hand`,
        clampFaceNotes(caul, context),
      ),
      false,
    ),
  ]);
};

/** The inside caul. */
export const insideCaul: SheetKind = {
  id: 'inside-caul',
  name: 'Inside caul',
  about:
    'The caul under the bridge plate, both faces: grooved for braces, relieved for the plate, drilled for the locating pins.',
  make,
};
