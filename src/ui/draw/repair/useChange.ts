import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { useServices } from '../../services';

/** Runs a command as one step with this label, and tells the maker why when it was refused. */
export const useChange = (): ((label: string, command: (project: Project) => Result<Project>) => void) => {
  const { actions } = useServices().store;
  return (label, command) => {
    const issues = actions.change(label, command);
    if (issues.length > 0) actions.warn(issues.map(({ message }) => message).join(' '));
  };
};
