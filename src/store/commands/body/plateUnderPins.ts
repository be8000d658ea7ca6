import { isConverted } from '../../../core/body/bodyHand';
import type { BridgePlace } from '../../../core/bridge/types';
import type { Body, Plate } from '../../../core/document/bodyTypes';
import type { Hand } from '../../../core/document/types';
import { pathBounds } from '../../../core/geom/pathBounds';
import type { Bounds } from '../../../core/geom/types';
import { roundDecimal } from '../../../core/units/roundDecimal';

/** The box that a plate lies beneath: the pins, or the whole bridge without pins. Instrument frame. */
const boxAbove = ({ pins, footprint }: BridgePlace): Bounds => {
  if (pins.length === 0) return pathBounds(footprint.outline);
  const [xs, ys] = [pins.map(({ centre }) => centre.x), pins.map(({ centre }) => centre.y)];
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
};

/** This plate with its middle under the middle of the pins, or of a bridge without pins. Body frame, to a tenth of a mm. */
export const plateUnderPins = (
  plate: Omit<Plate, 'front' | 'aside'>,
  body: Body,
  hand: Hand,
  bridge: BridgePlace,
): Plate => {
  const { minX, maxX, minY, maxY } = boxAbove(bridge);
  const x = (minX + maxX) / 2;
  return {
    ...plate,
    front: roundDecimal((minY + maxY - plate.along) / 2, 1),
    aside: roundDecimal(isConverted(body, hand) ? 0 - x : x, 1),
  };
};
