import { SQUEEZE_OUT_SOURCE, TIME_CLAIMS } from '../../../core/glue/timeClaims';
import type { TimerKind } from '../../../core/run/types';
import { More } from '../../fields/More';
import { TimerControl } from '../run/timers/TimerControl';
import { GlueRow } from './GlueRow';

const KINDS: readonly TimerKind[] = ['open', 'closed', 'clamp', 'cure'];

/** Times from the label, each with its clock. */
export function TimeRows() {
  return (
    <>
      <h3>Times from the label</h3>
      <p className="hint">Empty until you read them there: two glues of one name may differ, and so do wood and air.</p>
      {KINDS.map((what) => (
        <div key={what} className="glue-time">
          <GlueRow path={`build.glue.times.${what}`} usual="on its label" />
          <TimerControl what={what} />
        </div>
      ))}
      <More summary="Times that others give">
        <table className="figures loose small-figures claims">
          <caption>To know what to look for on the label, not to glue by</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">They say</th>
            </tr>
          </thead>
          <tbody>
            {TIME_CLAIMS.map(({ what, says, source }) => (
              <tr key={`${what} ${says}`}>
                <th scope="row">
                  {what}
                  <small>Source: {source}.</small>
                </th>
                <td>{says}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </More>
      <h3>Squeeze-out</h3>
      <p className="hint">
        A fine even bead all round says that there was glue enough and pressure everywhere; none at one place says look
        there. Clean it while it peels and does not smear, {SQUEEZE_OUT_SOURCE}. Inside too, by mirror. What stays in
        the corner is seen for good under the finish.
      </p>
    </>
  );
}
