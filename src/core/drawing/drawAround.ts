import { bodyHand } from '../body/bodyHand';
import type { Around } from '../derive/createAround';
import type { Derived } from '../derive/types';
import type { Project } from '../document/types';
import { mirrorPath } from '../geom/mirrorPath';
import { pathBounds } from '../geom/pathBounds';
import { showLength } from '../units/showLength';
import { drawBody } from './body/drawBody';
import type { View } from './buildDrawing';
import { handedItem } from './handed';
import { drawCheckMarks } from './marks/drawCheckMarks';
import { drawHeld } from './marks/drawHeld';
import { drawPinned } from './measure/drawPinned';
import { drawRepair } from './repair/drawRepair';
import type { Item } from './types';

/** Items to paint under and over the bridge, hand applied. */
export interface AroundItems {
  readonly under: readonly Item[];
  readonly over: readonly Item[];
}

/** The drawing of what lies beneath, around and before the bridge. */
export const drawAround = (project: Project, derived: Derived, around: Around, view: View): AroundItems => ({
  under: [],
  over: [
    ...beneath(project, derived, around, view),
    ...drawHeld(project, derived, view.hand),
    ...repaired(derived, around, view),
    ...pinned(project, derived, view),
    ...marked(around, view),
  ],
});

/** Over the bridge, whose face would hide it; on the side that the body's own hand puts it. */
const beneath = ({ body }: Project, { bridge }: Derived, around: Around, { hand }: View): readonly Item[] => {
  if (body === null || around.body === null || !bridge.ok) return [];
  const { outline } = bridge.value.footprint;
  return drawBody(around.body.built, bodyHand(body, hand), pathBounds(hand === 'left' ? mirrorPath(outline) : outline));
};

const pinned = ({ dimensions }: Project, { bridge, slot }: Derived, { hand, style }: View): readonly Item[] =>
  dimensions.length > 0 && bridge.ok && slot.ok
    ? drawPinned(dimensions, bridge.value, slot.value, hand, (mm) => showLength(mm, style))
    : [];

const repaired = ({ bridge }: Derived, { repair }: Around, { hand }: View): readonly Item[] => {
  if (repair === null) return [];
  const back = bridge.ok ? pathBounds(bridge.value.footprint.outline).maxY : Number.NEGATIVE_INFINITY;
  return drawRepair(repair, back).map((item) => handedItem(hand, item));
};

const marked = ({ checks }: Around, { hand }: View): readonly Item[] =>
  drawCheckMarks(checks).map((item) => handedItem(hand, item));
