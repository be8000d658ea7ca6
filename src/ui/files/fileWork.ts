import type { Services } from '../services';
import { demoOrKind } from './demoOrKind';
import { fileName } from './fileName';

/** The work that ends or begins in a file. Failures are told as alerts; the open work always stays. */
export interface FileWork {
  begin(kind: string): void | Promise<void>;
  open(): Promise<void>;
  save(): Promise<void>;
  /** Loads what a PDF needs, so that the click that asks for it need not wait. */
  preparePdf(): Promise<void>;
  downloadPdf(): Promise<void>;
}

/** The file work on these services. While one piece of it runs, another is not begun. */
export const fileWork = ({ store, clock, newId, files, codec, workshop, benchMemory }: Services): FileWork => {
  let busy = false;
  const { actions, getState } = store;
  const told = (error: unknown): string => (error instanceof Error ? error.message : String(error));

  const openFile = async (): Promise<void> => {
    const file = await files.open('.json,application/json');
    if (file === null) return;
    const { decode } = await codec();
    const read = decode(file.text);
    if (!read.ok) {
      const [first, ...more] = read.issues;
      const rest = more.length === 0 ? '' : ` (${more.length} more like this.)`;
      return actions.warn(`${file.name} was not opened. ${first?.message ?? ''}${rest} Your open work is as it was.`);
    }
    actions.replaceProject(read.value, `Opened ${read.value.about.name || file.name}`);
    actions.markSaved();
  };

  const saveFile = async (): Promise<void> => {
    const { encode } = await codec();
    const { project } = getState();
    const name = fileName(project.about.name, '', 'saddlemark.json');
    files.download(name, 'application/json', new TextEncoder().encode(encode(project)));
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
    save: () => guarded('Saving', saveFile),
    preparePdf: async () => {
      const [{ makeReady }] = await Promise.all([workshop(), import('../print/useSheet')]);
      makeReady();
    },
    downloadPdf: () => guarded('The PDF', makePdf),
  };
};
