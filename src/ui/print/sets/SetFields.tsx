import { useEffect, useState } from 'react';
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
import { holdsBack } from '../paper/cautionsOf';
import { useBench, useBenchState } from '../proof/useBench';
import { usePrinting } from '../usePrinting';
import { ModelList } from './ModelList';
import { readScales } from './readScales';
import { useSetPreview } from './useSetPreview';
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
  const device = useStore((state) => state.device);
  const held = holdsBack(device, useBenchState(useBench()));
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
  const jobOf = (all: readonly SetMember[]): SetJob => ({
    members: all,
    chosen: project.sheets.chosen,
    ...printing,
    as,
    style,
    date: clock.today(),
  });
  const [preview, { kind: looked }] = useSetPreview();
  // What was laid out is no longer the set once anything of it is changed.
  // biome-ignore lint/correctness/useExhaustiveDependencies: all that a set is made of
  useEffect(() => preview.close, [project, printing, others, hands, typed, as, device]);
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
        <>
          {held.map(({ code, message }) => (
            <p key={code} className="field-caution">
              {message}
            </p>
          ))}
          <div className="buttons">
            <button
              type="button"
              aria-disabled={!members.ok}
              onClick={() => members.ok && void run.start(jobOf(members.value))}
            >
              Download set
            </button>
            <button
              type="button"
              aria-disabled={!members.ok}
              onClick={() => members.ok && void preview.open(jobOf(members.value))}
            >
              {looked === 'closed' ? 'Look through the set' : 'Look through it anew'}
            </button>
          </div>
        </>
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
