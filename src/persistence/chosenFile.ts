interface Writing {
  write(bytes: Uint8Array): Promise<void>;
  close(): Promise<void>;
  abort(): Promise<void>;
}

type Picker = (options: object) => Promise<{ createWritable(): Promise<Writing> }>;

/**
 * Writes to a file that the maker chooses: the browser writes beside it and changes both over when all is there, so that the
 * old file is never emptied first. Null where the browser has no such choice.
 */
export const chosenFile = (): ((name: string, type: string, bytes: Uint8Array) => Promise<boolean>) | null => {
  const picker = (globalThis as { showSaveFilePicker?: Picker }).showSaveFilePicker;
  if (picker === undefined) return null;
  return async (name, type, bytes) => {
    const extension = name.slice(name.lastIndexOf('.'));
    try {
      const handle = await picker({ suggestedName: name, types: [{ accept: { [type]: [extension] } }] });
      const writing = await handle.createWritable();
      try {
        await writing.write(bytes);
        await writing.close();
      } catch (error) {
        await writing.abort().catch(() => {});
        throw error;
      }
      return true;
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return false;
      throw error;
    }
  };
};
