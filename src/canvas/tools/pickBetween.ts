import type { Anchor } from '../../core/document/dimensionTypes';
import { anchorsOf } from '../../core/drawing/measure/anchorsOf';
import { partsWithEdge } from '../../core/drawing/measure/partEdge';
import { PICKS_WANTED } from '../../core/drawing/measure/picksWanted';
import { distance } from '../../core/geom/points';
import type { Store } from '../../store/createStore';
import { lengthStyle } from '../../store/device';
import type { Press, ToolView } from '../handTools';
import { frameOf } from './frame';
import { reachOf } from './reach';
import { roundTo } from './roundTo';

/** What a press picks: the named place nearest to it within reach, for a gap the part beneath it, else the very point. */
const pickAt = ({ getState }: Store, view: ToolView, { at, by }: Press): Anchor | null => {
  const { project, derived, device, handwork } = getState();
  const { bridge, slot } = derived;
  if (!bridge.ok || !slot.ok) return null;
  if (handwork.measure === 'gap') {
    const part = view.partAt(at);
    return part !== null && partsWithEdge(bridge.value).includes(part) ? { kind: 'part', part, feature: 'edge' } : null;
  }
  const frame = frameOf(view, project.instrument.hand, bridge.value.front);
  const near = anchorsOf(bridge.value, slot.value, project.bridge.outline.kind === 'drawn')
    .map(({ anchor, at: place }) => {
      const seen = frame.onScreen({ x: place.x, y: place.y - bridge.value.front });
      return { anchor, off: distance(seen, at) };
    })
    .filter(({ off }) => off <= reachOf(by) + 4)
    .sort((one, other) => one.off - other.off);
  if (near[0] !== undefined) return near[0].anchor;
  const round = roundTo(lengthStyle(device));
  const { x, y } = frame.toFootprint(at);
  return { kind: 'point', at: { x: round(x), y: round(y) } };
};

/** Adds what a press picks to the places that are measured between; after the last of them it begins anew. */
export const pickBetween = (store: Store, view: ToolView, press: Press): void => {
  const pick = pickAt(store, view, press);
  const { picks, measure } = store.getState().handwork;
  if (pick === null) store.actions.say('There is no edge here: press the footprint, the slot or a hole.');
  else store.actions.setHandwork({ picks: picks.length >= PICKS_WANTED[measure] ? [pick] : [...picks, pick] });
};
