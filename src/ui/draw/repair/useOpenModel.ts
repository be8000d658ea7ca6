import { takeFormerModel } from '../../../store/commands/repair/takeFormerModel';
import { useServices } from '../../services';
import { useChange } from './useChange';

/** Opens a project file whose bridge becomes the old one. Failures are told as alerts; the open work stays. */
export const useOpenModel = (): (() => void) => {
  const { store, files, codec } = useServices();
  const change = useChange();
  const open = async (): Promise<void> => {
    const file = await files.open('.json,application/json');
    if (file === null) return;
    const { decode } = await codec();
    const read = decode(file.text);
    if (!read.ok) return store.actions.warn(`${file.name} was not opened. ${read.issues[0]?.message ?? ''}`);
    change(`Old bridge from ${read.value.about.name || file.name}`, (project) => takeFormerModel(project, read.value));
  };
  return () => {
    open().catch((error: unknown) =>
      store.actions.warn(`Opening failed: ${error instanceof Error ? error.message : String(error)}`),
    );
  };
};
