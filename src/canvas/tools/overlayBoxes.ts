import { aroundAll } from '../../core/geom/aroundAll';
import type { Bounds, Point } from '../../core/geom/types';
import { widened } from '../repaint/boxes';
import { same } from '../repaint/same';
import { layWords } from './layWords';
import { MARK, type OverlayState } from './paintOverlay';

const around = (...points: readonly Point[]): Bounds =>
  widened(aroundAll(points.map(({ x, y }) => ({ minX: x, minY: y, maxX: x, maxY: y }))), MARK);

/** Boxes of the marks that are not what they were, as they were and as they are. */
const changed = <Mark>(
  before: readonly Mark[],
  after: readonly Mark[],
  box: (mark: Mark) => Bounds,
): readonly Bounds[] =>
  before.length === after.length
    ? after.flatMap((mark, index) => {
        const old = before[index] as Mark;
        return same(old, mark) ? [] : [box(old), box(mark)];
      })
    : [...before, ...after].map(box);

const NOTHING = { nodes: [], handles: [], guides: [], picks: [], words: null } as const;

/** Where what lies over the drawing looks different, pixels. measure: how long a text is, pixels. */
export const overlayBoxes = (
  before: OverlayState | null,
  after: OverlayState | null,
  measure: (text: string) => number,
): readonly Bounds[] => {
  const [was, is] = [before ?? NOTHING, after ?? NOTHING];
  const written = (state: OverlayState | null): readonly Bounds[] =>
    state === null || state.words === null
      ? []
      : layWords(state.words, state.width, measure).map(({ ground }) => widened(ground, 1));
  return [
    ...changed(was.nodes, is.nodes, ({ at }) => around(at)),
    ...changed(was.handles, is.handles, ({ at, node }) => around(at, node)),
    ...changed(was.guides, is.guides, ({ from, to }) => around(from, to)),
    ...changed(was.picks, is.picks, (at) => around(at)),
    ...(same(was.words, is.words) ? [] : [...written(before), ...written(after)]),
  ];
};
