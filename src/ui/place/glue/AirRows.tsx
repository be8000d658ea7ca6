import type { Air } from '../../../core/document/buildTypes';
import { equilibriumMoisture } from '../../../core/glue/equilibriumMoisture';
import { fahrenheitOf } from '../../../core/glue/readTemperature';
import { AIR_SOURCE, USUAL_AIR } from '../../../core/glue/usualAir';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { withSign } from '../../withSign';
import { GlueRow } from './GlueRow';
import { MovementRows } from './MovementRows';

/** The other unit of a temperature, for those who think in it. */
const otherDegrees = (celsius: number, unit: 'mm' | 'in'): string =>
  unit === 'in' ? `= ${celsius.toFixed(1)} °C` : `= ${fahrenheitOf(celsius).toFixed(0)} °F`;

const moistureOf = ({ celsius, humidity }: Air): number => equilibriumMoisture(celsius, humidity);

/** Air where it is glued and where it is kept, and the water that wood comes to hold in it. */
export function AirRows() {
  const shop = useStore((state) => state.project.build?.shop ?? null);
  const kept = useStore((state) => state.project.build?.kept ?? null);
  const { style } = useLengths();
  const inches = style.unit === 'in';
  const usual = {
    celsius: (inches ? fahrenheitOf(USUAL_AIR.celsius) : USUAL_AIR.celsius).toFixed(inches ? 0 : 1),
    humidity: String(USUAL_AIR.humidity),
  };
  const at = moistureOf(shop ?? USUAL_AIR);
  const then = kept === null ? null : moistureOf(kept);
  return (
    <>
      <h3>Air and wood</h3>
      <GlueRow
        path="build.shop.celsius"
        usual={usual.celsius}
        note={shop === null ? undefined : otherDegrees(shop.celsius, style.unit)}
      />
      <GlueRow path="build.shop.humidity" usual={usual.humidity} />
      {shop === null && <p className="field-note">Until you type yours: {AIR_SOURCE}.</p>}
      <GlueRow
        path="build.kept.celsius"
        usual="not said"
        note={kept === null ? undefined : otherDegrees(kept.celsius, style.unit)}
      />
      <GlueRow path="build.kept.humidity" usual="not said" />
      <table className="figures loose small-figures">
        <caption>Water that wood comes to hold, % of its dry weight</caption>
        <tbody>
          <tr>
            <th scope="row">Where it is glued</th>
            <td>{at.toFixed(2)}</td>
          </tr>
          {then !== null && (
            <>
              <tr>
                <th scope="row">Where it is kept</th>
                <td>{then.toFixed(2)}</td>
              </tr>
              <tr className="total">
                <th scope="row">Change</th>
                <td>{withSign(then - at, Math.abs(then - at).toFixed(2))}</td>
              </tr>
            </>
          )}
        </tbody>
      </table>
      <p className="field-note">
        After days or weeks in that air; finish slows it. Source: two-hydrate equation, Simpson, FPL-RN-0268, 1998.
      </p>
      {then !== null && <MovementRows from={at} to={then} />}
    </>
  );
}
