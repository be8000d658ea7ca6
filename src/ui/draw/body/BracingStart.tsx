import { BRACING_SETS } from '../../../core/body/bracingSets';
import { takeBracing } from '../../../store/commands/body/takeBracing';
import { useChange } from '../repair/useChange';

/** Usual bracings to start from. */
export function BracingStart() {
  const change = useChange();
  return (
    <>
      <p className="hint">
        A picture to start from, laid to this scale, in place of all braces, plate and soundhole. Only a start: read
        your own, no two tops are braced alike.
      </p>
      {BRACING_SETS.map(({ id, name, source }) => (
        <div key={id} className="bracing">
          <button
            type="button"
            onClick={() => change(`Bracing to start from: ${name}`, (project) => takeBracing(project, id))}
          >
            {name}
          </button>
          <p className="field-note">Source: {source}.</p>
        </div>
      ))}
    </>
  );
}
