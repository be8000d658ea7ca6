import { useId } from 'react';
import type { ImportedOutlines } from '../../core/ports';
import { useLengths } from '../useLengths';
import { OutlinePreview } from './OutlinePreview';

interface FoundListProps {
  readonly found: ImportedOutlines;
  readonly chosen: number;
  readonly choose: (index: number) => void;
}

/** The paths of a file, those that can be taken first; beside the others stands why they cannot. */
export function FoundList({ found, chosen, choose }: FoundListProps) {
  const name = useId();
  const { withUnit } = useLengths();
  const { outlines, more, leftOut, needs } = found;
  return (
    <fieldset className="import-found">
      <legend>Paths in the file</legend>
      <div className="import-list">
        {outlines.map(({ path, across, along, refusal }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the list is read anew as a whole
          <label key={index} className="import-choice">
            <input
              type="radio"
              name={name}
              checked={index === chosen}
              disabled={refusal !== null}
              onChange={() => choose(index)}
            />
            <OutlinePreview path={path} className="import-small" />
            <span>
              {`Outline ${index + 1}`}
              {needs === null && <strong>{` ${withUnit(across)} × ${withUnit(along)}`}</strong>}
              {`, ${path.segments.length} ${path.segments.length === 1 ? 'piece' : 'pieces'}`}
              {refusal !== null && <em>{` ${refusal}`}</em>}
            </span>
          </label>
        ))}
      </div>
      {more > 0 && <p className="hint">{`${more} more, smaller than these, are not listed.`}</p>}
      {leftOut.length > 0 && <p className="hint">{`Not read: ${leftOut.join(', ')}.`}</p>}
    </fieldset>
  );
}
