import type { BridgePlace, SlotPlace } from '../bridge/types';
import { pathBounds } from '../geom/pathBounds';
import { measureText } from '../text/measureText';
import { WINDOW_OVERHANG } from './drawWindows';
import { polyline } from './polyline';
import { TEXT_HEIGHT } from './textHeights';
import type { Item } from './types';

const CLEAR_OF_SLOT = 3;
const INSIDE_TIP = 6;
const SHORTEST = 8;
const CLEAR_OF_WINDOW = 1;
/** From the line to the middle of its words, and the farthest that they reach from it, mm. */
const WORDS = 2;
const WORDS_REACH = 3.3;
/** Room to the side of a small bridge that the square line leaves for the words, mm from the centreline. */
const ROOM = 84;

/** Where the pieces of the octave line end, mm from the centreline. */
const octaveLineSpan = (bridge: BridgePlace, slot: SlotPlace): { readonly inner: number; readonly outer: number } => {
  const { maxX } = pathBounds(bridge.footprint.outline);
  const inner = Math.max(slot.ends.treble.x, -slot.ends.bass.x) + CLEAR_OF_SLOT;
  const withinTip = maxX - INSIDE_TIP;
  // On a small bridge the windows would take most of the line with them, so that it runs on beyond them.
  return {
    inner,
    outer: withinTip - inner >= SHORTEST ? withinTip : Math.max(maxX, inner) + WINDOW_OVERHANG + SHORTEST,
  };
};

/** How far the octave line reaches to either side of the centreline, mm. */
export const octaveLineReach = (bridge: BridgePlace, slot: SlotPlace): number => octaveLineSpan(bridge, slot).outer;

/** The line of the scale with no compensation, in two pieces beside the slot; the bass piece carries the figure. */
export const drawOctaveLine = (
  octave: number,
  figure: string,
  bridge: BridgePlace,
  slot: SlotPlace,
): readonly Item[] => {
  const tip = pathBounds(bridge.footprint.outline).maxX;
  const { inner, outer } = octaveLineSpan(bridge, slot);
  const text = `octave line ${figure}`;
  const words = measureText(text, TEXT_HEIGHT.note, 'regular');
  const outside = Math.max(outer, tip + WINDOW_OVERHANG) + 1;
  // Over the line itself; or, on a bridge too short for that, beside its windows.
  const over = outer - inner >= words + CLEAR_OF_WINDOW || outside + words > ROOM;
  // Behind the line, where the front edge of the wing would run through words ahead of it.
  const edge = bridge.points.find(({ id }) => id === 'front-bass')?.at.y ?? bridge.front;
  const behind = edge > octave - WORDS_REACH && edge < octave;
  const piece = (id: string, from: number, to: number): Item => ({
    kind: 'path',
    id,
    part: 'octave line',
    role: 'octave-line',
    layer: 'lines',
    path: polyline({ x: from, y: octave }, { x: to, y: octave }),
  });
  return [
    piece('octave-treble', inner, outer),
    piece('octave-bass', -inner, -outer),
    {
      kind: 'text',
      id: 'octave-label',
      part: 'octave line',
      role: 'note',
      layer: 'text',
      at: over ? { x: -outer + CLEAR_OF_WINDOW, y: octave + (behind ? WORDS : -WORDS) } : { x: -outside, y: octave },
      text,
      height: TEXT_HEIGHT.note,
      anchor: over ? 'start' : 'end',
      angle: 0,
    },
  ];
};
