import { useRef, useState } from 'react';
import { useServices } from '../../services';
import { useShelf } from '../shelf/useShelf';
import { historyFile } from './historyFile';
import { importedWords } from './importedWords';

/** Bytes: a library with its photos is larger than any project's file, and more than this is no library. */
const LARGEST = 900_000_000;

/** The library to a file and from one. */
export function LibraryFiles() {
  const services = useServices();
  const { library, files, clock, store } = services;
  const { actions } = store;
  const { shelf } = useShelf();
  const [busy, setBusy] = useState<string | null>(null);
  const chooser = useRef<HTMLInputElement>(null);
  const [came, setCame] = useState('');

  const guarded = (what: string, work: () => Promise<void>) => async (): Promise<void> => {
    if (busy !== null) return;
    setBusy(what);
    setCame('');
    try {
      await work();
    } catch (error) {
      actions.warn(`${what} failed: ${error instanceof Error ? error.message : String(error)}`);
    } finally {
      setBusy(null);
    }
  };
  const toFile = guarded('The library to a file', async () => {
    const text = await (await library()).exportAll();
    if (!text.ok) return actions.warn(`No file. ${text.issues.map(({ message }) => message).join(' ')}`);
    const name = `Saddlemark library ${clock.today()}.json`;
    files.download(name, 'application/json', new TextEncoder().encode(text.value));
    actions.say(`Saved as ${name}`);
  });
  const history = guarded('The history to a file', () => historyFile(services));
  const fromFile = (file: File) =>
    guarded('The library from a file', async () => {
      if (file.size > LARGEST)
        return actions.warn(`Nothing of ${file.name} was added: expected a file of 900 MB at most.`);
      const done = await (await library()).importAll(await file.text());
      if (!done.ok) {
        const [first, ...more] = done.issues;
        const rest = more.length === 0 ? '' : ` (${more.length} more like this.)`;
        return actions.warn(`Nothing of ${file.name} was added. ${first?.message ?? ''}${rest}`);
      }
      await shelf.refresh();
      const words = `From ${file.name}: ${importedWords(done.value)}.`;
      setCame(words);
      actions.say(words);
    })();
  return (
    <>
      <div className="buttons library-files">
        <button type="button" aria-disabled={busy !== null} onClick={() => void toFile()}>
          Whole library to a file
        </button>
        <button type="button" aria-disabled={busy !== null} onClick={() => busy === null && chooser.current?.click()}>
          Library from a file
        </button>
        <button type="button" aria-disabled={busy !== null} onClick={() => void history()}>
          History as CSV
        </button>
      </div>
      <input
        ref={chooser}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file !== undefined) void fromFile(file);
          target.value = '';
        }}
      />
      {busy !== null && <p className="quiet">One moment …</p>}
      {came !== '' && <p className="answer">{came}</p>}
    </>
  );
}
