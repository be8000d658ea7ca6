import type { BridgePlace, SlotPlace } from '../../core/bridge/types';
import type { Project } from '../../core/document/types';
import type { BridgeMarks } from '../../core/drawing/nodes/bridgeMarks';
import { footprintSnaps, locatingSnaps, pinSnaps } from '../../core/drawing/nodes/partSnaps';
import { placeWords } from '../../core/drawing/nodes/placeWords';
import type { PartName } from '../../core/drawing/types';
import { subtract } from '../../core/geom/points';
import type { Point } from '../../core/geom/types';
import { moveOther } from '../../store/commands/hand/moveOther';
import { pinOfPart } from '../../store/commands/hand/movePin';
import type { Movable } from './createDrag';

/** What a part lies on, and how figures are written and rounded. */
export interface MovableNeeds {
  readonly project: Project;
  readonly bridge: BridgePlace;
  readonly slot: SlotPlace;
  readonly marks: BridgeMarks;
  readonly show: (mm: number) => string;
  readonly round: (mm: number) => number;
}

const home = ({ x, y }: Point, bridge: BridgePlace): Point => ({ x, y: y - bridge.front });

const pinMovable = (number: number, { project, bridge, marks, show, round }: MovableNeeds): Movable | null => {
  const hole = bridge.pins[number - 1];
  const { pins } = project.bridge;
  if (hole === undefined || pins === null || bridge.pinRow === null) return null;
  const origin = home(hole.centre, bridge);
  const outer = number === 1 || number === bridge.pins.length;
  /** The spread runs along the row, which may be slanted. */
  const along = outer && origin.x !== 0 ? pins.spread / (2 * Math.abs(origin.x)) : 1;
  return {
    label: outer ? `Move pin ${number} and its row` : 'Move the pin row',
    origin,
    tell: placeWords(show),
    lines: pinSnaps(marks, hole.centre.y - bridge.pinRow, show),
    keep: (to) => (outer ? to : { x: origin.x, y: to.y }),
    round,
    move: (to) => {
      const by = subtract(to, origin);
      return (present) => moveOther(present, `pin ${number}`, { x: by.x * along, y: by.y });
    },
  };
};

const footprintMovable = ({ marks, show, round }: MovableNeeds): Movable => ({
  label: 'Move the bridge about its slot',
  tell: ({ y }) => `front edge to slot ${show(marks.slotFront - y)}`,
  origin: { x: 0, y: 0 },
  lines: footprintSnaps(marks, show),
  keep: ({ y }) => ({ x: 0, y }),
  round,
  move: (to) => (present) => moveOther(present, 'footprint', to),
});

const locatingMovable = (part: PartName, { bridge, marks, show, round }: MovableNeeds): Movable | null => {
  const hole = bridge.locating.find(({ label }) => label === part);
  const other = bridge.locating.find(({ label }) => label !== part);
  if (hole === undefined) return null;
  const origin = home(hole.centre, bridge);
  return {
    label: `Move the ${part}`,
    origin,
    tell: placeWords(show),
    lines: locatingSnaps(marks, other === undefined ? null : home(other.centre, bridge)),
    round,
    move: (to) => (present) => moveOther(present, part, subtract(to, origin)),
  };
};

/** What a drag of a part other than a node moves; null for a part that stays where it is. */
export const partMovable = (part: PartName, needs: MovableNeeds): Movable | null => {
  const pin = pinOfPart(part);
  if (pin !== null) return pinMovable(pin, needs);
  if (part === 'footprint') return footprintMovable(needs);
  if (part.startsWith('locating pin')) return locatingMovable(part, needs);
  if (part !== 'slot') return null;
  // The drag goes nowhere, and says why.
  const stay: Point = { x: 0, y: needs.marks.slotFront };
  return {
    label: 'Move the slot',
    origin: stay,
    tell: () => '',
    lines: [],
    round: needs.round,
    move: (to) => (present) => moveOther(present, 'slot', subtract(to, stay)),
  };
};
