/** @typedef {import('playwright').Page} Page */
/** @typedef {{ readonly text: string, readonly sum: string }} KeptText */

/**
 * What the database of a page's browser holds.
 * @typedef {object} Kept
 * @property {readonly string[]} entries ids of what the library lists
 * @property {Readonly<Record<string, KeptText>>} projects by id
 * @property {readonly string[]} versions ids of earlier states
 * @property {Readonly<Record<string, KeptText>>} versionTexts by id of the state
 */

/**
 * @param {Page} page
 * @returns {Promise<Kept>}
 */
export const readKeptIn = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('saddlemark');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const reading = request.result.transaction(['entries', 'projects', 'versions', 'versionTexts']);
          const keys = (/** @type {string} */ table) => reading.objectStore(table).getAllKeys();
          const values = (/** @type {string} */ table) => reading.objectStore(table).getAll();
          const [entries, versions] = [keys('entries'), keys('versions')];
          const [projects, versionTexts] = [
            { keys: keys('projects'), values: values('projects') },
            { keys: keys('versionTexts'), values: values('versionTexts') },
          ];
          const byId = (/** @type {{ keys: IDBRequest, values: IDBRequest }} */ table) =>
            Object.fromEntries(
              table.keys.result.map((/** @type {string} */ id, /** @type {number} */ at) => [
                id,
                table.values.result[at],
              ]),
            );
          reading.onabort = () => reject(reading.error);
          reading.oncomplete = () => {
            request.result.close();
            resolve({
              entries: entries.result.map(String),
              projects: byId(projects),
              versions: versions.result.map(String),
              versionTexts: byId(versionTexts),
            });
          };
        };
      }),
  );

/**
 * Puts other texts in place of those that the database holds, without their sums; answers with those that were there.
 * @param {Page} page
 * @param {Readonly<Record<string, string>> | null} back texts by id, or null to change one character of each
 * @returns {Promise<Record<string, string>>}
 */
export const rewriteIn = (page, back) =>
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
