import { stepWords } from '../../../core/placement/reading/moveSteps';
import type { FreedomAnswer, PlaceAnswer } from '../../../core/placement/reading/placeAnswer';
import { NINETEEN_OF_TWENTY } from '../../plusMinus';
import { useLengths } from '../../useLengths';
import { signedCents } from '../../withSign';
import { fine } from './fine';

const NAME = { x: 'Sideways', y: 'Fore and aft', angle: 'Turned' } as const;

const VERDICT = {
  good: 'good',
  off: 'move it',
  unsure: 'cannot tell yet',
  unseen: 'not read',
} as const;

/** Which way a freedom is off, in words. */
const sideOf = ({ freedom, off }: FreedomAnswer): string => {
  switch (freedom) {
    case 'x':
      return off > 0 ? 'too far to the treble' : 'too far to the bass';
    case 'y':
      return off > 0 ? 'too far toward the tail' : 'too far toward the nut';
    case 'angle':
      return off > 0 ? 'treble wing toward the tail' : 'treble wing toward the nut';
  }
};

const heading = ({ verdict, steps, quarrel }: PlaceAnswer): string => {
  if (quarrel !== null) return 'One reading does not go with the rest';
  switch (verdict) {
    case 'good':
      return 'It sits well: leave it';
    case 'off':
      return 'Move it';
    case 'unsure':
      return steps.length === 0
        ? 'Near enough to tell only by finer readings'
        : 'Perhaps a little off: read more before moving it';
    case 'unseen':
      return 'Not all of it is read yet';
  }
};

/** What the readings say, in words and figures. */
export function Answer({ answer }: { readonly answer: PlaceAnswer }) {
  const { withUnit, bare, signed, style } = useLengths();
  const { freedoms, steps, strings, margins, verdict, next, crossesAlone, quarrel } = answer;
  const degrees = (radians: number): string => `${((Math.abs(radians) * 180) / Math.PI).toFixed(2)}°`;
  const amount = (each: FreedomAnswer): string =>
    each.freedom === 'angle' ? degrees(each.off) : fine(Math.abs(each.off), style);
  const doubt = (each: FreedomAnswer): string =>
    each.freedom === 'angle' ? degrees(NINETEEN_OF_TWENTY * each.sigma) : fine(NINETEEN_OF_TWENTY * each.sigma, style);
  const unseen = freedoms.filter((each) => each.verdict === 'unseen');
  const moves = unseen.length === 0 && verdict !== 'good' ? steps : [];
  return (
    <div className="place-answer">
      <h2>{heading(answer)}</h2>
      {quarrel !== null && (
        <p className="field-caution">
          It is {quarrel.times.toFixed(1)} times its own spread off, and marked beside its line. Read it again before
          you trust this.
        </p>
      )}
      {crossesAlone && (
        <p className="field-caution">
          Equal lengths across from corner to corner prove nothing alone: a bridge that lies aside and is turned at once
          has them too. Read the same sides as well, or the strings against the board.
        </p>
      )}
      {moves.length > 0 && (
        <ol className="place-moves">
          {moves.map((step) => (
            <li key={step.kind}>{stepWords(step, withUnit)}</li>
          ))}
        </ol>
      )}
      <table className="figures loose">
        <caption>How it sits, with the ± of 19 cases in 20</caption>
        <thead>
          <tr>
            <th scope="col">Way</th>
            <th scope="col">Off by</th>
            <th scope="col">±</th>
            <th scope="col">May be</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {freedoms.map((each) => (
            <tr key={each.freedom} data-verdict={each.verdict}>
              <th scope="row">
                {NAME[each.freedom]}
                {each.verdict !== 'unseen' && Math.abs(each.off) > 1e-4 && <small>{sideOf(each)}</small>}
              </th>
              <td>{each.verdict === 'unseen' ? 'unknown' : amount(each)}</td>
              <td>{each.verdict === 'unseen' ? '' : doubt(each)}</td>
              <td>{each.freedom === 'angle' ? degrees(each.tolerance) : fine(each.tolerance, style)}</td>
              <td>{VERDICT[each.verdict]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {unseen.length > 0 && (
        <p className="place-next">
          These readings cannot tell {unseen.map(({ freedom }) => NAME[freedom].toLowerCase()).join(' or ')}.
        </p>
      )}
      {next !== null && verdict !== 'good' && (
        <p className="place-next">
          Best read next: <strong>{next.label}</strong>, expected {withUnit(next.expected)}.
        </p>
      )}
      {unseen.every(({ freedom }) => freedom === 'x') && (
        <table className="figures loose">
          <caption>What it costs if left, string by string at the 12th fret, + sharp</caption>
          <thead>
            <tr>
              <th scope="col">String</th>
              <th scope="col">Breaks off by, {style.unit}</th>
              <th scope="col">Cents</th>
            </tr>
          </thead>
          <tbody>
            {strings.map(({ id, name, off, cents }, index) => (
              <tr key={id}>
                <th scope="row">
                  {index + 1} {name}
                </th>
                <td>{signed(off)}</td>
                <td>{signedCents(cents)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {unseen.length === 0 && (
        <p>
          Edge to string at the last fret:{' '}
          {margins.map(({ side, now, meant }) => `${side} ${bare(now)} (meant ${bare(meant)})`).join(', ')} {style.unit}
          .
        </p>
      )}
    </div>
  );
}
