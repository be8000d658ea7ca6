import type { Files } from '../core/ports';
import { chosenFile } from './chosenFile';
import { LONGEST_FILE } from './longestFile';

/** A browser may still be reading the link after this many milliseconds when it asks where to save. */
const KEEP_LINK = 60_000;

/** A character takes three bytes at most for each unit of a string's length; more than this is never worth reading. */
const MOST_BYTES = LONGEST_FILE * 3 + 1;

/** Files through the browser: a link to save by, the system's file picker to open with. */
export const browserFiles = (): Files => ({
  saveAs: chosenFile(),
  download(name, type, bytes) {
    const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type }));
    const link = document.createElement('a');
    link.href = address;
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), KEEP_LINK);
  },

  open(accept) {
    return new Promise((resolve, reject) => {
      const input = document.createElement('input');
      input.type = 'file';
      input.accept = accept;
      input.hidden = true;
      const finish = (): void => input.remove();
      input.addEventListener('cancel', () => {
        finish();
        resolve(null);
      });
      input.addEventListener('change', () => {
        finish();
        const file = input.files?.[0];
        if (file === undefined) return resolve(null);
        file
          .slice(0, MOST_BYTES)
          .text()
          .then((text) => resolve({ name: file.name, text }), reject);
      });
      document.body.append(input);
      input.click();
    });
  },
});
