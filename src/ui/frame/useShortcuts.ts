import { useEffect } from 'react';
import type { FileWork } from '../files/fileWork';
import { useServices } from '../services';

/** Undo, redo and save by the usual keys. In a box where text is being typed, undo stays the box's own. */
export const useShortcuts = ({ save }: Pick<FileWork, 'save'>): void => {
  const { actions } = useServices().store;
  useEffect(() => {
    const actionOf = ({ key, shiftKey }: KeyboardEvent, typing: boolean): (() => void) | null => {
      const letter = key.toLowerCase();
      if (letter === 's') return () => void save();
      if (typing) return null;
      if (letter === 'y' || (letter === 'z' && shiftKey)) return actions.redo;
      return letter === 'z' ? actions.undo : null;
    };
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const typing = event.target instanceof HTMLElement && event.target.dataset.draft !== undefined;
      const act = actionOf(event, typing);
      if (act === null) return;
      event.preventDefault();
      act();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [actions, save]);
};
