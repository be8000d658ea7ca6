import type { FenceSettings } from '../../../bridge/fenceSettings';
import type { SlotCut } from '../../../bridge/slotCuts';
import type { BridgePlace, SlotPlace } from '../../../bridge/types';
import type { Hand } from '../../../document/types';
import { linearDimension } from '../../../drawing/dimensions/linearDimension';
import { drawNutArrow, drawSides } from '../../../drawing/drawSides';
import { handed, handedItem } from '../../../drawing/handed';
import { polyline } from '../../../drawing/polyline';
import type { Item } from '../../../drawing/types';
import { pathBounds } from '../../../geom/pathBounds';
import type { Point } from '../../../geom/types';
import { sheetPath, sheetText } from '../../sheetItems';

const NUT_ARROW = 24;
/** From the slot's back wall to the line that tells its length, mm. */
const TO_LENGTH = 7;

const LETTER = { treble: 'T', centre: 'C', bass: 'B' } as const;
/** How far the words of its length stand aside of the centreline, mm. */
const ASIDE = 18;

/** Edge of the fence for each pass, from end to end of the bridge, with its name. */
const fenceLines = ({ half, passes }: FenceSettings, front: number): readonly Item[] =>
  passes.flatMap(({ wall, treble, bass }): readonly Item[] => [
    sheetPath(`fence-${wall}`, 'rule-line', polyline({ x: -half, y: front - bass }, { x: half, y: front - treble })),
    sheetText(
      `fence-${wall}-name`,
      'note',
      { x: wall === 'front' ? half / 2 : 0 - half / 2, y: front - (bass + treble) / 2 + (wall === 'front' ? -6 : 6) },
      `fence, ${wall}-wall pass`,
      'middle',
    ),
  ]);

/** The bridge with its slot at true size, from above, dimensioned; with the fence where a cutter is known. */
export const slotDrawing = (
  bridge: BridgePlace,
  slot: SlotPlace,
  cuts: readonly SlotCut[],
  lengthWords: string,
  fence: FenceSettings | null,
  hand: Hand,
): readonly Item[] => {
  const { outline } = bridge.footprint;
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const on = (point: Point): Point => handed(hand, point);
  const { treble, bass } = slot.ends;
  const ends = hand === 'right' ? [bass, treble] : [treble, bass];
  const [from, to] = ends.map(on) as [Point, Point];
  const { front } = bridge;
  const top =
    fence === null ? minY : Math.min(minY, ...fence.passes.map((pass) => front - Math.max(pass.treble, pass.bass)));
  const sided: readonly Item[] = [
    sheetPath('footprint', 'outline', outline),
    sheetPath('slot', 'slot', slot.outline),
    sheetPath('centreline', 'centreline', polyline({ x: 0, y: minY - 6 }, { x: 0, y: maxY + 6 })),
    sheetPath('front-line', 'cross', polyline({ x: minX - 3, y: front }, { x: maxX + 3, y: front })),
    ...(fence === null ? [] : fenceLines(fence, front)),
    ...drawSides(bridge),
  ];
  return [
    ...sided.map((item) => handedItem(hand, item)),
    ...cuts.flatMap(({ id, x, toFrontWall, edgeBehind }): readonly Item[] => {
      const edge = front + edgeBehind;
      return linearDimension(on({ x, y: edge }), on({ x, y: edge + toFrontWall }), {
        id: `cut-${id}`,
        part: 'bridge.slot.fromFront',
        layer: 'sheet',
        text: LETTER[id],
        direction: 'along',
        offset: 0,
      });
    }),
    ...linearDimension(from, to, {
      id: 'length',
      part: 'bridge.slot.length',
      layer: 'sheet',
      text: lengthWords,
      slide: ASIDE,
      direction: 'aligned',
      offset: TO_LENGTH,
      words: 'below',
    }),
    ...drawNutArrow(0, top - NUT_ARROW),
  ];
};
