import { useMemo } from 'react';
import type { FileWork } from './files/fileWork';
import { type Services, useServices } from './services';

/** The same work, loaded when it is first asked for. */
const onDemand = (services: Services): FileWork => {
  let loaded: Promise<FileWork> | undefined;
  const work = async (): Promise<FileWork> => {
    loaded ??= import('./files/fileWork').then(({ fileWork }) => fileWork(services));
    try {
      return await loaded;
    } catch (error) {
      loaded = undefined;
      throw error;
    }
  };
  const guarded = async (run: (of: FileWork) => void | Promise<void>): Promise<void> => {
    try {
      await run(await work());
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      services.store.actions.warn(
        `A part of the app could not be loaded (${reason}). Your work is as it was; try again.`,
      );
    }
  };
  return {
    begin: (kind) => guarded((of) => of.begin(kind)),
    open: () => guarded((of) => of.open()),
    take: (name, text) => guarded((of) => of.take(name, text)),
    save: () => guarded((of) => of.save()),
    saveAs: () => guarded((of) => of.saveAs()),
    preparePdf: () => guarded((of) => of.preparePdf()),
    downloadPdf: () => guarded((of) => of.downloadPdf()),
  };
};

/** The file work of this screen. */
export const useFileWork = (): FileWork => {
  const services = useServices();
  return useMemo(() => onDemand(services), [services]);
};
