import { FEWEST_STRINGS, MOST_STRINGS } from '../../core/document/stringCount';
import type { Project } from '../../core/document/types';
import type { Result } from '../../core/result';
import { addString } from '../../store/commands/addString';
import { chooseElastic } from '../../store/commands/chooseElastic';
import { chooseWinding } from '../../store/commands/chooseWinding';
import { removeString } from '../../store/commands/removeString';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useStore } from '../useStore';

const FROM = [
  { value: 'core', label: 'the core' },
  { value: 'measured', label: 'a measurement' },
];

/** What changes the string itself: its kind, a neighbour or a pair beside it, or its end. */
export function StringEdit({ index }: { readonly index: number }) {
  const { actions } = useServices().store;
  const strings = useStore((state) => state.project.strings);
  const scale = useStore((state) => state.derived.scale);
  const models = useStore((state) => state.derived.models);
  const string = strings[index];
  if (string === undefined) return null;
  const name = `string ${index + 1}`;
  const paired = strings.filter(({ course }) => course === string.course).length > 1;
  const change = (label: string, command: (project: Project) => Result<Project>): void => {
    const [issue] = actions.change(label, command);
    if (issue !== undefined) actions.warn(issue.message);
  };
  const chooseFrom = (value: string): void => {
    const kind = value === 'core' ? 'core' : 'measured';
    if (!scale.ok) return;
    const { scaleLength } = scale.value;
    const openLength = scaleLength + (models.ok ? (models.value[index]?.saddle ?? 0) : 0);
    change(`Stretch and bending, ${name}: by ${kind === 'core' ? 'the core' : 'measurement'}`, (project) =>
      chooseElastic(project, { index, kind, scaleLength, openLength }),
    );
  };
  return (
    <>
      <SelectRow
        label={`Stretch and bending, ${name}, from`}
        about="Another way to say the same: the compensation stays until a figure is typed."
        value={string.elastic.kind}
        choices={FROM}
        choose={chooseFrom}
      />
      <label className="check">
        <input
          type="checkbox"
          checked={string.wound}
          onChange={({ target }) =>
            change(`String ${index + 1}: ${target.checked ? 'wound' : 'plain'}`, (project) =>
              chooseWinding(project, index, target.checked),
            )
          }
        />
        <span>Wound, {name}</span>
      </label>
      <div className="string-edit">
        <button
          type="button"
          disabled={strings.length >= MOST_STRINGS}
          onClick={() => change('One string more', (project) => addString(project, { after: index, pair: false }))}
        >
          Add a string after {name}
        </button>
        <button
          type="button"
          disabled={paired || strings.length >= MOST_STRINGS}
          onClick={() => change(`A pair for ${name}`, (project) => addString(project, { after: index, pair: true }))}
        >
          Pair {name}
        </button>
        <button
          type="button"
          disabled={strings.length <= FEWEST_STRINGS}
          onClick={() => change('One string fewer', (project) => removeString(project, index))}
        >
          Remove {name}
        </button>
      </div>
    </>
  );
}
