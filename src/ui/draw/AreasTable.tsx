import type { Areas } from '../../core/derive/deriveAreas';
import { MM_PER_INCH } from '../../core/units/mmPerInch';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** The units of area beside one another, with what one of each is in mm² and how finely it is written. */
const UNITS = {
  mm: [
    { name: 'mm²', size: 1, decimals: 0 },
    { name: 'cm²', size: 100, decimals: 2 },
  ],
  in: [{ name: 'in²', size: MM_PER_INCH ** 2, decimals: 3 }],
} as const;

const ROWS: readonly { readonly label: string; readonly area: (areas: Areas) => number }[] = [
  { label: 'Footprint', area: ({ footprint }) => footprint },
  { label: 'Through holes', area: ({ holes }) => holes },
  { label: 'Left under the rim', area: ({ underRim }) => underRim },
  { label: 'Glue area', area: ({ glue }) => glue },
];

/** What the bridge covers, what holds it and what it weighs; empty cells until that is known. */
export function AreasTable() {
  const areas = useStore((state) => state.areas);
  const units = UNITS[useStore((state) => state.device.units)];
  const { withUnit } = useLengths();
  const known = areas?.ok ? areas.value : null;
  const reasons = areas === null || areas.ok ? [] : areas.issues;
  const totals = [
    { label: 'Share lost to the rim', text: known && `${(known.shareLost * 100).toFixed(1)} %` },
    { label: 'Centroid, from the front edge', text: known && withUnit(known.centroidFromFront) },
    { label: 'Weight as a plain blank', text: known && `${known.weight.toFixed(1)} g` },
  ];
  return (
    <>
      <table className="figures loose small-figures">
        <caption>Areas</caption>
        <thead>
          <tr>
            <th scope="col">Of the sole</th>
            {units.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ROWS.map(({ label, area }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {units.map(({ name, size, decimals }) => (
                <td key={name}>{known && (area(known) / size).toFixed(decimals)}</td>
              ))}
            </tr>
          ))}
          {totals.map(({ label, text }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td colSpan={units.length}>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {reasons.map(({ path, code, message }) => (
        <p key={`${path} ${code}`} className="not-yet">
          Not computed: {message}
        </p>
      ))}
      <p className="hint">
        A stopped slot costs no glue area. The weight is an upper figure: the footprint as thick all over as at the
        slot, nothing cut away.
      </p>
    </>
  );
}
