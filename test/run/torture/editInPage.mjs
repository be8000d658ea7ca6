/**
 * What is noted from within the page.
 * @typedef {{ readonly edit: Values, readonly at: number } | { readonly kept: Values }} Note
 * @typedef {Readonly<Record<string, number>>} Values figures of a project by path
 * @typedef {{ readonly what: 'undo' | 'redo' | 'hide', readonly pause: number }
 *   | { readonly what: 'set', readonly path: string, readonly value: number, readonly pause: number }} Edit
 */

/**
 * Runs in the page before the app: tells of every project whose writing the database has said to be done.
 * @param {readonly string[]} paths
 */
export const tellOfWritings = (paths) => {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (value, key) {
    if (this.name === 'projects') {
      const project = JSON.parse(value.text);
      const kept = Object.fromEntries(
        paths.map((path) => [path, path.split('.').reduce((group, part) => group[part], project)]),
      );
      this.transaction.addEventListener('complete', () => {
        /** @type {any} */ (window).note({ kept });
      });
    }
    return Reflect.apply(put, this, key === undefined ? [value] : [value, key]);
  };
};

/**
 * Runs in the page: makes edits one after the other as a maker does, by boxes and buttons, and tells of each what the project
 * then holds.
 * @param {{ edits: readonly Edit[], start: Values }} work
 */
export const editInPage = async ({ edits, start }) => {
  const pause = (/** @type {number} */ ms) => new Promise((resolve) => setTimeout(resolve, ms));
  const typeInto = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
  const states = [start];
  let now = 0;
  for (const edit of edits) {
    if (edit.what === 'set') {
      if (states[now]?.[edit.path] === edit.value) continue;
      const box = document.querySelector(`input[data-path="${edit.path}"]`);
      typeInto?.call(box, String(edit.value));
      box?.dispatchEvent(new Event('input', { bubbles: true }));
      await pause(0);
      box?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
      states.splice(now + 1, states.length, { ...states[now], [edit.path]: edit.value });
      now += 1;
    } else if (edit.what === 'hide') {
      // As when the maker looks at something else for a moment.
      Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
      document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
      Reflect.deleteProperty(document, 'visibilityState');
      await pause(edit.pause);
      continue;
    } else {
      const next = now + (edit.what === 'undo' ? -1 : 1);
      if (states[next] === undefined) continue;
      const name = edit.what === 'undo' ? 'Undo' : 'Redo';
      [...document.querySelectorAll('button')].find(({ textContent }) => textContent?.trim() === name)?.click();
      now = next;
    }
    /** @type {any} */ (window).note({ edit: states[now], at: Date.now() });
    await pause(edit.pause);
  }
};
