import { useId, useState } from 'react';
import type { Project } from '../../../core/document/types';
import { useServices } from '../../services';
import { readModels } from './readModels';

interface ModelListProps {
  readonly first: string;
  readonly others: readonly Project[];
  readonly set: (models: readonly Project[]) => void;
}

/** The instrument in hand, and those of files that are added to it. */
export function ModelList({ first, others, set }: ModelListProps) {
  const { codec } = useServices();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const id = useId();
  const add = async (files: readonly File[]): Promise<void> => {
    const read = await readModels(files, (await codec()).decode);
    set([...others, ...read.models]);
    setProblems(read.problems);
  };
  return (
    <>
      <ul className="plain" aria-label="Models of the set">
        <li>{first}, in hand</li>
        {others.map((model, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same file may be added twice
          <li key={index}>
            {model.about.name}{' '}
            <button
              type="button"
              aria-label={`Take ${model.about.name} out of the set`}
              onClick={() => set(others.filter((_, place) => place !== index))}
            >
              Take out
            </button>
          </li>
        ))}
      </ul>
      <div className="field field-wide">
        <label htmlFor={id}>Add models from files</label>
        <input
          id={id}
          type="file"
          multiple
          accept=".json,application/json"
          aria-describedby={`${id}-wrong`}
          onChange={(event) => {
            void add([...(event.target.files ?? [])]);
            event.target.value = '';
          }}
        />
        <p id={`${id}-wrong`} aria-live="polite" className={problems.length === 0 ? undefined : 'field-wrong'}>
          {problems.length === 0 ? null : `Not added. ${problems.join(' ')}`}
        </p>
      </div>
    </>
  );
}
