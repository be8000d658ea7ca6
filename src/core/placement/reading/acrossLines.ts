import { lineCrossings } from '../../geom/lineCrossings';
import { pathBounds } from '../../geom/pathBounds';
import { squareLine } from '../squareLine';
import type { ReadCase } from './readCase';

/** A line across the bridge, y = at + slope · x in the instrument frame, that is read at the outer strings. */
export interface AcrossLine {
  readonly id: string;
  readonly name: string;
  readonly at: number;
  readonly slope: number;
  /** Where it lies: on the top, or on the upper face of the bridge. */
  readonly on: 'top' | 'face';
}

/** A front edge that strays no more than this between the outer strings can be read like a straight one, mm. */
const STRAIGHT = 0.01;

/** The front wall of the slot. */
export const slotFront = ({ slot, saddle }: ReadCase): AcrossLine => ({
  id: 'slot',
  name: 'slot front',
  at: slot.front,
  slope: saddle.slope,
  on: 'face',
});

/** The template's bold line, which goes with the bridge while both are taped: at a figure that is round in this unit. */
export const templateLine = ({ project, board, bridge }: ReadCase, unit: 'mm' | 'in'): AcrossLine => ({
  id: 'square',
  name: 'square line of the taped template',
  at: squareLine(pathBounds(bridge.footprint.outline).minY, board.twelfth, project.instrument.nut.face, unit).fromNut,
  slope: 0,
  on: 'top',
});

/** The front edge; null where it is not straight from string to string. */
export const frontEdge = ({ bridge, strings }: ReadCase): AcrossLine | null => {
  const half = Math.max(...strings.map(({ saddleX }) => Math.abs(saddleX)));
  const straight = [-1, -0.5, 0.5, 1].every((share) => {
    const [front] = lineCrossings(bridge.footprint.outline, { x: share * half, y: 0 }, { x: 0, y: 1 });
    return front !== undefined && Math.abs(front - bridge.front) <= STRAIGHT;
  });
  return straight ? { id: 'front', name: 'front edge', at: bridge.front, slope: 0, on: 'top' } : null;
};

/** Through the outer pin holes of one row; null without pins. */
export const pinRow = ({ project, bridge }: ReadCase): AcrossLine | null => {
  const { pins } = bridge;
  const secondRow = (project.bridge.pins?.stagger ?? 0) > 0 && pins.length % 2 === 0;
  const [first, last] = [pins[0], pins.at(secondRow ? -2 : -1)];
  if (first === undefined || last === undefined || first === last) return null;
  const slope = (first.centre.y - last.centre.y) / (first.centre.x - last.centre.x);
  return { id: 'pins', name: 'pin row', at: first.centre.y - slope * first.centre.x, slope, on: 'face' };
};
