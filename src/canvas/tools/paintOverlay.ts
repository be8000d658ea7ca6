import type { Bounds, Point } from '../../core/geom/types';
import { widened } from '../repaint/boxes';
import { themeOf } from '../theme';
import { layWords, WORDS_FONT, type Words } from './layWords';

interface OverlayNode {
  readonly at: Point;
  readonly smooth: boolean;
  readonly chosen: boolean;
}

/** What is painted over the drawing, all in screen pixels. */
export interface OverlayState {
  readonly scheme: 'light' | 'dark';
  /** Nodes of the outline: corners are square, smooth ones round. */
  readonly nodes: readonly OverlayNode[];
  /** Handles of the chosen nodes, each with its node. */
  readonly handles: readonly { readonly at: Point; readonly node: Point }[];
  /** Lines that a drag snapped to, and from pick to pick while measuring. */
  readonly guides: readonly { readonly from: Point; readonly to: Point }[];
  /** What was picked to measure between. */
  readonly picks: readonly Point[];
  readonly words: Words | null;
  /** Of the view, pixels. */
  readonly width: number;
}

/** Half the side of a square node and radius of a round one, pixels. */
const NODE = 4;
const CHOSEN_NODE = 5.5;
const HANDLE = 4;
const PICK = { radius: 7, arm: 10 };
/** What no mark reaches beyond the points that it stands for, pixels. */
export const MARK = 12;
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

/** Texts that were measured of late: the same few are asked for in each frame. */
const measured = new Map<string, number>();
const MEASURED = 50;

/** How long a text of the overlay is, pixels. */
export const wordsWidth = (context: Context, text: string): number => {
  const known = measured.get(text);
  if (known !== undefined) return known;
  context.font = WORDS_FONT;
  const { width } = context.measureText(text);
  if (measured.size >= MEASURED) measured.clear();
  measured.set(text, width);
  return width;
};

const write = (context: Context, { words, width }: OverlayState, ink: string, sheet: string): void => {
  if (words === null) return;
  for (const { text, at, ground } of layWords(words, width, (each) => wordsWidth(context, each))) {
    context.fillStyle = sheet;
    context.fillRect(ground.minX, ground.minY, ground.maxX - ground.minX, ground.maxY - ground.minY);
    context.fillStyle = ink;
    context.font = WORDS_FONT;
    context.textAlign = 'left';
    context.fillText(text, at.x, at.y);
  }
};

/** Paints over the drawing what has one size on screen however far it is magnified; on a canvas whose unit is a pixel. */
export const paintOverlay = (context: Context, state: OverlayState, box: Bounds): void => {
  const near = widened(box, MARK);
  const isNear = ({ at: { x, y } }: OverlayNode): boolean =>
    x >= near.minX && x <= near.maxX && y >= near.minY && y <= near.maxY;
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
  const others = state.nodes.filter((node) => !node.chosen && isNear(node));
  if (state.nodes.length > MANY) {
    context.fillStyle = theme.chosen;
    // On whole pixels: no edge of them blends, which would take far longer.
    for (const { at } of others) context.fillRect(Math.round(at.x - DOT), Math.round(at.y - DOT), 2 * DOT, 2 * DOT);
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
