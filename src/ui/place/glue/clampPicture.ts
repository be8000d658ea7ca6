import type { BodyPlace, BracePlace } from '../../../core/body/types';
import type { BridgePlace, SlotPlace } from '../../../core/bridge/types';
import type { Hand } from '../../../core/document/types';
import { drawHoles } from '../../../core/drawing/drawHoles';
import { handedItem } from '../../../core/drawing/handed';
import { moveItem } from '../../../core/drawing/moveItem';
import type { Item, PathItem, Role } from '../../../core/drawing/types';
import { circlePath } from '../../../core/geom/circlePath';
import { pathBounds } from '../../../core/geom/pathBounds';
import { distance } from '../../../core/geom/points';
import type { Path, Point } from '../../../core/geom/types';

/** What the picture shows, instrument frame. */
interface Clamped {
  readonly bridge: BridgePlace;
  readonly slot: SlotPlace | null;
  readonly body: Pick<BodyPlace, 'braces' | 'plate' | 'soundhole'> | null;
  /** In order of tightening. */
  readonly clamps: readonly Point[];
  readonly hand: Hand;
}

interface ClampPicture {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

/** Pad of a clamp, and the disc that its number stands on, mm. */
const PAD = 11;
const DISC = 6;
const NUMBER_HEIGHT = 9;
const WORD_HEIGHT = 7.5;
/** Room around the bridge; of the soundhole no more than its near edge is shown. */
const AROUND = 14;
const OF_SOUNDHOLE = 14;
const WORDS = 12;

const line = (id: string, part: string, role: Role, path: Path): PathItem => ({
  kind: 'path',
  id,
  part,
  role,
  layer: 'lines',
  path,
});

const word = (id: string, at: Point, text: string, height: number, anchor: 'start' | 'middle' | 'end'): Item => ({
  ...{ kind: 'text', id, part: 'clamps', role: 'heading', layer: 'text', at, text, height, anchor, angle: 0 },
});

const braceOutline = ({ from, to, width }: BracePlace): Path => {
  const half = width / 2 / distance(from, to);
  const aside = { x: (from.y - to.y) * half, y: (to.x - from.x) * half };
  const corner = (at: Point, side: 1 | -1): Point => ({ x: at.x + side * aside.x, y: at.y + side * aside.y });
  const start = corner(from, 1);
  return {
    start,
    segments: [corner(to, 1), corner(to, -1), corner(from, -1), start].map((end) => ({ kind: 'line', to: end })),
    closed: true,
  };
};

const beneath = ({ braces, plate, soundhole }: NonNullable<Clamped['body']>): readonly Item[] => [
  ...braces.map((brace) => line(brace.id, brace.part, 'beneath', braceOutline(brace))),
  ...(plate === null ? [] : [line('plate', 'bridge plate', 'beneath', plate)]),
  ...(soundhole === null ? [] : [line('soundhole', 'soundhole', 'board-edge', soundhole)]),
];

const clampItems = (clamps: readonly Point[]): readonly Item[] =>
  clamps.flatMap((at, index): readonly Item[] => [
    line(`clamp-${index}`, 'clamps', 'mark', circlePath(at, PAD)),
    line(`disc-${index}`, 'clamps', 'window', circlePath(at, DISC)),
    word(`number-${index}`, at, String(index + 1), NUMBER_HEIGHT, 'middle'),
  ]);

/** The clamps on the bridge, numbered as they are tightened, over what lies beneath; the soundhole's edge where it is near. */
export const clampPicture = ({ bridge, slot, body, clamps, hand }: Clamped): ClampPicture => {
  const { outline } = bridge.footprint;
  const bounds = pathBounds(outline);
  const hole = body?.soundhole ?? null;
  const top = Math.min(
    bounds.minY - AROUND - WORDS,
    hole === null ? bounds.minY : pathBounds(hole).maxY - OF_SOUNDHOLE,
  );
  const reach = Math.max(...clamps.map(({ x }) => Math.abs(x) + PAD), bounds.maxX, -bounds.minX) + 4;
  const low = Math.max(bounds.maxY, ...clamps.map(({ y }) => y + PAD)) + AROUND / 2;
  const over = bounds.minY - AROUND + 3;
  const side = (x: number, text: string): Item =>
    word(`side-${text}`, { x, y: over }, text, WORD_HEIGHT, x > 0 ? 'end' : 'start');
  const items: readonly Item[] = [
    ...(body === null ? [] : beneath(body)),
    line('footprint', 'footprint', 'outline', outline),
    ...(slot === null ? [] : [line('slot', 'slot', 'slot', slot.outline)]),
    ...drawHoles(bridge.locating, 'locating'),
    ...clampItems(clamps),
    side(bounds.maxX, 'TREBLE'),
    side(bounds.minX, 'BASS'),
    word('nut-side', { x: 0, y: over }, '↑ NUT', WORD_HEIGHT, 'middle'),
  ];
  return {
    width: 2 * reach,
    height: low - top,
    items: items.map((item) => moveItem(handedItem(hand, item), { x: reach, y: -top })),
  };
};
