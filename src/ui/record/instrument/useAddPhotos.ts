import { useState } from 'react';
import { MOST_PICTURES } from '../../../core/document/mostOfBuild';
import { addPicture } from '../../../store/commands/record/addPicture';
import { type Services, useServices } from '../../services';

/** Takes one file in; answers with why not, or null. */
const addOne = async ({ library, store }: Services, file: File): Promise<string | null> => {
  const project = store.getState().project.id;
  const bytes = new Uint8Array(await file.arrayBuffer());
  const kept = await (await library()).addPicture(bytes);
  if (!kept.ok) return `${file.name}: ${kept.issues.map(({ message }) => message).join(' ')}`;
  if (store.getState().project.id !== project) return `${file.name}: another work was opened meanwhile.`;
  const issues = store.actions.change('Photo added', (before) => addPicture(before, kept.value));
  return issues.length === 0 ? null : `${file.name}: ${issues.map(({ message }) => message).join(' ')}`;
};

/** Takes photos in, one after another; what could not be taken is told in words. */
export const useAddPhotos = () => {
  const services = useServices();
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const add = async (files: readonly File[]): Promise<void> => {
    if (busy || files.length === 0) return;
    setBusy(true);
    const told: string[] = [];
    for (const file of files.slice(0, MOST_PICTURES)) {
      const wrong = await addOne(services, file).catch((error: unknown) => `${file.name}: ${String(error)}`);
      if (wrong !== null) told.push(wrong);
    }
    setProblems(told);
    setBusy(false);
  };
  return { busy, problems, add };
};
