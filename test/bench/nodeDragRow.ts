import type { Page } from 'playwright';
import { chosenNode } from '../../e2e/chosenNode';
import type { Project } from '../../src/core/document/types';
import type { Cubic, Path, Point } from '../../src/core/geom/types';
import { demoProject } from '../../src/core/kinds/demo';
import { encodeProject } from '../../src/persistence/encodeProject';
import { type Row, row } from './row';
import { percentile } from './statistics';

const NODES = 200;
const MOVES = 180;
/** Radius of the circle that the node goes along, px, and how many moves once around takes. */
const DRAG = { radius: 14, around: 60 };

/** A bridge like an egg with ripples, 150 by 32 mm: 200 curves that meet smoothly. */
const manyNodes = (): Path => {
  const at = (index: number): Point => {
    const angle = (2 * Math.PI * (index % NODES)) / NODES;
    return { x: 75 * Math.cos(angle), y: 16 + 16 * Math.sin(angle) + 0.2 * Math.sin(9 * angle) };
  };
  // A third of the way to the next node along the chord of both neighbours.
  const handle = (index: number, way: 1 | -1): Point => {
    const [here, before, after] = [at(index), at(index + NODES - 1), at(index + 1)];
    return { x: here.x + (way * (after.x - before.x)) / 6, y: here.y + (way * (after.y - before.y)) / 6 };
  };
  return {
    start: at(0),
    segments: Array.from(
      { length: NODES },
      (_, index): Cubic => ({ kind: 'cubic', c1: handle(index, 1), c2: handle(index + 1, -1), to: at(index + 1) }),
    ),
    closed: true,
  };
};

/** The demo with such a bridge, and finish left under its rim so that there is an inset to follow. */
const project = (): Project => {
  const demo = demoProject('bench', '2026-11-25T00:00:00.000Z');
  const outline = { kind: 'drawn', path: manyNodes(), symmetric: false } as const;
  return {
    ...demo,
    bridge: { ...demo.bridge, outline, rim: 0.8, pins: demo.bridge.pins && { ...demo.bridge.pins, from: 6 } },
  };
};

/** Runs in the page: counts the frames from each question to the worker that finds the insets to its answer. */
function watchInsets(): void {
  let frame = 0;
  const next = (): void => {
    frame += 1;
    requestAnimationFrame(next);
  };
  requestAnimationFrame(next);
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (this: Worker, ...given: unknown[]) {
    const asked = frame;
    this.addEventListener(
      'message',
      () => (window as unknown as { saddlemarkWaits: number[] }).saddlemarkWaits.push(frame - asked),
      { once: true },
    );
    return Reflect.apply(post, this, given);
  };
}

/** Where the chosen node is seen, found in a picture of the page: reading the page's own canvas would slow it down from then on. */
async function seenNode(page: Page): Promise<Point | null> {
  const picture = (await page.screenshot()).toString('base64');
  const other = await page.context().newPage();
  await other.setContent('<canvas style="position: absolute; inset: 0"></canvas>');
  await other.evaluate(async (source) => {
    const image = new Image();
    image.src = `data:image/png;base64,${source}`;
    await image.decode();
    const canvas = document.querySelector('canvas');
    if (canvas === null) return;
    [canvas.width, canvas.height] = [image.width, image.height];
    canvas.getContext('2d')?.drawImage(image, 0, 0);
  }, picture);
  const seen = await chosenNode(other);
  await other.close();
  await page.bringToFront();
  return seen;
}

/** What a drag took: work of each frame and between it and the next one, ms, and frames until the insets followed. */
interface NodeDrag {
  readonly work: readonly number[];
  readonly after: readonly number[];
  readonly waits: readonly number[];
}

/** Takes the node once around the circle and more, from where it lies. */
async function around(page: Page, centre: Point): Promise<NodeDrag> {
  await page.mouse.move(centre.x, centre.y);
  await page.evaluate(() => {
    Object.assign(window, { saddlemarkWaits: [] });
    window.saddlemarkBench.frames = [];
    window.saddlemarkBench.recording = true;
  });
  await page.mouse.down();
  for (let move = 1; move <= MOVES; move += 1) {
    const angle = (2 * Math.PI * move) / DRAG.around;
    await page.mouse.move(centre.x + DRAG.radius * Math.sin(angle), centre.y + DRAG.radius * (1 - Math.cos(angle)));
  }
  const found = await page.evaluate(() => {
    window.saddlemarkBench.recording = false;
    const { saddlemarkWaits } = window as unknown as { saddlemarkWaits: number[] };
    return { frames: window.saddlemarkBench.frames, waits: saddlemarkWaits };
  });
  await page.mouse.up();
  const moved = found.frames.filter((frame) => frame.moved);
  return { work: moved.map(({ work }) => work), after: moved.map(({ after }) => after), waits: found.waits };
}

/** One node of two hundred dragged around a circle, and then again: code that has not run yet is slower. */
export async function dragNode(page: Page): Promise<{ readonly first: NodeDrag; readonly second: NodeDrag }> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({
    name: 'many nodes.json',
    mimeType: 'application/json',
    buffer: Buffer.from(encodeProject(project())),
  });
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByText(`Nodes of the outline (${NODES})`).click();
  await page.getByRole('button', { name: /^Node 26,/ }).click();
  await page.evaluate(watchInsets);
  await page.waitForTimeout(400);
  const centre = await seenNode(page);
  if (centre === null) throw new Error('the chosen node is not shown');
  const first = await around(page, centre);
  const label = await page.getByRole('button', { name: 'Undo', exact: true }).getAttribute('title');
  if (!label?.includes('Move node 26')) throw new Error(`the node was not moved: ${label}`);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.waitForTimeout(1000);
  return { first, second: await around(page, centre) };
}

const both = (drags: readonly NodeDrag[], of: 'work' | 'after' | 'waits', share: number): readonly number[] =>
  drags.map((drag) => percentile(drag[of], share));
const inWords = (figures: readonly number[]): string => figures.map((figure) => figure.toFixed(1)).join(' / ');

/** Whether a node of a large outline follows the hand, at the two rates. */
export const nodeDragRows = (drags: readonly Awaited<ReturnType<typeof dragNode>>[]): readonly Row[] => {
  const [first, second] = [drags.map((drag) => drag.first), drags.map((drag) => drag.second)];
  return [
    row(
      `work per frame, one node of ${NODES} dragged, p95`,
      'ms',
      both(second, 'work', 0.95),
      [4, 10],
      `median ${inWords(both(second, 'work', 0.5))}, ${second.map(({ work }) => work.length).join(' / ')} frames`,
    ),
    row(
      'the same in the first drag after loading, p95',
      'ms',
      both(first, 'work', 0.95),
      [],
      `median ${inWords(both(first, 'work', 0.5))}`,
    ),
    row(
      'sums between two such frames, p95',
      'ms',
      both(second, 'after', 0.95),
      [],
      `median ${inWords(both(second, 'after', 0.5))}; first drag ${inWords(both(first, 'after', 0.95))}`,
    ),
    row(
      'frames until the insets follow, p95',
      'frames',
      both(second, 'waits', 0.95),
      [2, 2],
      `median ${both(second, 'waits', 0.5).join(' / ')}; first drag ${both(first, 'waits', 0.95).join(' / ')}`,
    ),
  ];
};
