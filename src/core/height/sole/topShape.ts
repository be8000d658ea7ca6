import type { Sole, SoleGaps } from '../../document/soleTypes';
import { sagitta } from '../sagitta';

/** The ends of the bridge and where its wings begin, mm from the centreline: − toward the bass. */
export interface SolePlaces {
  readonly bassTip: number;
  readonly bassWing: number;
  readonly trebleWing: number;
  readonly trebleTip: number;
}

/** The places at which gaps are read, from the bass to the treble. */
export const gapPlaces = ({
  bassTip,
  bassWing,
  trebleWing,
  trebleTip,
}: SolePlaces): readonly { readonly name: keyof SoleGaps; readonly x: number }[] => [
  { name: 'bassTip', x: bassTip },
  { name: 'bassWing', x: bassWing },
  { name: 'centre', x: 0 },
  { name: 'trebleWing', x: trebleWing },
  { name: 'trebleTip', x: trebleTip },
];

/** What was read between two places, straight from one to the next. */
const gapBetween = (gaps: SoleGaps, places: SolePlaces, x: number): number => {
  const read = gapPlaces(places);
  const next = Math.max(
    1,
    read.findIndex((place) => place.x >= x),
  );
  const [from, to] = [read[next - 1], read[next]];
  if (from === undefined || to === undefined) return 0;
  const share = (x - from.x) / (to.x - from.x);
  return gaps[from.name] + (gaps[to.name] - gaps[from.name]) * share;
};

/**
 * Height of the top under the middle of the bridge's width at x, mm, − below its height on the centreline when the top is
 * a dome: −(R − √(R² − x²)). As read: as far below the sole that was gauged as the gap says, straight between readings.
 * @throws RangeError when a radius is smaller than the bridge
 */
export const topHeight = ({ top }: Sole, places: SolePlaces, x: number): number =>
  top.from === 'radius' ? 0 - sagitta(top.across, x) : 0 - sagitta(top.under, x) - gapBetween(top.gaps, places, x);
