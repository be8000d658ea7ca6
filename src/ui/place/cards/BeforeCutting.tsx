import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useLengths } from '../../useLengths';
import { fine } from '../reading/fine';
import { BudgetTable } from './BudgetTable';
import { COVERAGE, degrees } from './coverage';
import { Proportion } from './Proportion';
import { useBudget } from './useBudget';
import { usualSize } from './usualSize';
import './cards.css';

/** How far the errors of the work can carry the bridge, and which to improve. */
export function BeforeCutting() {
  const budget = useBudget();
  const { style } = useLengths();
  if (budget === null) return null;
  const { rows, along, aside, turn, cents, first } = budget;
  const now = (COVERAGE * cents).toFixed(1);
  const halved = (COVERAGE * first.left).toFixed(1);
  return (
    <FieldGroup
      id="group-budget"
      title="Before wood is cut"
      hint="How far the work itself can carry the bridge, from what you measure to the drilled hole."
    >
      <p className="card-figure">
        Fore and aft ±{fine(COVERAGE * along, style)}, <strong>±{now} cents</strong>; sideways ±
        {fine(COVERAGE * aside, style)}; turned ±{degrees(COVERAGE * turn)}.
      </p>
      <p className="hint">
        Two standard deviations (k = 2), which hold in about 95 of 100. The cents are at the 12th fret of the worse
        outer string, turn included.
      </p>
      {cents > 0 && (
        <p className="card-first">
          <strong>Improve first: {first.row.source.label.toLowerCase()}.</strong> {first.row.source.remedy} Halved, ±
          {now} becomes ±{halved} cents.
        </p>
      )}
      <BudgetTable budget={budget} />
      <Proportion along={along} />
      <More summary="How large each error is at your bench">
        {style.unit === 'in' && <p className="hint">These in mm.</p>}
        {rows.flatMap(({ source }) => {
          if (source.id === 'placePin') return [];
          const usual = usualSize(source);
          return [
            <FieldRow
              key={source.id}
              path={`doubts.${source.id}`}
              usual={usual}
              note={`Usual ${usual}: ${source.source}.`}
            />,
          ];
        })}
        <p className="hint">How loose a locating pin is: see Locating pins.</p>
      </More>
      <More summary="How they are put together">
        <ul className="plain">
          <li>
            Each size, one standard deviation, times what it acts through: the bridge’s length for what each end has by
            itself, the distance of the pins for drill and pins, the frets’ height for the square, square line to break
            point for paper and print.
          </li>
          <li>
            Looking aslant, square, paper and print are the same at both ends (correlation 1): they move the bridge and
            do not turn it. The two ends of all others, and the causes among themselves, are taken as independent.
          </li>
          <li>A pin stands anywhere within its clearance, evenly: half of that over √3.</li>
          <li>
            All together: the square root of the sum of squares. JCGM 100:2008 (GUM) 4.3.7, 5.1.2 and 5.2.2; k = 2:
            6.3.3.
          </li>
        </ul>
      </More>
    </FieldGroup>
  );
}
