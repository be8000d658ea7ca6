import type { PlaceAnswer } from '../../../core/placement/reading/answerTypes';
import { stepWords } from '../../../core/placement/reading/moveSteps';
import { useLengths } from '../../useLengths';
import { answerHeading, FREEDOM_NAME, moveLength } from './answerWords';

/** The answer in words: what to do, what these readings cannot tell, and what to read for it. */
export function Answer({ answer, accepted }: { readonly answer: PlaceAnswer; readonly accepted: boolean }) {
  const { withUnit, style } = useLengths();
  const { freedoms, steps, verdict, next, crossesAlone, quarrel } = answer;
  const unseen = freedoms.filter((each) => each.verdict === 'unseen');
  const sound = quarrel.ids.length === 0 && !quarrel.together;
  // No one should move a bridge by a slip of the rule.
  const moves = sound && unseen.length === 0 && verdict !== 'good' ? steps : [];
  return (
    <div className="place-answer">
      <h2>{answerHeading(answer)}</h2>
      {accepted && <p className="quiet">Accepted. The next reading begins a new round.</p>}
      {quarrel.ids.length > 0 && (
        <p className="field-caution">
          {quarrel.times.toFixed(1)} times its own spread off, and marked beside its line. Read it again before you
          trust this.
        </p>
      )}
      {quarrel.together && (
        <p className="field-caution">
          None stands out, but together they fit worse than their tools allow: sound ones would once in a hundred times.
          Something moved, or a tool is worse than it is said to be.
        </p>
      )}
      {crossesAlone && (
        <p className="field-caution">
          Equal lengths across from corner to corner prove nothing alone: a bridge that lies aside and is turned at once
          has them too. Read the same sides as well, or the strings against the board.
        </p>
      )}
      {moves.length > 0 && (
        <ol className="place-moves">
          {moves.map((step) => (
            <li key={step.kind}>{stepWords(step, (mm) => moveLength(mm, style))}</li>
          ))}
        </ol>
      )}
      {unseen.length > 0 && (
        <p className="place-next">
          These readings cannot tell {unseen.map(({ freedom }) => FREEDOM_NAME[freedom].toLowerCase()).join(' or ')}.
        </p>
      )}
      {next !== null && verdict !== 'good' && (
        <p className="place-next">
          Best read next: <strong>{next.label}</strong>, expected {withUnit(next.expected)}.
        </p>
      )}
    </div>
  );
}
