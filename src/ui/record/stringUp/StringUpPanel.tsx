import { useState } from 'react';
import { auditLimitsInUse } from '../../../core/audit/auditLimitsInUse';
import { crownMoves } from '../../../core/learning/crownMoves';
import { planAsStrung } from '../../../core/learning/planAsStrung';
import { addStringUp } from '../../../store/commands/stringUp/addStringUp';
import { FieldGroup } from '../../fields/FieldGroup';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { OneStringUp } from './OneStringUp';
import { SeasonsView } from './SeasonsView';
import { StringUpList } from './StringUpList';
import { useRun, useStringUps } from './useStringUps';
import './stringUp.css';

/** What the strung instrument said: each string-up by its day, what it asks of the saddle, and how it moved since. */
export function StringUpPanel() {
  const { clock, newId } = useServices();
  const run = useRun();
  const stringUps = useStringUps();
  const model = useStore(({ project }) => project.build === null);
  const { bridge, limits } = useStore(({ project }) => project);
  const { saddle, scale } = useStore(({ derived }) => derived);
  const [chosen, setChosen] = useState<string | null>(null);
  const open = stringUps.find(({ id }) => id === chosen) ?? stringUps.at(-1) ?? null;
  const before = open === null ? null : (stringUps[stringUps.indexOf(open) - 1] ?? null);

  const begin = (): void => {
    if (!saddle.ok || !scale.ok) return;
    const last = stringUps.at(-1);
    const moves =
      last === undefined
        ? []
        : crownMoves(last, saddle.value, bridge.slot, scale.value.scaleLength, auditLimitsInUse(limits).land.value);
    const crown = last === undefined ? 'straight' : 'filed';
    const plan = planAsStrung(saddle.value, crown, last === undefined ? null : { stood: last.stood, moves });
    const id = newId();
    const issues = run('New string-up', (project) => addStringUp(project, { id, at: clock.now(), crown, ...plan }));
    if (issues.length === 0) setChosen(id);
  };

  return (
    <FieldGroup
      id="string-ups"
      title="String-ups"
      hint="Tune the open strings, read each at the 12th fret, and type the cents. Every reading is kept as it was taken."
    >
      {model && <p className="hint">This is a model: its first string-up makes it one instrument.</p>}
      {stringUps.length > 0 && <StringUpList stringUps={stringUps} open={open?.id ?? null} choose={setChosen} />}
      <div className="buttons begin-string-up">
        <button
          type="button"
          className={stringUps.length === 0 ? 'primary' : undefined}
          aria-disabled={!saddle.ok}
          onClick={begin}
        >
          New string-up
        </button>
      </div>
      {!saddle.ok && <p className="not-yet">The saddle’s place is not known yet: see the design checks.</p>}
      {open !== null && <OneStringUp key={open.id} stringUp={open} before={before} />}
      <SeasonsView stringUps={stringUps} />
    </FieldGroup>
  );
}
