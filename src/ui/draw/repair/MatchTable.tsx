import type { HoleMatch, HolePair } from '../../../core/repair/types';
import { useStore } from '../../useStore';
import { fine, signedFine } from './fineLengths';

const nameOf = ({ pin, old }: HolePair): string =>
  pin.label.replace(/\D/g, '') === old.label.replace(/\D/g, '') ? pin.label : `${pin.label}, ${old.label}`;

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

const long = ({ x, y }: { readonly x: number; readonly y: number }): number => Math.hypot(x, y);

/** How far each old hole lies off its new pin. */
export function MatchTable({ match }: { readonly match: HoleMatch }) {
  const unit = useStore((state) => state.device.units);
  const { pairs, fit, worstPlaced } = match;
  const rms = Math.sqrt(pairs.reduce((sum, { placed }) => sum + long(placed) ** 2, 0) / pairs.length);
  const totals = [
    { label: 'Largest', placed: worstPlaced, fitted: fit.worst },
    { label: 'Root mean square', placed: rms, fitted: fit.rms },
  ];
  return (
    <>
      <table className="figures loose small-figures">
        <caption>Old holes against new pins, {unit}</caption>
        <thead>
          <tr>
            <th scope="col">Pin</th>
            <th scope="col">Side</th>
            <th scope="col">Along</th>
            <th scope="col">Off</th>
            <th scope="col">Best fit</th>
          </tr>
        </thead>
        <tbody>
          {pairs.map((pair) => (
            <tr key={pair.pin.id}>
              <th scope="row">{capital(nameOf(pair))}</th>
              <td>{signedFine(pair.placed.x, unit)}</td>
              <td>{signedFine(pair.placed.y, unit)}</td>
              <td>{fine(long(pair.placed), unit)}</td>
              <td>{fine(long(pair.fitted), unit)}</td>
            </tr>
          ))}
          {totals.map(({ label, placed, fitted }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td />
              <td />
              <td>{fine(placed, unit)}</td>
              <td>{fine(fitted, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="hint">
        Old hole from its new pin, with the bridge where the strings want it: + to the treble side, + toward the tail.
        Best fit: what is left after the whole bridge is moved and turned to match.
      </p>
    </>
  );
}
