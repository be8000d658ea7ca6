import { useEffect } from 'react';
import { useFileWork } from '../useFileWork';

/** A file that is dropped is read no further than this, bytes; the reader says what is too large. */
const MOST_BYTES = 300_000_001;

const isOurs = (name: string): boolean => name.toLowerCase().endsWith('.json');

/** Text on the clipboard that may be one of our files. */
const mayBeOurs = (text: string): boolean => /^\s*\{\s*"format"\s*:\s*"saddlemark-/.test(text);

/** Whether keys and text belong to what the maker is typing in. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, textarea, select, [contenteditable]');

/** Opens projects and libraries that are dropped on the page, or pasted where nothing is being typed. */
export const useHandedFiles = (): void => {
  const { take } = useFileWork();
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault();
    };
    const drop = async (event: DragEvent): Promise<void> => {
      const taken = event.defaultPrevented;
      if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault();
      const file = [...(event.dataTransfer?.files ?? [])].find(({ name }) => isOurs(name));
      if (!taken && file !== undefined) await take(file.name, await file.slice(0, MOST_BYTES).text());
    };
    const paste = async (event: ClipboardEvent): Promise<void> => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!isTyping(event.target) && mayBeOurs(text)) await take('what was pasted', text);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, [take]);
};
