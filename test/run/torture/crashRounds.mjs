import { setTimeout as pause } from 'node:timers/promises';
import { editInPage, tellOfWritings } from './editInPage.mjs';
import { killedBrowser } from './killedBrowser.mjs';

/** @typedef {import('playwright').Page} Page */
/** @typedef {import('./editInPage.mjs').Edit} Edit */
/** @typedef {import('./editInPage.mjs').Note} Note */
/** @typedef {import('./editInPage.mjs').Values} Values */

/** Boxes that are typed into, each with its least value; tenths above it are typed. */
const BOXES = /** @type {const} */ ({
  'instrument.widths.nut': 44,
  'instrument.widths.twelfth': 56,
  'bridge.thickness': 8,
});
const PATHS = Object.keys(BOXES);

/** A committed change may be lost when it is younger than this, ms. */
const YOUNG = 1000;

/** Every so many rounds, what is kept is damaged on the disk. */
const DAMAGE_EVERY = 5;

/**
 * Random numbers from 0 to below 1, the same for each seed.
 * @param {number} seed
 */
const randomOf = (seed) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/**
 * @param {() => number} random
 * @param {number} count
 * @returns {readonly Edit[]}
 */
const plan = (random, count) =>
  Array.from({ length: count }, () => {
    // Now and then a rest in which what is there is kept; else faster than it can be.
    const rest = random() < 0.1 ? 300 + random() * 600 : random() * 60;
    const dice = random();
    if (dice < 0.15) return { what: 'undo', pause: rest };
    if (dice < 0.25) return { what: 'redo', pause: rest };
    if (dice < 0.28) return { what: 'hide', pause: rest };
    const [path = '', least = 0] = Object.entries(BOXES)[Math.floor(random() * PATHS.length)] ?? [];
    return { what: 'set', path, value: Math.round(least * 10 + random() * 40) / 10, pause: rest };
  });

/** @param {Page} page */
const opened = async (page) => {
  await page.locator('canvas').waitFor();
  /** @type {Record<string, number>} */
  const values = {};
  for (const path of PATHS) values[path] = Number(await page.locator(`input[data-path="${path}"]`).inputValue());
  return values;
};

/** @param {Values} one @param {Values} other */
const same = (one, other) => PATHS.every((path) => one[path] === other[path]);

/** @typedef {{ readonly values: Values, readonly at: number }} State */

/**
 * The place of the last one that is so; -1 for none.
 * @param {readonly State[]} log
 * @param {(state: State) => boolean} so
 */
const lastOf = (log, so) => log.reduce((last, state, index) => (so(state) ? index : last), -1);

/**
 * Puts other texts in place of those that the database holds, without their sums; answers with those that were there.
 * @param {Page} page
 * @param {Readonly<Record<string, string>> | null} back texts by id, or null to change one character of each
 * @returns {Promise<Record<string, string>>}
 */
const rewrite = (page, back) =>
  page.evaluate(
    (texts) =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('saddlemark');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          /** @type {Record<string, string>} */
          const before = {};
          const writing = request.result.transaction('projects', 'readwrite');
          const cursor = writing.objectStore('projects').openCursor();
          cursor.onsuccess = () => {
            const at = cursor.result;
            if (at === null) return;
            const { text } = at.value;
            before[String(at.key)] = text;
            const place = text.search(/\d/) + Math.floor(Math.random() * 4000);
            const digit = place + text.slice(place).search(/\d/);
            const other = text.slice(0, digit) + String((Number(text[digit]) + 1) % 10) + text.slice(digit + 1);
            at.update({ ...at.value, text: texts?.[String(at.key)] ?? other });
            at.continue();
          };
          writing.oncomplete = () => {
            request.result.close();
            resolve(before);
          };
        };
      }),
    back,
  );

/**
 * What came of it.
 * @typedef {object} CrashRun
 * @property {number} kills
 * @property {number} edits
 * @property {number} writings that the database said were done
 * @property {number} damaged times that what was kept was damaged on the disk
 * @property {readonly string[]} lost the app opened something older than what was said to be kept, or something that never was
 * @property {readonly string[]} late it opened something older than a second before the kill
 * @property {readonly string[]} broken what was damaged opened as good, or what was good did not open
 */

/**
 * Kills a browser again and again in the middle of random edits, and looks at what the app opens after each time.
 * @param {{ program: string, address: string, rounds: number, edits: number, seed: number, say?: (line: string) => void }} run
 * @returns {Promise<CrashRun>}
 */
export const crashRounds = async ({ program, address, rounds, edits, seed, say = () => {} }) => {
  const random = randomOf(seed);
  const browser = killedBrowser(program);
  const count = { kills: 0, edits: 0, writings: 0, damaged: 0 };
  /** @type {Record<'lost' | 'late' | 'broken', string[]>} */
  const faults = { lost: [], late: [], broken: [] };
  /** What the project held after each edit since the app was opened, and when. @type {State[]} */
  let log = [];
  let keptFrom = 0;
  let killedAt = 0;

  /** @param {Note} note */
  const take = (note) => {
    if ('edit' in note) {
      log.push({ values: note.edit, at: note.at });
      count.edits += 1;
      return;
    }
    count.writings += 1;
    // The same figures may come again: the first time that they may stand for is certain.
    const at = log.findIndex(({ values }, index) => index >= keptFrom && same(values, note.kept));
    if (at >= 0) keptFrom = at;
  };

  /** @param {number} round @param {Values} found */
  const judge = (round, found) => {
    const last = lastOf(log, ({ values }) => same(values, found));
    const told = `round ${round} of seed ${seed}: ${JSON.stringify(found)}`;
    if (last < keptFrom) faults.lost.push(`${told}, state ${last} of ${log.length - 1}, kept was ${keptFrom}`);
    const old = lastOf(log, ({ at }) => at < killedAt - YOUNG);
    if (last < old) faults.late.push(`${told}, state ${last} of ${log.length - 1}, a second before it was at ${old}`);
  };

  /** @param {Page} page @param {number} round */
  const damage = async (page, round) => {
    const before = await opened(page);
    const texts = await rewrite(page, null);
    if (Object.keys(texts).length === 0) return;
    count.damaged += 1;
    await page.reload();
    const word = page.getByRole('alert').filter({ hasText: 'could not be opened' });
    await word.waitFor({ timeout: 10_000 }).catch(() => faults.broken.push(`round ${round}: damaged, and not said so`));
    await rewrite(page, texts);
    await page.reload();
    if (!same(await opened(page), before)) faults.broken.push(`round ${round}: mended, and not opened`);
  };

  try {
    for (let round = 0; round <= rounds; round += 1) {
      const page = await browser.start();
      page.on('pageerror', (error) => faults.broken.push(`round ${round}: ${error.message}`));
      await page.exposeFunction('note', take);
      await page.addInitScript(tellOfWritings, PATHS);
      await page.goto(address);
      const found = await opened(page);
      if (round > 0) judge(round, found);
      if (round > 0 && round % DAMAGE_EVERY === 0) await damage(page, round);
      if (round === rounds) break;

      log = [{ values: found, at: 0 }];
      keptFrom = 0;
      const until = 1 + Math.floor(random() * edits);
      const enough = new Promise((resolve) => {
        const look = setInterval(() => {
          if (log.length <= until) return;
          clearInterval(look);
          resolve(null);
        }, 5);
      });
      const editing = page.evaluate(editInPage, { edits: plan(random, edits), start: found }).catch(() => {});
      await Promise.race([enough, editing]);
      await pause(random() * 400);
      killedAt = Date.now();
      await browser.kill();
      count.kills += 1;
      say(`round ${round + 1}: killed after ${log.length - 1} edits, ${keptFrom} of them surely kept`);
    }
  } finally {
    await browser.end();
  }
  return { ...count, ...faults };
};
