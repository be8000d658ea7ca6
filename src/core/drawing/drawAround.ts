import { bodyHand } from '../body/bodyHand';
import { rampMarks } from '../bridge/rampMarks';
import { tieHoles } from '../bridge/tieHoles';
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
import { drawRamps } from './marks/drawRamps';
import { drawTies } from './marks/drawTies';
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
    ...held(project, derived, view),
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

/** Ramps of the pin holes, or string holes. */
const held = ({ bridge: { pins, ties }, strings }: Project, derived: Derived, { hand }: View): readonly Item[] => {
  const { bridge, slot, saddle } = derived;
  if (!bridge.ok || !slot.ok || !saddle.ok) return [];
  const ramps = pins === null ? [] : drawRamps(rampMarks(pins, bridge.value.pins, saddle.value));
  const holes = ties === null ? [] : tieHoles(ties, strings.length, slot.value, bridge.value);
  return [...ramps, ...drawTies(holes, ties?.kind === 'back-edge')].map((item) => handedItem(hand, item));
};

const marked = ({ checks }: Around, { hand }: View): readonly Item[] =>
  drawCheckMarks(checks).map((item) => handedItem(hand, item));
