/** One text kept in this browser from one visit to the next. Where the browser forbids it, nothing is kept. */
export const browserMemory = (key: string): { read(): string | null; write(text: string): void } => ({
  read() {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  write(text) {
    try {
      localStorage.setItem(key, text);
    } catch {
      // Private windows refuse: the setting holds until the page is closed.
    }
  },
});
