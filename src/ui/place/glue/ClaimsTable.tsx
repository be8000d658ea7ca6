import { PRESSURE_CLAIMS, type PressureRange } from '../../../core/glue/pressureClaims';
import { More } from '../../fields/More';
import { forceRange, psiText } from './forceText';

/** What makers, handbooks and benches say, side by side; none of them is passed or failed. area: mm², null while not known. */
export function ClaimsTable({ area }: { readonly area: number | null }) {
  return (
    <More summary="Pressures that others give" open>
      <p className="hint">
        They disagree by more than ten to one, and close-fitting joints of all these kinds hold. Your label comes first.
      </p>
      <table className="figures loose small-figures claims">
        <caption>Pressures side by side{area === null ? '' : ', and what each puts on this bridge'}</caption>
        <thead>
          <tr>
            <th scope="col">For</th>
            <th scope="col">psi, and force</th>
          </tr>
        </thead>
        {PRESSURE_CLAIMS.map(({ who, source, joints }) => (
          <tbody key={who}>
            <tr className="group">
              <th colSpan={2} scope="rowgroup">
                {who}
                <small>Source: {source}.</small>
              </th>
            </tr>
            {joints.map(({ joint, psi, note }) => (
              <tr key={joint}>
                <th scope="row">{joint}</th>
                <td>
                  {psi === null ? 'no figure' : psiText(psi)}
                  {psi !== null && area !== null && <Force area={area} range={psi} />}
                  {note !== '' && <small className="claim-note">{note}</small>}
                </td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </More>
  );
}

function Force({ area, range }: { readonly area: number; readonly range: PressureRange }) {
  const { newton, lbf } = forceRange(area, range);
  return (
    <small>
      {newton}
      <br />
      {lbf}
    </small>
  );
}
