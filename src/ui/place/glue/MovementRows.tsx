import { pathBounds } from '../../../core/geom/pathBounds';
import { GRAIN_COEFFICIENTS, GRAIN_SOURCE } from '../../../core/glue/grainCoefficients';
import { grainMovement, MOISTURE_RANGE } from '../../../core/glue/grainMovement';
import { coefficientOf, USUAL_MOVEMENT } from '../../../core/glue/usualMovement';
import { chooseGrain } from '../../../store/commands/glue/chooseGrain';
import { useChange } from '../../draw/repair/useChange';
import { More } from '../../fields/More';
import { SelectRow } from '../../fields/SelectRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { withSign } from '../../withSign';
import { GlueRow } from './GlueRow';

const CUTS = ['radial', 'tangential'] as const;
const PIECES = ['top', 'bridge'] as const;
const WOODS = [
  ...GRAIN_COEFFICIENTS.map(({ id, name }) => ({ value: id, label: name })),
  { value: '', label: 'another wood: own figures' },
];

interface Moisture {
  /** % of dry weight. */
  readonly from: number;
  readonly to: number;
}

/** What a change of air does across the grain of top and bridge. */
export function MovementRows({ from, to }: Moisture) {
  const change = useChange();
  const { bridge } = useStore((state) => state.derived);
  const movement = useStore((state) => state.project.build?.movement ?? USUAL_MOVEMENT);
  const { style, withUnit } = useLengths();
  if (!bridge.ok) return null;
  const { minX, maxX, minY, maxY } = pathBounds(bridge.value.footprint.outline);
  const [length, width] = [maxX - minX, maxY - minY];
  const text = (across: number, piece: 'top' | 'bridge', cut: 'radial' | 'tangential'): string => {
    const coefficient = coefficientOf(movement[piece], cut);
    if (coefficient === null) return 'not known';
    const by = grainMovement(across, coefficient, from, to);
    // Fine figures, whatever the screen is set to: most of them are tenths of a millimetre.
    return withSign(by, style.unit === 'mm' ? Math.abs(by).toFixed(2) : (Math.abs(by) / 25.4).toFixed(3));
  };
  const rows = [
    { label: `Top, over the bridge’s length, ${withUnit(length)}`, across: length, piece: 'top' },
    { label: 'Top, over 100 mm', across: 100, piece: 'top' },
    { label: `Bridge, over its width, ${withUnit(width)}`, across: width, piece: 'bridge' },
  ] as const;
  const outside = [from, to].some((moisture) => moisture < MOISTURE_RANGE.least || moisture > MOISTURE_RANGE.most);
  return (
    <>
      <table className="figures loose small-figures">
        <caption>Wider (+) or narrower (−) across the grain, {style.unit}</caption>
        <thead>
          <tr>
            <th scope="col">Wood</th>
            <th scope="col">Quarter-sawn</th>
            <th scope="col">Flat-sawn</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ label, across, piece }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {CUTS.map((cut) => (
                <td key={cut}>{text(across, piece, cut)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="field-note">
        Along its own grain wood hardly moves: the bridge keeps its length while the top under it does not, and the
        joint carries the difference.
        {outside && ' The figures hold from 6 to 14 % of water: these lie outside, take them as a guess.'}
      </p>
      <More summary="Woods and their figures">
        {PIECES.map((piece) => (
          <div key={piece}>
            <SelectRow
              label={piece === 'top' ? 'Wood of the top' : 'Wood of the bridge'}
              value={movement[piece].wood}
              choices={WOODS}
              choose={(wood) => {
                const name = WOODS.find(({ value }) => value === wood)?.label ?? wood;
                change(`Wood of the ${piece}: ${name}`, (project) => chooseGrain(project, piece, wood));
              }}
            />
            {CUTS.map((cut) => (
              <GlueRow
                key={cut}
                path={`build.movement.${piece}.${cut}`}
                label={`${cut === 'radial' ? 'Quarter-sawn' : 'Flat-sawn'}, per 1 % of water`}
                usual={usualPercent(movement[piece].wood, cut)}
              />
            ))}
          </div>
        ))}
        <p className="field-note">Source: {GRAIN_SOURCE}.</p>
      </More>
    </>
  );
}

const usualPercent = (wood: string, cut: 'radial' | 'tangential'): string => {
  const row = GRAIN_COEFFICIENTS.find(({ id }) => id === wood);
  return row === undefined ? 'not known' : String(Number((row[cut] * 100).toFixed(3)));
};
