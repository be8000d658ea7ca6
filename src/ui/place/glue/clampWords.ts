import type { Point } from '../../../core/geom/types';
import type { ClampPlace } from '../../../core/glue/clampPlaces';

type Show = (mm: number) => string;

/** Less than this is on the centreline, mm. */
const MIDDLE = 0.05;

/** Where a clamp stands on the bridge: "47.2 mm to the treble side, 16.0 mm behind the front edge". */
export const clampWhere = ({ x, y }: Point, show: Show): string => {
  const side = Math.abs(x) < MIDDLE ? 'centre' : `${show(Math.abs(x))} ${x > 0 ? 'treble' : 'bass'}`;
  return `${side}, ${show(Math.abs(y))} ${y < 0 ? 'ahead of' : 'behind'} the front edge`;
};

/** What has to be looked at where a clamp stands; nothing when all is well. */
export const clampTroubles = (
  { onBridge, inCutaway, pin, reach }: ClampPlace,
  longest: number,
  show: Show,
): string[] => [
  ...(onBridge ? [] : ['Off the bridge.']),
  ...(inCutaway ? ['Over the cutaway: nothing is beneath it.'] : []),
  ...(reach !== null && reach > longest ? [`The clamp is ${show(reach - longest)} short.`] : []),
  ...(pin === null ? [] : [`A locating pin ${show(pin)} away: leave room to pull it.`]),
];

/** Against what the clamps reach: "112.4 mm, reaches"; that no soundhole is entered. */
export const reachWords = ({ reach }: ClampPlace, longest: number, show: Show): string =>
  reach === null ? 'no soundhole entered' : `${show(reach)}, ${reach > longest ? 'too far' : 'reaches'}`;
