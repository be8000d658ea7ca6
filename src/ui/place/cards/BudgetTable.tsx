import type { BudgetRow, PlaceBudget } from '../../../core/budget/placeBudget';
import { fineLength } from '../../../core/sheets/parts/items/fineLength';
import { useLengths } from '../../useLengths';
import { COVERAGE, degrees } from './coverage';

type Figures = Pick<BudgetRow, 'along' | 'cents' | 'aside' | 'turn'>;

/** What each cause does by itself, and all of them together; the bar is its share of the pitch. */
export function BudgetTable({ budget }: { readonly budget: PlaceBudget }) {
  const { unit } = useLengths().style;
  return (
    <table className="figures loose small-figures budget">
      <caption>What each does by itself, ± for k = {COVERAGE}; the bar: its share of the error in pitch</caption>
      <thead>
        <tr>
          <th scope="col">Cause</th>
          <th scope="col">Along, {unit}</th>
          <th scope="col">Cents</th>
          <th scope="col">Aside, {unit}</th>
          <th scope="col">Turn</th>
        </tr>
      </thead>
      <tbody>
        {budget.rows.map(({ source: { id, label }, share, ...figures }) => (
          <tr key={id}>
            <th scope="row">
              {label}
              <Share share={share} />
            </th>
            <Cells {...figures} />
          </tr>
        ))}
        <tr className="total">
          <th scope="row">All together</th>
          <Cells {...budget} />
        </tr>
      </tbody>
    </table>
  );
}

function Cells({ along, cents, aside, turn }: Figures) {
  const { unit } = useLengths().style;
  return (
    <>
      <td>{fineLength(COVERAGE * along, unit)}</td>
      <td>{(COVERAGE * cents).toFixed(1)}</td>
      <td>{fineLength(COVERAGE * aside, unit)}</td>
      <td>{degrees(COVERAGE * turn)}</td>
    </>
  );
}

function Share({ share }: { readonly share: number }) {
  const percent = Math.round(share * 100);
  return (
    <span className="share">
      <span className="share-bar" aria-hidden="true">
        <span style={{ width: `${percent}%` }} />
      </span>
      {percent} %
    </span>
  );
}
