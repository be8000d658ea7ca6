import { type Browser, chromium, type Page } from 'playwright';
import { measureInPage } from './measureInPage';
import { dragNode, nodeDragRows } from './nodeDragRow';
import { type Row, row } from './row';
import { percentile } from './statistics';
import { typeFigures, typingRow } from './typingRow';

const RATES = [1, 4] as const;
const LOADS = 9;
const MOVES = 180;
/** Radius of the circle that the drag goes along, px, and how many moves once around takes. */
const DRAG = { radius: 120, around: 60 };
const PRINTS = { pages: 5, warm: 8 };

const FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update'];

/** Opens the app with nothing cached, at this CPU slow-down, waits until the drawing is there, then hands over the page. */
async function onFreshPage<T>(
  browser: Browser,
  origin: string,
  rate: number,
  use: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true });
  try {
    const page = await context.newPage();
    await page.addInitScript(measureInPage);
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    // A new window brings work of the browser's own, which a maker's browser has long done.
    await page.waitForTimeout(1200);
    await page.goto(origin);
    await page.waitForFunction(() => window.saddlemarkBench.usable !== null);
    // Whatever follows the first drawing (what loads behind it, what is kept for use offline) must not fall into what is measured.
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(1500);
    return await use(page);
  } finally {
    await context.close();
  }
}

const readLoad = (page: Page) =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('section[aria-label="Drawing"] canvas');
    const pixels = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    const parts = document.querySelectorAll('ul[aria-label="Parts of the drawing"] li').length;
    return {
      painted: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
      usable: window.saddlemarkBench.usable ?? Number.NaN,
      drawn: parts > 0 && pixels.some((value) => value !== 0),
    };
  });

async function loadRows(browser: Browser, origin: string): Promise<readonly Row[]> {
  const medians: { painted: number; usable: number }[] = [];
  for (const rate of RATES) {
    const loads: Awaited<ReturnType<typeof readLoad>>[] = [];
    for (let load = 0; load < LOADS; load += 1) loads.push(await onFreshPage(browser, origin, rate, readLoad));
    if (!loads.every(({ drawn }) => drawn)) throw new Error('the app opened without a drawing');
    const median = (of: 'painted' | 'usable') =>
      percentile(
        loads.map((each) => each[of]),
        0.5,
      );
    medians.push({ painted: median('painted'), usable: median('usable') });
  }
  const note = `median of ${LOADS} cold loads; after the slash at 4x CPU slow-down`;
  return [
    row(
      'first contentful paint',
      'ms',
      medians.map(({ painted }) => painted),
      [180, 450],
      note,
    ),
    row(
      'drawing usable',
      'ms',
      medians.map(({ usable }) => usable),
      [220, 620],
      note,
    ),
  ];
}

/** Drags from the middle of the drawing around a circle. */
async function drag(page: Page) {
  const box = await page.locator('section[aria-label="Drawing"] canvas').boundingBox();
  if (box === null) throw new Error('the drawing has no place on the screen');
  const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(centre.x, centre.y);
  await page.evaluate(() => {
    window.saddlemarkBench.recording = true;
  });
  await page.mouse.down();
  for (let move = 1; move <= MOVES; move += 1) {
    const angle = (2 * Math.PI * move) / DRAG.around;
    await page.mouse.move(centre.x + DRAG.radius * Math.sin(angle), centre.y + DRAG.radius * (1 - Math.cos(angle)));
  }
  await page.mouse.up();
  const frames = await page.evaluate(() => {
    window.saddlemarkBench.recording = false;
    return window.saddlemarkBench.frames;
  });
  const moves = frames.map(({ moved }) => moved);
  const during = frames.slice(moves.indexOf(true), moves.lastIndexOf(true) + 1);
  const work = during.filter(({ moved }) => moved).map((frame) => frame.work);
  const gaps = during.slice(1).map(({ at }, index) => at - (during[index]?.at ?? Number.NaN));
  return { work: percentile(work, 0.95), gap: percentile(gaps, 0.95), count: work.length };
}

async function dragRows(browser: Browser, origin: string): Promise<readonly Row[]> {
  const drags: Awaited<ReturnType<typeof drag>>[] = [];
  for (const rate of RATES) drags.push(await onFreshPage(browser, origin, rate, drag));
  const note = `pan of ${drags.map(({ count }) => count).join(' / ')} frames`;
  return [
    row(
      'work per drag frame, p95',
      'ms',
      drags.map(({ work }) => work),
      [4, 10],
      note,
    ),
    row(
      'gap between drag frames, p95',
      'ms',
      drags.map(({ gap }) => gap),
      [17, 20],
      note,
    ),
  ];
}

async function nodeRows(browser: Browser, origin: string): Promise<readonly Row[]> {
  const drags: Awaited<ReturnType<typeof dragNode>>[] = [];
  for (const rate of RATES) drags.push(await onFreshPage(browser, origin, rate, dragNode));
  return nodeDragRows(drags);
}

async function typeRow(browser: Browser, origin: string): Promise<Row> {
  const gaps: (readonly number[])[] = [];
  for (const rate of RATES) gaps.push(await onFreshPage(browser, origin, rate, typeFigures));
  return typingRow(gaps);
}

/** Milliseconds from each click on the button to its download. */
async function print(page: Page): Promise<readonly number[]> {
  const button = page.getByRole('button', { name: 'Download PDF' });
  for (let click = 0; click <= PRINTS.warm; click += 1)
    await Promise.all([page.waitForEvent('download'), button.click()]);
  return page.evaluate(() => window.saddlemarkBench.pdf);
}

async function printRow(browser: Browser, origin: string): Promise<Row> {
  const first: number[] = [];
  const warm: number[] = [];
  for (let visit = 0; visit < PRINTS.pages; visit += 1) {
    const [one = Number.NaN, ...others] = await onFreshPage(browser, origin, 1, print);
    first.push(one);
    warm.push(...others);
  }
  const note = `from click to download; medians of ${warm.length} / ${first.length}`;
  return row('template PDF, warm / first click', 'ms', [percentile(warm, 0.5), percentile(first, 0.5)], [10, 80], note);
}

/** What the built app takes in a real browser. */
export async function browserRows(origin: string, executablePath: string): Promise<readonly Row[]> {
  const browser = await chromium.launch({ executablePath, args: FLAGS });
  try {
    return [
      ...(await loadRows(browser, origin)),
      ...(await dragRows(browser, origin)),
      ...(await nodeRows(browser, origin)),
      await typeRow(browser, origin),
      await printRow(browser, origin),
    ];
  } finally {
    await browser.close();
  }
}
