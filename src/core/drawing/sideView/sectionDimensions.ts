import { angleDimension } from '../dimensions/angleDimension';
import { type LinearOptions, linearDimension } from '../dimensions/linearDimension';
import type { Item } from '../types';
import type { SectionPlaces } from './sectionPlace';
import { at, sideText } from './sideItems';

/** Where shelves lie above the saddle and below the sole, mm, so that none meets another. */
const ABOVE = { airspace: 5, overFrets: 10, proud: 15 } as const;
const BELOW = { first: 7, second: 12 } as const;
const RUN_ABOVE = 5;
const ARC = 5;

interface Upright {
  readonly id: string;
  /** Path of the field that the figure belongs to, or what it is a figure of. */
  readonly part: string;
  readonly text: string;
  readonly along: number;
  readonly from: number;
  readonly to: number;
  /** Height of the shelf that carries the words. */
  readonly shelf: number;
  readonly side: 'left' | 'right';
}

/** A height told by a line that runs on to a shelf above or below everything. */
const upright = ({ id, part, text, along, from, to, shelf, side }: Upright): readonly Item[] => {
  const options: LinearOptions = {
    id,
    part,
    layer: 'sheet',
    text,
    direction: 'along',
    offset: 0,
    shelf: { beyond: Math.abs(shelf - to), side },
  };
  return linearDimension(at(along, from), at(along, to), options);
};

/** The dimensions of a section. show writes a length; airspaceRead: whether the straightedge was read. */
export const sectionDimensions = (
  places: SectionPlaces,
  show: (mm: number) => string,
  airspaceRead: boolean,
): readonly Item[] => {
  const { front, slotFront, slotBack, face, floor, crown, straightedge, run, breakDeg } = places;
  const [low, high] = [Math.min(face, straightedge), Math.max(face, straightedge)];
  const beforeSaddle = slotFront - 1.2;
  const stringHere = crown + places.stringRise * beforeSaddle;
  const airspace = straightedge - face;
  const under = airspace < 0 ? `${show(-airspace)} below` : `${show(airspace)} over`;
  return [
    ...upright({
      id: 'thickness',
      part: 'bridge.thickness',
      text: `${show(face)} thick`,
      along: front - 3,
      from: face,
      to: 0,
      shelf: -BELOW.first,
      side: 'left',
    }),
    ...upright({
      id: 'wood',
      part: 'wood',
      text: `${show(floor)} of wood`,
      along: slotFront + (slotBack - slotFront) / 2,
      from: floor,
      to: 0,
      shelf: -BELOW.second,
      side: 'left',
    }),
    ...upright({
      id: 'slot-depth',
      part: 'bridge.slot.depth',
      text: `slot ${show(face - floor)} deep`,
      along: slotBack + 2.5,
      from: face,
      to: floor,
      shelf: -BELOW.first,
      side: 'right',
    }),
    ...upright({
      id: 'over-frets',
      part: 'heights',
      text: `${show(stringHere - straightedge)} over the frets’ line`,
      along: beforeSaddle,
      from: straightedge,
      to: stringHere,
      shelf: crown + ABOVE.overFrets,
      side: 'left',
    }),
    ...upright({
      id: 'airspace',
      part: 'height.straightedge',
      text: `straightedge ${under}${airspaceRead ? '' : ', taken'}`,
      along: Math.min(front + 2, slotFront - 2.5),
      from: low,
      to: high,
      shelf: crown + ABOVE.airspace,
      side: 'left',
    }),
    ...upright({
      id: 'proud',
      part: 'heights',
      text: `saddle ${show(crown - face)} proud`,
      along: 0,
      from: face,
      to: crown,
      shelf: crown + ABOVE.proud,
      side: 'left',
    }),
    ...linearDimension(at(0, crown), at(run, face), {
      id: 'run',
      part: 'height.run',
      layer: 'sheet',
      text: `${show(run)} ${places.pin === null ? 'behind' : 'to the pin'}`,
      direction: 'across',
      offset: -RUN_ABOVE,
      slide: 9,
    }),
    ...angleDimension(at(run, face), at(0, crown), at(0, face), {
      id: 'break',
      part: 'heights',
      layer: 'sheet',
      text: '',
      radius: Math.min(ARC, run / 2),
    }).filter(({ kind }) => kind === 'path'),
    sideText('break-text', 'heights', 'label', at(run + 3, face + 3), `breaks by ${breakDeg.toFixed(1)}°`, 'start'),
  ];
};
