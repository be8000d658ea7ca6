import type { Project } from '../../../core/document/types';
import type { Result } from '../../../core/result';
import { freePlaces } from '../../../store/commands/hand/freePlaces';
import { lineUp } from '../../../store/commands/hand/lineUp';
import { partsInWords } from '../../../store/commands/hand/partsInWords';
import { spreadEvenly } from '../../../store/commands/hand/spreadEvenly';
import { useServices } from '../../services';
import { useStore } from '../../useStore';

interface SeveralFieldsProps {
  readonly parts: readonly string[];
}

/** Several parts brought into line or spread. */
export function SeveralFields({ parts }: SeveralFieldsProps) {
  const { actions } = useServices().store;
  const count = useStore((state) => freePlaces(state.project, parts).size);
  if (count < 2) return <p className="hint">Nodes and free locating pins can be brought into line here.</p>;
  const run = (label: string, command: (project: Project) => Result<Project>) => (): void => {
    const [issue] = actions.change(`${label}: ${partsInWords(parts)}`, command);
    if (issue !== undefined) actions.warn(issue.message);
  };
  return (
    <div className="button-row">
      <button type="button" onClick={run('Level with the first', (project) => lineUp(project, parts, 'level'))}>
        Level with the first
      </button>
      <button
        type="button"
        onClick={run('In line with the first, nut to tail', (project) => lineUp(project, parts, 'straight'))}
      >
        In line with the first, nut to tail
      </button>
      <button type="button" onClick={run('Onto the centreline', (project) => lineUp(project, parts, 'centreline'))}>
        Onto the centreline
      </button>
      {count > 2 && (
        <>
          <button type="button" onClick={run('Spread across', (project) => spreadEvenly(project, parts, 'x'))}>
            Spread evenly across
          </button>
          <button type="button" onClick={run('Spread along', (project) => spreadEvenly(project, parts, 'y'))}>
            Spread evenly along
          </button>
        </>
      )}
    </div>
  );
}
