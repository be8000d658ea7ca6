import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Instrument } from '../document/types';
import { pathBounds } from '../geom/pathBounds';
import type { Board, Scale } from '../instrument/types';
import { centsPerMm } from '../intonation/centsPerMm';
import { measuredDistances, measuringBases } from './measuredDistances';
import { squareLine } from './squareLine';
import type { Placement, PlacementNumber } from './types';

/** Every figure a maker places the bridge by, each from every datum. */
export const placementOf = (
  instrument: Instrument,
  scale: Scale,
  board: Board,
  saddle: SaddlePlace,
  slot: SlotPlace,
  bridge: BridgePlace,
): Placement => {
  const face = instrument.nut.datum === 'zero-fret' ? instrument.nut.face : null;
  const number = (id: string, label: string, y: number): PlacementNumber => ({
    id,
    label,
    fromNut: y,
    fromTwelfth: y - board.twelfth,
    fromNutFace: face === null ? null : y + face,
  });
  const breaks = (id: string, side: string, string: SaddlePlace['strings'][number] | undefined) =>
    string === undefined
      ? []
      : [number(id, `Break point, ${side} ${string.name}`, saddle.centre + saddle.slope * string.x)];
  const foremost = pathBounds(bridge.footprint.outline).minY;
  return {
    numbers: [
      number('break-centre', 'Break point, centre', saddle.centre),
      ...breaks('break-treble', 'treble', saddle.strings[0]),
      ...breaks('break-bass', 'bass', saddle.strings.at(-1)),
      number('slot-centre', 'Slot centre', slot.middle),
      number('slot-front', 'Slot front, centre', slot.front),
      number('bridge-front', 'Bridge front, centre', bridge.front),
      ...(bridge.pinRow === null ? [] : [number('pin-row', 'Pin row, centre', bridge.pinRow)]),
      number('octave', 'Octave line', board.octave),
    ],
    distances: measuredDistances(measuringBases(board, instrument.nut.datum, instrument.frets.bodyJoin), bridge),
    squareLine: {
      mm: squareLine(foremost, board.twelfth, face, 'mm'),
      in: squareLine(foremost, board.twelfth, face, 'in'),
    },
    slant: Math.atan(-saddle.slope),
    centsPerMm: centsPerMm(scale.scaleLength, 12),
  };
};
