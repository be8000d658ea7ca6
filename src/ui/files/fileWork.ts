import type { Services } from '../services';
import { demoOrKind } from './demoOrKind';
import { fileName } from './fileName';

/** The work that ends or begins in a file. Failures are told as alerts; the open work always stays. */
export interface FileWork {
  begin(kind: string): void | Promise<void>;
  open(): Promise<void>;
  /** A project or a whole library in the text of a file that was dropped or pasted. */
  take(name: string, text: string): Promise<void>;
  save(): Promise<void>;
  /** To a file that the maker chooses, where the browser lets them. */
  saveAs(): Promise<void>;
  /** Loads what a PDF needs, so that the click that asks for it need not wait. */
  preparePdf(): Promise<void>;
  downloadPdf(): Promise<void>;
}

/** The file work on these services. While one piece of it runs, another is not begun. */
export const fileWork = ({ store, clock, newId, files, codec, workshop, library, benchMemory }: Services): FileWork => {
  let busy = false;
  const { actions, getState } = store;
  const told = (error: unknown): string => (error instanceof Error ? error.message : String(error));

  const addLibrary = async (name: string, text: string): Promise<void> => {
    const done = await (await library()).importAll(text);
    if (!done.ok)
      return actions.warn(
        `Nothing of ${name} was added. ${done.issues[0]?.message ?? ''} Your open work is as it was.`,
      );
    const { added, copies, same } = done.value;
    actions.say(`From ${name}: ${added} added, ${copies} as copies, ${same} there already`);
  };

  const take = async (name: string, text: string): Promise<void> => {
    if (/^\uFEFF?\s*\{\s*"format"\s*:\s*"saddlemark-library"/.test(text)) return addLibrary(name, text);
    const { decode } = await codec();
    const read = decode(text);
    if (!read.ok) {
      const [first, ...more] = read.issues;
      const rest = more.length === 0 ? '' : ` (${more.length} more like this.)`;
      return actions.warn(`${name} was not opened. ${first?.message ?? ''}${rest} Your open work is as it was.`);
    }
    actions.replaceProject(read.value, `Opened ${read.value.about.name || name}`);
    actions.markSaved();
  };

  const openFile = async (): Promise<void> => {
    const file = await files.open('.json,application/json');
    if (file !== null) await take(file.name, file.text);
  };

  /** Its name and bytes, whole before anything is asked or written. */
  const fileNow = async (): Promise<{ readonly name: string; readonly bytes: Uint8Array }> => {
    const { encode } = await codec();
    const { project } = getState();
    return {
      name: fileName(project.about.name, '', 'saddlemark.json'),
      bytes: new TextEncoder().encode(encode(project)),
    };
  };

  const saveFileAs = async (): Promise<void> => {
    const { name, bytes } = await fileNow();
    const saved = await (files.saveAs?.(name, 'application/json', bytes) ?? false);
    if (!saved) return;
    actions.markSaved();
    actions.say('Saved to the file that you chose');
  };

  const saveFile = async (): Promise<void> => {
    const { name, bytes } = await fileNow();
    files.download(name, 'application/json', bytes);
    actions.markSaved();
    actions.say(`Saved as ${name}`);
  };

  const makePdf = async (): Promise<void> => {
    const [{ benchNow, letGo, makeSheet }, { makePdf: write }] = await Promise.all([
      import('../print/useSheet'),
      workshop(),
    ]);
    if (!letGo(getState().device, benchMemory)) return actions.setDevice({ station: 'print' });
    const state = getState();
    const sheet = makeSheet(state, clock.today(), benchNow(benchMemory));
    const made = sheet.ok ? await write(sheet.value.document) : sheet;
    if (!made.ok) return actions.warn(`No PDF. ${made.issues.map(({ message }) => message).join(' ')}`);
    const alone = state.project.sheets.chosen.join() === 'tape-down';
    const name = fileName(state.project.about.name, alone ? 'template' : 'sheets', 'pdf');
    files.download(name, 'application/pdf', made.value.bytes);
    const { missing } = made.value;
    if (missing.length > 0)
      actions.warn(`${name} was made, with a box for what the printed font lacks: ${missing.join(' ')}`);
    else actions.say(`Downloaded ${name}. Print it at 100 % and measure the square.`);
  };

  const guarded = async (what: string, work: () => Promise<void>): Promise<void> => {
    if (busy) return;
    busy = true;
    try {
      await work();
    } catch (error) {
      actions.warn(`${what} failed: ${told(error)}`);
    } finally {
      busy = false;
    }
  };

  return {
    begin: (kind) => {
      const project = demoOrKind(kind, newId(), clock.now());
      actions.replaceProject(project, `New: ${project.about.name}`);
    },
    // Waiting for the maker to pick a file must not hold up the rest.
    open: () => openFile().catch((error: unknown) => actions.warn(`Opening failed: ${told(error)}`)),
    take: (name, text) => guarded(`Opening ${name}`, () => take(name, text)),
    save: () => guarded('Saving', saveFile),
    saveAs: () => guarded('Saving', saveFileAs),
    preparePdf: async () => {
      const [{ makeReady }] = await Promise.all([workshop(), import('../print/useSheet')]);
      makeReady();
    },
    downloadPdf: () => guarded('The PDF', makePdf),
  };
};
