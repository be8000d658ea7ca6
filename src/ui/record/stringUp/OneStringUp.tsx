import { useMemo, useState } from 'react';
import { auditLimitsInUse } from '../../../core/audit/auditLimitsInUse';
import type { StringUp } from '../../../core/document/buildTypes';
import { crownMoves } from '../../../core/learning/crownMoves';
import { planAsStrung } from '../../../core/learning/planAsStrung';
import { fretsRead } from '../../../core/learning/readingsOf';
import { removeStringUp } from '../../../store/commands/stringUp/removeStringUp';
import { More } from '../../fields/More';
import { useStore } from '../../useStore';
import { BesideFields } from './BesideFields';
import { CentsTable } from './CentsTable';
import { FretsBox } from './FretsBox';
import { RangeHint } from './RangeHint';
import { stringUpName } from './stringUpWords';
import { TravelAnswer } from './TravelAnswer';
import { useRun } from './useStringUps';
import { WhenFields } from './WhenFields';

const OCTAVE = [12];

interface OneStringUpProps {
  readonly stringUp: StringUp;
  /** The one before it; null for the first. */
  readonly before: StringUp | null;
}

/** What the saddle can give to the readings of one string-up; nothing while its place is not known. */
const useMoves = (stringUp: StringUp | null) => {
  const { saddle, scale } = useStore(({ derived }) => derived);
  const slot = useStore(({ project }) => project.bridge.slot);
  const limits = useStore(({ project }) => project.limits);
  return useMemo(
    () =>
      stringUp !== null && saddle.ok && scale.ok
        ? crownMoves(stringUp, saddle.value, slot, scale.value.scaleLength, auditLimitsInUse(limits).land.value)
        : [],
    [stringUp, saddle, scale, slot, limits],
  );
};

/** One string-up: what was read, and what it asks of the saddle. */
export function OneStringUp({ stringUp, before }: OneStringUpProps) {
  const run = useRun();
  const saddle = useStore(({ derived }) => derived.saddle);
  const read = fretsRead(stringUp);
  const [chosen, setChosen] = useState<readonly number[]>([]);
  const kept = [...new Set([...chosen, ...read])].sort((one, other) => one - other);
  const frets = kept.length > 0 ? kept : before !== null && fretsRead(before).length > 0 ? fretsRead(before) : OCTAVE;
  const moves = useMoves(stringUp);
  const earlier = useMoves(before);
  const filing = before === null ? null : { stood: before.stood, moves: earlier };
  const name = stringUpName(stringUp);
  return (
    <section aria-label={name} className="one-string-up">
      <h3>{name}</h3>
      <FretsBox stringUp={stringUp.id} frets={frets} read={read} take={setChosen} />
      <CentsTable stringUp={stringUp} frets={frets} />
      <More summary="When, with what, and how the crown stood" open={read.length === 0}>
        <WhenFields
          stringUp={stringUp}
          later={before !== null}
          stoodWith={(crown) => (saddle.ok ? planAsStrung(saddle.value, crown, filing).stood : null)}
        />
      </More>
      <RangeHint stringUp={stringUp} />
      <TravelAnswer moves={moves} />
      <More summary="Action, relief, air and a note">
        <BesideFields stringUp={stringUp} />
      </More>
      <button
        type="button"
        onClick={() => run(`String-up of ${name} taken out`, (project) => removeStringUp(project, stringUp.id))}
      >
        Take this string-up out
      </button>
    </section>
  );
}
