import type { FormerDatum, FormerFootprint, FormerHoles, FormerSlot } from '../document/repairTypes';
import { rotate, subtract } from '../geom/points';
import type { Point } from '../geom/types';
import { placePoint } from '../placement/rigid/placePoint';
import { roundDecimal } from '../units/roundDecimal';
import { formerPose } from './formerPose';

interface Told {
  readonly from: FormerDatum;
  readonly distance: number;
  readonly aside: number;
  readonly slant: number;
}

/** Figures that were typed come back as typed after there and back: a millionth of a micron is lost. */
const DECIMALS = 9;

const movedPoint = (point: Point, before: FormerDatum, after: FormerDatum, footprint: FormerFootprint): Point => {
  const to = formerPose(after, footprint);
  const { x, y } = rotate(subtract(placePoint(formerPose(before, footprint), point), to), -to.angle);
  return { x: roundDecimal(x, DECIMALS), y: roundDecimal(y, DECIMALS) };
};

const movedLine = <Line extends Told>(line: Line, from: FormerDatum, footprint: FormerFootprint): Line => {
  const { x, y } = movedPoint({ x: line.aside, y: line.distance }, line.from, from, footprint);
  const turn = formerPose(from, footprint).angle - formerPose(line.from, footprint).angle;
  return { ...line, from, aside: x, distance: y, slant: roundDecimal(line.slant + turn, DECIMALS) };
};

/**
 * The same old holes read from the other datum. A second row stands behind the first along the frame it is read in, so that
 * it moves by stagger × sin(turn) when the old bridge was turned.
 */
export const holesReadFrom = (holes: FormerHoles, from: FormerDatum, footprint: FormerFootprint): FormerHoles =>
  holes.from === from
    ? holes
    : holes.kind === 'row'
      ? movedLine(holes, from, footprint)
      : {
          ...holes,
          from,
          each: holes.each.map((hole) => ({ ...hole, ...movedPoint(hole, holes.from, from, footprint) })),
        };

/** The same old slot read from the other datum. */
export const slotReadFrom = (slot: FormerSlot, from: FormerDatum, footprint: FormerFootprint): FormerSlot =>
  slot.from === from ? slot : movedLine(slot, from, footprint);
