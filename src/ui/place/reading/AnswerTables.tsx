import type { PlaceAnswer } from '../../../core/placement/reading/answerTypes';
import { NINETEEN_OF_TWENTY } from '../../plusMinus';
import { useLengths } from '../../useLengths';
import { signedCents, withSign } from '../../withSign';
import { amountOf, FREEDOM_NAME, FREEDOM_VERDICT, sideOf } from './answerWords';
import { fine } from './fine';

/** The answer in figures: each way that the bridge may be off, and what it costs if it is left. */
export function AnswerTables({ answer }: { readonly answer: PlaceAnswer }) {
  const { style } = useLengths();
  const { freedoms, strings, margins } = answer;
  const told = strings.every(({ sigma }) => Number.isFinite(sigma));
  const length = (mm: number): string => withSign(mm, fine(Math.abs(mm), style).replace(/ mm$|″$/, ''));
  return (
    <>
      <table className="figures loose" aria-label="How it sits">
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
                {FREEDOM_NAME[each.freedom]}
                {each.verdict !== 'unseen' && Math.abs(each.off) > 1e-4 && <small>{sideOf(each)}</small>}
              </th>
              <td>{each.verdict === 'unseen' ? 'unknown' : amountOf(each.freedom, each.off, style)}</td>
              <td>{each.verdict === 'unseen' ? '' : amountOf(each.freedom, NINETEEN_OF_TWENTY * each.sigma, style)}</td>
              <td>{amountOf(each.freedom, each.tolerance, style)}</td>
              <td>{FREEDOM_VERDICT[each.verdict]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {told && (
        <table className="figures loose" aria-label="What it costs if left">
          <caption>What it costs if left, string by string at the 12th fret, + sharp</caption>
          <thead>
            <tr>
              <th scope="col">String</th>
              <th scope="col">Breaks off by, {style.unit}</th>
              <th scope="col">Cents</th>
              <th scope="col">±</th>
            </tr>
          </thead>
          <tbody>
            {strings.map(({ id, name, off, cents, centsSigma }, index) => (
              <tr key={id}>
                <th scope="row">
                  {index + 1} {name}
                </th>
                <td>{length(off)}</td>
                <td>{signedCents(cents)}</td>
                <td>{(NINETEEN_OF_TWENTY * centsSigma).toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {margins.every(({ sigma }) => Number.isFinite(sigma)) && (
        <table className="figures loose" aria-label="Edge to string at the last fret">
          <caption>Edge of the board to the outside of the string, at the last fret</caption>
          <thead>
            <tr>
              <th scope="col">Side</th>
              <th scope="col">Now</th>
              <th scope="col">±</th>
              <th scope="col">Meant</th>
            </tr>
          </thead>
          <tbody>
            {margins.map(({ side, now, meant, sigma }) => (
              <tr key={side}>
                <th scope="row">{side}</th>
                <td>{fine(now, style)}</td>
                <td>{fine(NINETEEN_OF_TWENTY * sigma, style)}</td>
                <td>{fine(meant, style)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
