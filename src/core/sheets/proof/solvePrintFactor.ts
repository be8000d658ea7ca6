import { failed, type Issue, issue, ok, type Result } from '../../result';
import { PLAUSIBLE } from './plausible';
import { printCause } from './printCause';
import type { PrintFactor, PrintReading, PrintVerdict } from './types';

/** Doubt of one reading of a half-millimetre rule, mm, and the bridge that a print must be right for when none is told. */
const USUAL_SIGMA = 0.25;
const USUAL_PART = { x: 152.4, y: 38.1 } as const;

/** Error that a placed bridge can bear, mm; common practice, no source. */
const TRUE_AT_PART = 0.25;
/** A paper stretches or a printer feeds wrong by less than this; a setting moves both ways by more. Common practice, no source. */
const SETTING = 0.005;
/** Departure from square, radians, that a bridge can bear: 0.15°, common practice, no source. */
const SQUARE = (0.15 * Math.PI) / 180;
/** Sigmas either way that hold two readings together in 95 of 100: normal deviate of 1.25 %, from memory. */
const SURE_SIGMAS = 2.2414;

interface Found {
  readonly x: number;
  readonly y: number;
  readonly skew: number;
}

/** The verdict on a print that is `x` and `y` times its size and `skew` radians out of square. */
const verdictOn = ({ x, y, skew }: Found, part: { readonly x: number; readonly y: number }): PrintVerdict => {
  if (Math.min(x, y) < PLAUSIBLE.least || Math.max(x, y) > PLAUSIBLE.most) return 'refuse';
  const small = x < 1 - SETTING && y < 1 - SETTING;
  const large = x > 1 + SETTING && y > 1 + SETTING;
  if (small || large || Math.abs(skew) > SQUARE) return 'reprint';
  const within = Math.abs(x - 1) * part.x <= TRUE_AT_PART && Math.abs(y - 1) * part.y <= TRUE_AT_PART;
  return within ? 'true' : 'correct';
};

/** Places to try in an interval: its ends, its middle, and 1 when that lies in it. */
const tries = (middle: number, reach: number, ideal: number): readonly number[] => [
  middle - reach,
  middle,
  middle + reach,
  ...(Math.abs(middle - ideal) < reach ? [ideal] : []),
];

/** Sides of the figure that the diagonals cross: the frame of the long lines when they fit it, else a square. */
const sidesOf = (nominalX: number, nominalY: number, diagonal: number) => {
  const frame = Math.hypot(nominalX, nominalY);
  if (Math.abs(frame - diagonal) <= 0.005 * diagonal) return { x: nominalX, y: nominalY };
  return { x: diagonal / Math.SQRT2, y: diagonal / Math.SQRT2 };
};

/**
 * Out of square by the diagonals of a parallelogram with sides X and Y: a² − b² = 4·X·Y·sin s; radians with its doubt. The
 * sine never leaves −1 to 1, however wrong the diagonals are.
 */
const skewOf = (reading: PrintReading, x: number, y: number, sigma: number) => {
  const { diagonals, nominalX, nominalY } = reading;
  if (diagonals === undefined) return { skew: 0, doubt: 0 };
  const sides = sidesOf(nominalX, nominalY, diagonals.nominal);
  const area = 4 * sides.x * x * sides.y * y;
  const sine = (diagonals.a ** 2 - diagonals.b ** 2) / area;
  const doubt = (2 * sigma * Math.hypot(diagonals.a, diagonals.b)) / area;
  return { skew: Math.asin(Math.min(1, Math.max(-1, sine))), doubt };
};

const readingIssues = (reading: PrintReading): readonly Issue[] => {
  const { nominalX, nominalY, readX, readY, diagonals, sigma, part } = reading;
  const lengths: readonly (readonly [string, number])[] = [
    ['nominalX', nominalX],
    ['nominalY', nominalY],
    ['readX', readX],
    ['readY', readY],
    ...(diagonals === undefined
      ? []
      : ([
          ['diagonals.nominal', diagonals.nominal],
          ['diagonals.a', diagonals.a],
          ['diagonals.b', diagonals.b],
        ] as const)),
    ...(sigma === undefined ? [] : ([['sigma', sigma]] as const)),
    ...(part === undefined
      ? []
      : ([
          ['part.x', part.x],
          ['part.y', part.y],
        ] as const)),
  ];
  return lengths.flatMap(([path, value]) =>
    Number.isFinite(value) && value > 0 ? [] : [issue(path, 'print.length', 'Expected a length above 0.')],
  );
};

const hintFor = (verdict: PrintVerdict, { x, y, skew }: Found): string | null => {
  if (verdict === 'true' || verdict === 'correct') return null;
  const both = (x < 1 - SETTING && y < 1 - SETTING) || (x > 1 + SETTING && y > 1 + SETTING);
  if (both && Math.abs(x - y) <= 2 * SETTING) return printCause((x + y) / 2);
  if (verdict === 'reprint' && !both)
    return `The print is ${Math.abs((skew * 180) / Math.PI).toFixed(2)}° out of square: the sheet went in askew. Feed it along its guides and print again.`;
  return `Printed at ${(x * 100).toFixed(1)} % across and ${(y * 100).toFixed(1)} % along, which no scale of the print dialog does: read again, or print from another program.`;
};

/**
 * What a print's long lines and diagonals say of it, each axis by itself. Elementary ratios; the doubt of a factor is that
 * of its reading. Code: print.length (a length that is not above 0).
 */
export const solvePrintFactor = (reading: PrintReading): Result<PrintFactor> => {
  const issues = readingIssues(reading);
  if (issues.length > 0) return failed(issues);
  const { nominalX, nominalY, readX, readY, sigma = USUAL_SIGMA, part = USUAL_PART } = reading;
  const [x, y] = [readX / nominalX, readY / nominalY];
  const { skew, doubt } = skewOf(reading, x, y, sigma);
  const found: Found = { x, y, skew };
  const verdict = verdictOn(found, part);
  const sure = tries(x, (SURE_SIGMAS * sigma) / nominalX, 1).every((tryX) =>
    tries(y, (SURE_SIGMAS * sigma) / nominalY, 1).every((tryY) =>
      tries(skew, SURE_SIGMAS * doubt, 0).every(
        (trySkew) => verdictOn({ x: tryX, y: tryY, skew: trySkew }, part) === verdict,
      ),
    ),
  );
  return ok({
    factorX: 1 / x,
    factorY: 1 / y,
    sigmaX: sigma / (nominalX * x ** 2),
    sigmaY: sigma / (nominalY * y ** 2),
    skewDeg: (skew * 180) / Math.PI,
    errorAtPart: { x: (x - 1) * part.x, y: (y - 1) * part.y },
    verdict,
    sure,
    hint: hintFor(verdict, found),
  });
};
