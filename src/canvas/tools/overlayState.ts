import type { BridgePlace, SlotPlace } from '../../core/bridge/types';
import { anchorPlace } from '../../core/drawing/measure/anchorPlace';
import { type Measured, measuredOf } from '../../core/drawing/measure/measuredOf';
import { measuredWords } from '../../core/drawing/measure/measuredWords';
import { wantedOf } from '../../core/drawing/measure/wantedOf';
import { nodesAmong } from '../../core/drawing/nodes/nodePart';
import { nodesOf } from '../../core/geom/edit/nodesOf';
import { between } from '../../core/geom/points';
import type { SnapLine } from '../../core/geom/snap/types';
import type { Point } from '../../core/geom/types';
import type { AppState } from '../../store/types';
import type { ToolView } from '../handTools';
import type { Drag } from './createDrag';
import { frameOf } from './frame';
import { outlineInHand } from './outlineInHand';
import type { OverlayState } from './paintOverlay';

/** Farther than any view of a bridge reaches from its front edge, mm. */
const FAR = 2000;

/** Its ends lie where they lie however far along the line something is dragged, so that its dashes stay where they are. */
const ends = (line: SnapLine): readonly [Point, Point] => {
  if (line.kind === 'x')
    return [
      { x: line.value, y: -FAR },
      { x: line.value, y: FAR },
    ];
  if (line.kind === 'y')
    return [
      { x: -FAR, y: line.value },
      { x: FAR, y: line.value },
    ];
  const share = FAR / Math.hypot(line.direction.x, line.direction.y);
  const { x, y } = { x: line.direction.x * share, y: line.direction.y * share };
  const { through } = line;
  return [
    { x: through.x - x, y: through.y - y },
    { x: through.x + x, y: through.y + y },
  ];
};

/** Where a drag's words stand, and the lines that it snapped to, in the frame in which it began. */
const ofDrag = (drag: Drag | null): Pick<OverlayState, 'guides' | 'words'> => {
  const shown = drag?.shown() ?? null;
  if (drag === null || shown === null) return { guides: [], words: null };
  const { frame } = drag;
  const guides = shown.lines.map((line) => {
    const [from, to] = ends(line);
    return { from: frame.onScreen(from), to: frame.onScreen(to) };
  });
  return { guides, words: { at: frame.onScreen(shown.at), lines: shown.words } };
};

const middleOf = (measured: Measured): Point =>
  measured.kind === 'angle' ? measured.corner : between(measured.from, measured.to, 0.5);

/** Places picked to measure between, and what was measured. */
const ofPicks = (
  { handwork: { picks, measure, tool } }: AppState,
  bridge: BridgePlace,
  slot: SlotPlace,
  onScreen: (instrument: Point) => Point,
  show: (mm: number) => string,
): Pick<OverlayState, 'guides' | 'words' | 'picks'> => {
  if (tool !== 'between') return { guides: [], words: null, picks: [] };
  const places = picks.flatMap((pick) => anchorPlace(pick, bridge, slot) ?? []).map(onScreen);
  const wanted = wantedOf(measure, picks, 'straight');
  const measured = wanted && measuredOf(wanted, bridge, slot);
  if (measured === null) return { guides: [], words: null, picks: places };
  const line = (from: Point, to: Point) => ({ from: onScreen(from), to: onScreen(to) });
  const guides =
    measured.kind === 'angle'
      ? [line(measured.corner, measured.from), line(measured.corner, measured.to)]
      : [line(measured.from, measured.to)];
  return { guides, words: { at: onScreen(middleOf(measured)), lines: [measuredWords(measured, show)] }, picks: places };
};

/** All that lies over the drawing now; null when there is nothing, or the bridge could not be computed. */
export const overlayState = (
  state: AppState,
  view: ToolView,
  drag: Drag | null,
  show: (mm: number) => string,
): OverlayState | null => {
  const { bridge, slot } = state.derived;
  if (!bridge.ok || !slot.ok || state.device.station !== 'draw') return null;
  const chosen = new Set(nodesAmong(state.selection));
  const outline = outlineInHand(state);
  const nodes = outline === null ? [] : nodesOf(outline.path);
  const frame = frameOf(view, state.project.instrument.hand, bridge.value.front);
  const onScreen = ({ x, y }: Point): Point => frame.onScreen({ x, y: y - bridge.value.front });
  const dragged = ofDrag(drag);
  const measured = ofPicks(state, bridge.value, slot.value, onScreen, show);
  return {
    scheme: view.scheme(),
    width: view.size().width,
    nodes: nodes.map(({ at, index, join }) => ({
      at: frame.onScreen(at),
      smooth: join === 'smooth',
      chosen: chosen.has(index),
    })),
    handles: nodes
      .filter(({ index }) => chosen.has(index))
      .flatMap(({ at, before, after }) =>
        [before, after].flatMap((handle) =>
          handle === null ? [] : [{ at: frame.onScreen(handle), node: frame.onScreen(at) }],
        ),
      ),
    guides: [...dragged.guides, ...measured.guides],
    picks: measured.picks,
    words: dragged.words ?? measured.words,
  };
};
