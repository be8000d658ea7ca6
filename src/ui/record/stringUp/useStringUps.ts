import type { StringUp } from '../../../core/document/buildTypes';
import type { Project } from '../../../core/document/types';
import type { Issue, Result } from '../../../core/result';
import { useServices } from '../../services';
import { useStore } from '../../useStore';

const NONE: readonly StringUp[] = [];

const byTime = (one: StringUp, other: StringUp): number => one.at.localeCompare(other.at);

/** The open instrument's string-ups, the first one first. */
export const useStringUps = (): readonly StringUp[] => {
  const stringUps = useStore(({ project }) => project.build?.stringUps ?? NONE);
  return [...stringUps].sort(byTime);
};

/** Runs a command as one step with this label; answers with the reasons when it was refused, and tells the maker them. */
export const useRun = (): ((label: string, command: (project: Project) => Result<Project>) => readonly Issue[]) => {
  const { actions } = useServices().store;
  return (label, command) => {
    const issues = actions.change(label, command);
    if (issues.length > 0) actions.warn(issues.map(({ message }) => message).join(' '));
    return issues;
  };
};
