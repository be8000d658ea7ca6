import type { RunStep } from '../../../core/run/types';
import { tickStep } from '../../../store/commands/run/tickStep';
import { useChange } from '../../draw/repair/useChange';
import { useServices } from '../../services';

interface StepBoxProps {
  readonly step: RunStep;
  /** From 1. */
  readonly number: number;
  /** When it was done; undefined while it is not. */
  readonly at: string | undefined;
  readonly next: boolean;
}

/** A step's box and title. */
export function StepBox({ step, number, at, next }: StepBoxProps) {
  const { clock } = useServices();
  const change = useChange();
  const { id, title } = step;
  return (
    <label className="step-box">
      <input
        type="checkbox"
        checked={at !== undefined}
        onChange={({ target }) =>
          change(`${target.checked ? 'Done' : 'Not done'}: ${title}`, (project) =>
            tickStep(project, id, target.checked ? clock.now() : null),
          )
        }
      />
      <span>
        {number} {title}
        {at !== undefined && <small>Done {whenDone(at)}</small>}
        {next && <small className="step-next">Next step</small>}
      </span>
    </label>
  );
}

/** An instant as the maker's own clock and calendar had it. */
const whenDone = (instant: string): string =>
  new Date(instant).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
