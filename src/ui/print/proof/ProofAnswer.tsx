import type { PrintProof } from '../../../core/sheets/proof/provePrint';
import { formatLength } from '../../../core/units/formatLength';
import { NINETEEN_OF_TWENTY } from '../../plusMinus';
import { useLengths } from '../../useLengths';
import { signedCents, withSign } from '../../withSign';
import { doubtWords, VERDICTS } from './proofWords';

/** Small errors are told finer than a rule reads: hundredths of a millimetre, thousandths of an inch. */
const useFine = (): ((mm: number) => string) => {
  const { unit } = useLengths().style;
  return (mm) => {
    const text = formatLength(Math.abs(mm), unit === 'mm' ? { unit, decimals: 2 } : { unit, decimals: 3 });
    return `${withSign(mm, text)} ${unit}`;
  };
};

const factor = (value: number, sigma: number): string =>
  `${value.toFixed(4)} ± ${(sigma * NINETEEN_OF_TWENTY).toFixed(4)}`;

/** Which way the print leans, by its longer diagonal. */
const skewWords = (degrees: number): string => {
  const size = Math.abs(degrees).toFixed(2);
  if (size === '0.00') return '0.00°';
  return `${size}°, long to the ${degrees > 0 ? 'bottom' : 'top'} right`;
};

interface ProofAnswerProps {
  readonly proof: PrintProof;
  readonly squared: boolean;
  /** Says that the print in hand was corrected already, so that what is told is what is left. */
  readonly carries: boolean;
}

/** What the readings say of the print. */
export function ProofAnswer({ proof, squared, carries }: ProofAnswerProps) {
  const fine = useFine();
  const { name, words, look } = VERDICTS[proof.verdict];
  const doubt = doubtWords(proof);
  const rows = [
    ['Factor across', factor(proof.factorX, proof.sigmaX)],
    ['Factor along', factor(proof.factorY, proof.sigmaY)],
    ...(squared ? [['Out of square', skewWords(proof.skewDeg)]] : []),
    ['Bridge, across', fine(proof.errorAtPart.x)],
    ['Square line to back edge', fine(proof.errorAtPart.y)],
    ...(proof.cents === null ? [] : [['Break point by paper alone', `${signedCents(proof.cents)} cents`]]),
  ] as const;
  return (
    <section className={`verdict${proof.sure ? look : look || ' verdict-look'}`} aria-label="Verdict on the print">
      <p className="verdict-words">
        {name}
        {carries && proof.verdict === 'true' ? ', once corrected' : ''}: {words}
      </p>
      {doubt !== null && <p>{doubt}</p>}
      {proof.hint !== null && <p>{proof.hint}</p>}
      <table className="figures loose small-figures proof-figures">
        <caption>{carries ? 'What the correction left' : 'Print proof'}</caption>
        <tbody>
          {rows.map(([label, text]) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <small>
        ±: 19 times of 20. Lengths: how far the print is off, + too long. Cents at the 12th fret, + sharp: what the
        print alone would cost from the square line to the break point.
      </small>
    </section>
  );
}
