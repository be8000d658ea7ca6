import type { PlaceRound, TakenReading } from '../../../core/document/buildTypes';
import type { ReadLine } from '../../../core/placement/reading/types';
import { removeReading } from '../../../store/commands/place/removeReading';
import { lengthText } from '../../../store/fieldText';
import { NINETEEN_OF_TWENTY } from '../../plusMinus';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { fine } from './fine';

interface TakenChipsProps {
  readonly round: PlaceRound;
  readonly line: ReadLine;
  readonly taken: readonly TakenReading[];
  readonly quarrel: readonly string[];
  readonly residuals: ReadonlyMap<string, number>;
}

/** The readings of one line that were taken, each to be taken out again, with what is to be said of them. */
export function TakenChips({ round, line, taken, quarrel, residuals }: TakenChipsProps) {
  const { actions } = useServices().store;
  const { style, withUnit } = useLengths();
  /** As finely as it was typed. */
  const told = (mm: number): string => `${lengthText(mm, style).replace('-', '−')}${style.unit === 'mm' ? ' mm' : '″'}`;
  const against = (residual: number): string =>
    Math.abs(residual) < 0.005
      ? 'as the answer has it'
      : `${fine(Math.abs(residual), style)} ${residual > 0 ? 'over' : 'under'} the answer`;
  return taken.map((reading) => {
    const residual = residuals.get(reading.id);
    const bad = quarrel.includes(reading.id);
    return (
      <span key={reading.id} className="read-chip" data-quarrel={bad ? '' : undefined}>
        <button
          type="button"
          title={`± ${fine(NINETEEN_OF_TWENTY * reading.sigma, style)}${residual === undefined ? '' : `, ${against(residual)}`}. Press to take it out.`}
          aria-label={`Take out ${told(reading.value)}, ${line.label}`}
          onClick={() =>
            actions.change(`Reading taken out: ${line.label}, ${withUnit(reading.value)}`, (project) =>
              removeReading(project, round.id, reading.id),
            )
          }
        >
          {told(reading.value)} <span aria-hidden="true">✕</span>
        </button>
        {bad && (
          <small>
            {quarrel.length > 1 ? 'This or another is off' : 'Does not go with the rest'}:{' '}
            {residual === undefined ? '' : against(residual)}. Read it again.
          </small>
        )}
      </span>
    );
  });
}
