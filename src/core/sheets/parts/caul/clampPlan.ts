import type { BridgePlace } from '../../../bridge/types';
import type { Sole } from '../../../document/soleTypes';
import type { Hand } from '../../../document/types';
import { drawHoles } from '../../../drawing/drawHoles';
import { drawNutArrow, drawSides } from '../../../drawing/drawSides';
import { handedItem } from '../../../drawing/handed';
import { polyline } from '../../../drawing/polyline';
import type { Item } from '../../../drawing/types';
import { pathBounds } from '../../../geom/pathBounds';
import { between } from '../../../geom/points';
import type { Path } from '../../../geom/types';
import { sheetPath, sheetText } from '../../sheetItems';
import { linePieces } from '../items/linePieces';
import { BETWEEN_CAULS } from './clampProfile';

const BEYOND = 6;
const AHEAD = 22;

/** Where the cauls are sawn apart. */
const sawLines = (outline: Path, { wing }: Sole): readonly Item[] => {
  const { minY, maxY } = pathBounds(outline);
  const half = BETWEEN_CAULS / 2;
  return [-wing.begin - half, -wing.begin + half, wing.begin - half, wing.begin + half].flatMap((x, place) =>
    linePieces([outline], { x, y: minY - 1 }, { x, y: maxY + 1 }, 'inside').map(({ from, to }, index) =>
      sheetPath(`saw-${place}-${index}`, 'outline', polyline(from, to)),
    ),
  );
};

/** What each piece is called, in the middle of it at x; the centre's beside the centreline. */
const pieceNames = (outline: Path, { wing }: Sole): readonly Item[] => {
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const places = [
    { text: 'WING', x: (minX - wing.begin) / 2 },
    { text: 'CENTRE', x: wing.begin / 3 },
    { text: 'WING', x: (maxX + wing.begin) / 2 },
  ];
  return places.flatMap(({ text, x }, index) => {
    const [piece] = linePieces([outline], { x, y: minY - 1 }, { x, y: maxY + 1 }, 'inside');
    if (piece === undefined) return [];
    return [sheetText(`piece-${index}`, 'heading', between(piece.from, piece.to, 0.6), text, 'middle')];
  });
};

/** The cauls from above, seen on the bridge: its footprint, sawn apart where the wings begin, with holes over the locating pins. */
export const clampPlan = (bridge: BridgePlace, sole: Sole, clearance: number, hand: Hand): readonly Item[] => {
  const { outline } = bridge.footprint;
  const { minY, maxY } = pathBounds(outline);
  const holes = bridge.locating.map((hole) => ({ ...hole, diameter: hole.diameter + clearance }));
  const sided: readonly Item[] = [
    sheetPath('footprint', 'outline', outline),
    ...sawLines(outline, sole),
    ...pieceNames(outline, sole),
    sheetPath('centreline', 'centreline', polyline({ x: 0, y: minY - BEYOND }, { x: 0, y: maxY + BEYOND })),
    ...drawHoles(holes, 'locating'),
    ...drawSides(bridge),
  ];
  return [...sided.map((item) => handedItem(hand, item)), ...drawNutArrow(0, minY - AHEAD)];
};
