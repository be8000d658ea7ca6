import type { Point } from '../../core/geom/types';
import { themeOf } from '../theme';

/** What is painted over the drawing, all in screen pixels. */
export interface OverlayState {
  readonly scheme: 'light' | 'dark';
  /** Nodes of the outline: corners are square, smooth ones round. */
  readonly nodes: readonly { readonly at: Point; readonly smooth: boolean; readonly chosen: boolean }[];
  /** Handles of the chosen nodes, each with its node. */
  readonly handles: readonly { readonly at: Point; readonly node: Point }[];
  /** Lines that a drag snapped to, and from pick to pick while measuring. */
  readonly guides: readonly { readonly from: Point; readonly to: Point }[];
  /** What was picked to measure between. */
  readonly picks: readonly Point[];
  /** Each line of words under the one before. */
  readonly words: { readonly at: Point; readonly lines: readonly string[] } | null;
  /** Of the view, pixels. */
  readonly width: number;
}

/** Half the side of a square node and radius of a round one, pixels. */
const NODE = 4;
const CHOSEN_NODE = 5.5;
const HANDLE = 4;
const PICK = { radius: 7, arm: 10 };
/** Words stand so far from the place that they speak of, pixels. */
const BESIDE = { x: 16, y: -14 };
const LINE = 19;
const FONT = '14px "DejaVu Sans Condensed", sans-serif';
/** So many nodes are marked by plain dots: squares and rounds would lie over one another. */
const MANY = 80;
const DOT = 2.5;

type Context = CanvasRenderingContext2D;

const circle = (context: Context, { x, y }: Point, radius: number): void => {
  context.moveTo(x + radius, y);
  context.arc(x, y, radius, 0, 2 * Math.PI);
};
const line = (context: Context, from: Point, to: Point): void => {
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
};

/** One pen for many shapes: they are filled where there is a fill, then drawn. */
const draw = (context: Context, width: number, fill: string | null, shapes: () => void): void => {
  context.beginPath();
  shapes();
  context.lineWidth = width;
  if (fill !== null) {
    context.fillStyle = fill;
    context.fill();
  }
  context.stroke();
};

const drawNodes = (context: Context, nodes: OverlayState['nodes'], half: number): void => {
  for (const { at, smooth } of nodes)
    if (smooth) circle(context, at, half);
    else context.rect(at.x - half, at.y - half, 2 * half, 2 * half);
};

const write = (context: Context, { words, width }: OverlayState, ink: string, sheet: string): void => {
  if (words === null) return;
  const { x, y } = words.at;
  // The words stand on the side that has more room.
  const left = x > width / 2;
  const top = Math.max(LINE, y + BESIDE.y - LINE * (words.lines.length - 1));
  context.font = FONT;
  context.textAlign = left ? 'right' : 'left';
  const at = left ? x - BESIDE.x : x + BESIDE.x;
  for (const [index, text] of words.lines.entries()) {
    const long = context.measureText(text).width + 8;
    context.fillStyle = sheet;
    context.fillRect(left ? at - long + 4 : at - 4, top + (index - 1) * LINE + 5, long, LINE);
    context.fillStyle = ink;
    context.fillText(text, at, top + index * LINE);
  }
};

/** Paints over the drawing what has one size on screen however far it is magnified; on a canvas whose unit is a pixel. */
export const paintOverlay = (context: Context, state: OverlayState): void => {
  const theme = themeOf(state.scheme);
  const face = theme.fill('outline') ?? '';
  context.save();
  context.strokeStyle = theme.chosen;
  context.setLineDash([6, 4]);
  draw(context, 1, null, () => {
    for (const { from, to } of state.guides) line(context, from, to);
  });
  context.setLineDash([]);
  draw(context, 1.2, null, () => {
    for (const { at, node } of state.handles) line(context, node, at);
  });
  const others = state.nodes.filter(({ chosen }) => !chosen);
  if (others.length > MANY) {
    context.fillStyle = theme.chosen;
    for (const { at } of others) context.fillRect(at.x - DOT, at.y - DOT, 2 * DOT, 2 * DOT);
  } else draw(context, 1.3, face, () => drawNodes(context, others, NODE));
  draw(context, 1.6, face, () => {
    for (const { at } of state.handles) circle(context, at, HANDLE);
  });
  // Last, so that handles close by never hide their node.
  draw(context, 2, theme.chosen, () =>
    drawNodes(
      context,
      state.nodes.filter(({ chosen }) => chosen),
      CHOSEN_NODE,
    ),
  );
  draw(context, 2, null, () => {
    for (const at of state.picks) {
      circle(context, at, PICK.radius);
      line(context, { x: at.x - PICK.arm, y: at.y }, { x: at.x + PICK.arm, y: at.y });
      line(context, { x: at.x, y: at.y - PICK.arm }, { x: at.x, y: at.y + PICK.arm });
    }
  });
  write(context, state, theme.chosen, face);
  context.restore();
};
