import { useEffect, useState } from 'react';
import { type RimCost, rimCosts } from '../../../core/derive/rimCosts';
import { showArea } from '../../../core/sheets/parts/finish/showArea';
import { MM_PER_INCH } from '../../../core/units/mmPerInch';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { fine } from '../reading/fine';

/** Widths that the sources speak of. */
const SPOKEN_OF = [32, 16, 8].map((part) => ({ name: `1/${part} in`, width: MM_PER_INCH / part }));

interface NamedCost extends RimCost {
  readonly name: string;
}

/** What a rim without glue costs this very bridge, and what the rebate does where it is wider than the rim. */
export function RimCosts() {
  const { bridge } = useStore((state) => state.project);
  const place = useStore((state) => state.derived.bridge);
  const rebate = useStore((state) => state.project.build?.rebate?.width ?? 0);
  const { style } = useLengths();
  const [costs, setCosts] = useState<readonly NamedCost[]>([]);
  const { density, thickness, rim } = bridge;
  useEffect(() => {
    let wanted = true;
    const asked = [...SPOKEN_OF, ...(rebate > rim ? [{ name: 'the rebate', width: rebate }] : [])];
    void rimCosts({ density, thickness }, place, asked).then((found) => {
      if (wanted) setCosts(found.ok ? found.value : []);
    });
    return () => {
      wanted = false;
    };
  }, [density, thickness, place, rebate, rim]);
  if (costs.length === 0) return null;
  return (
    <table className="figures loose small-figures">
      <caption>What finish left all round takes of this bridge’s glue area</caption>
      <thead>
        <tr>
          <th scope="col">Left under the rim</th>
          <th scope="col">Area lost</th>
          <th scope="col">Share</th>
        </tr>
      </thead>
      <tbody>
        {costs.map(({ name, width, lost, share }) => (
          <tr key={name}>
            <th scope="row">
              {name}, {fine(width, style)}
            </th>
            <td>{showArea(lost, style.unit)}</td>
            <td>{Math.round(share * 100)} %</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
