import { clampForce } from '../../../core/glue/clampForce';
import { showArea } from '../../../core/sheets/parts/finish/showArea';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { ClaimsTable } from './ClaimsTable';
import { forceText } from './forceText';
import { GlueRow } from './GlueRow';
import { useClamps } from './useClamps';
import { useGlueArea } from './useGlueArea';

/** What the pressure that was chosen puts on the glue, in all and on each clamp. */
export function ForceRows() {
  const { area, reason } = useGlueArea();
  const { style } = useLengths();
  const rim = useStore((state) => state.project.bridge.rim);
  const pressure = useStore((state) => state.project.build?.glue?.pressure ?? null);
  const count = useClamps().clamps.length;
  return (
    <>
      <h3>Area and force</h3>
      {area === null ? (
        <p className={reason === null ? 'hint' : 'not-yet'}>{reason ?? 'Glue area: one moment …'}</p>
      ) : (
        <p className="glue-area">
          Glue area <strong>{showArea(area, style.unit)}</strong>: the footprint less its holes
          {rim > 0 && ' and the finish under its rim'}.
        </p>
      )}
      <GlueRow path="build.glue.pressure" usual="not chosen" />
      {area !== null && pressure !== null && (
        <table className="figures loose small-figures force">
          <caption>Force for {pressure.toFixed(0)} psi</caption>
          <tbody>
            <ForceRow label="In all" area={area} pressure={pressure} />
            {count > 0 && <ForceRow label={`Each of ${count} clamps`} area={area / count} pressure={pressure} />}
          </tbody>
        </table>
      )}
      <ClaimsTable area={area} />
    </>
  );
}

interface ForceRowProps {
  readonly label: string;
  readonly area: number;
  readonly pressure: number;
}

/** Figure and caution stand in one cell, so that neither is read, or copied, without the other. */
function ForceRow({ label, area, pressure }: ForceRowProps) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td>
        {forceText(clampForce(area, pressure))}
        <small>A figure, not an order: on a thin top go by snug and even.</small>
      </td>
    </tr>
  );
}
