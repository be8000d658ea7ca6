import type { RepairStep } from '../../derive/createRepairStep';
import { pathBounds } from '../../geom/pathBounds';
import type { Path, Point } from '../../geom/types';
import type { FormerPlace, HoleMatch } from '../../repair/types';
import { drawHoles } from '../drawHoles';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item, Role } from '../types';
import { hatchLines } from './hatchLines';

/** Hatching of the old footprint that shows: mm apart, and its slope. */
const HATCH_APART = 2;
const HATCH_ANGLE = Math.PI / 4;
/** From the outlines to their words, mm: beyond the ends of the board edges and of the centreline. */
const TO_WORDS = 9.5;
/** Shorter than this a residual cannot be seen, mm. */
const UNSEEN = 0.02;

const OLD_BRIDGE = 'old bridge';
const SHOWING = 'old footprint showing';

const former = (id: string, part: string, path: Path, role: Role = 'former'): Item => ({
  kind: 'path',
  id,
  part,
  role,
  layer: 'former',
  path,
});

const drawFormer = ({ outline, holes, slot }: FormerPlace): readonly Item[] => [
  former('old-bridge', OLD_BRIDGE, outline),
  ...(slot === null ? [] : [former('old-slot', 'old slot', slot.outline)]),
  ...drawHoles(holes, 'former').map((item): Item => (item.role === 'hole' ? { ...item, role: 'former' } : item)),
];

/** From the middle of each new hole to that of its old one, true length. */
const drawResiduals = ({ pairs }: HoleMatch): readonly Item[] =>
  pairs.flatMap(({ pin, old, placed }) =>
    Math.hypot(placed.x, placed.y) < UNSEEN
      ? []
      : [former(`off-${pin.id}`, `${pin.label} to ${old.label}`, polyline(pin.centre, old.centre), 'mark')],
  );

const drawShowing = (outlines: readonly Path[]): readonly Item[] => [
  ...outlines.map((path, index) => former(`showing-${index}`, SHOWING, path, 'cross')),
  ...hatchLines(outlines, HATCH_APART, HATCH_ANGLE).map(({ from, to }, index) =>
    former(`showing-hatch-${index}`, SHOWING, polyline(from, to), 'cross'),
  ),
];

/**
 * The bridge that was there, over the new one: its outline, holes and slot, how far each hole is off, and hatched what
 * shows of it. Instrument frame. back: y of the hindmost edge of the new bridge.
 */
export const drawRepair = ({ place, match, areas }: RepairStep, back: number): readonly Item[] => {
  if (!place.ok) return [];
  const { minX, maxX, maxY } = pathBounds(place.value.outline);
  const showing = areas?.ok ? areas.value.showing : null;
  const shown = showing !== null && showing.area >= 0.5 ? `, ${showing.area.toFixed(0)} mm² showing` : '';
  const at: Point = { x: minX + (maxX - minX) / 4, y: Math.max(maxY, back) + TO_WORDS };
  return [
    ...(showing === null ? [] : drawShowing(showing.outlines)),
    ...drawFormer(place.value),
    ...(match?.ok ? drawResiduals(match.value) : []),
    {
      kind: 'text',
      id: 'old-bridge-name',
      part: OLD_BRIDGE,
      role: 'label',
      layer: 'former',
      at,
      text: `${OLD_BRIDGE}${shown}`,
      height: TEXT_HEIGHT.label,
      anchor: 'middle',
      angle: 0,
    },
  ];
};
