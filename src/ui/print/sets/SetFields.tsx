import { useId, useState } from 'react';
import type { Project } from '../../../core/document/types';
import type { SetJob } from '../../../core/ports';
import { fail, type Result } from '../../../core/result';
import { expandSet, type SetMember, type SetRequest } from '../../../core/sheets/sets/expandSet';
import { FieldGroup } from '../../fields/FieldGroup';
import { RadioRow } from '../../fields/RadioRow';
import { SelectRow } from '../../fields/SelectRow';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { usePrinting } from '../usePrinting';
import { readModels } from './readModels';
import { readScales } from './readScales';
import { useSetRun } from './useSetRun';

const KINDS: readonly { readonly value: SetJob['as']; readonly label: string }[] = [
  { value: 'pdf', label: 'One PDF with a contents page' },
  { value: 'shared', label: 'One PDF, small sheets share pages' },
  { value: 'zip', label: 'A zip of one PDF each' },
];
const HANDS = [
  { value: 'own', label: 'As each is' },
  { value: 'both', label: 'Both hands' },
] as const;

/** Many instruments at once: other models, both hands, several scales, as one file. */
export function SetFields() {
  const { clock } = useServices();
  const project = useStore((state) => state.project);
  const printing = usePrinting();
  const { style } = useLengths();
  const [others, setOthers] = useState<readonly Project[]>([]);
  const [hands, setHands] = useState<SetRequest['hands']>('own');
  const [typed, setTyped] = useState('');
  const [as, setAs] = useState<SetJob['as']>('pdf');
  const run = useSetRun();
  const scales = readScales(typed, style.unit);
  const members: Result<readonly SetMember[]> = scales.ok
    ? expandSet({ models: [project, ...others], hands, scales: scales.value }, style)
    : fail('scales', 'set.scales', '');
  const make = (): void => {
    if (!members.ok) return;
    const { paper, profile } = printing;
    const chosen = project.sheets.chosen;
    void run.start({ members: members.value, chosen, paper, profile, as, style, date: clock.today() });
  };
  return (
    <FieldGroup title="Sets" hint="The sheets ticked above for many instruments at once, on the paper above.">
      <ModelList first={project.about.name} others={others} set={setOthers} />
      <RadioRow label="Hands of the set" value={hands} choices={HANDS} choose={setHands} />
      <TextBox
        label="Scale lengths"
        path="print.scales"
        shown={typed}
        unit=""
        about="Each model at each of these scale lengths, such as 645; 650; 25 1/2in. Empty: each at its own."
        decimal={false}
        usual="each at its own"
        note="Separate them by semicolons."
        take={(text) => {
          const read = readScales(text, style.unit);
          const wrong = read.ok ? expandSet({ models: [project], hands, scales: read.value }, style) : read;
          if (!wrong.ok) return wrong.issues[0]?.message ?? null;
          setTyped(text);
          return null;
        }}
      />
      <SelectRow label="Made as" value={as} choices={KINDS} choose={(chosen) => setAs(chosen as SetJob['as'])} />
      {members.ok ? (
        <p className="field-note">
          {members.value.length === 1 ? '1 instrument' : `${members.value.length} instruments`}. Each is named by model,
          scale and hand: {as === 'zip' ? `${members.value[0]?.name}.pdf` : members.value[0]?.name}.
        </p>
      ) : (
        <p className="field-wrong">{members.issues[0]?.message}</p>
      )}
      {run.share === null ? (
        <button type="button" aria-disabled={!members.ok} onClick={make}>
          Download set
        </button>
      ) : (
        <p className="set-run">
          <progress aria-label="Making the set" value={run.share} max={1} />
          <button type="button" onClick={run.cancel}>
            Cancel
          </button>
        </p>
      )}
      {run.left.length > 0 && (
        <ul className="plain field-caution" aria-label="Not in the set">
          {run.left.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </FieldGroup>
  );
}

interface ModelListProps {
  readonly first: string;
  readonly others: readonly Project[];
  readonly set: (models: readonly Project[]) => void;
}

/** The instrument in hand, and those of files that are added to it. */
function ModelList({ first, others, set }: ModelListProps) {
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
