import type { Item, Layer, Role } from '../../core/drawing/types';
import { lineTypeOf } from './lineTypes';
import type { DxfLayer } from './types';

/** What a layer is there for; anything else in it gets a layer of its own, since a layer of a DXF has one line type. */
const OWN: Partial<Readonly<Record<Layer, Role>>> = {
  windows: 'window',
  body: 'beneath',
  former: 'former',
  board: 'board-edge',
  strings: 'string-line',
  bridge: 'outline',
  slot: 'slot',
  pins: 'hole',
  locating: 'hole',
  lines: 'square-line',
  dimensions: 'dimension',
};

/** Edges that are cut or drilled; a saw or laser is set by colour. */
const CUT: readonly Role[] = ['outline', 'slot', 'hole'];
/** Black or white, whichever stands out, and grey: numbers 7 and 8 of the DXF colour index. */
const COLOUR = { cut: 7, other: 8 };

/** The layer of a DXF that an item goes to: "SLOT", "SLOT-CENTRELINE", "PINS-CROSS", "BOARD-TEXT". */
export const layerOf = ({ kind, layer, role }: Item): DxfLayer => {
  const ending = kind === 'text' ? 'text' : role;
  const own = ending === layer || (kind === 'path' && OWN[layer] === role);
  return {
    name: (own ? layer : `${layer}-${ending}`).toUpperCase(),
    lineType: kind === 'text' ? lineTypeOf('note') : lineTypeOf(role),
    colour: kind === 'path' && CUT.includes(role) ? COLOUR.cut : COLOUR.other,
  };
};
