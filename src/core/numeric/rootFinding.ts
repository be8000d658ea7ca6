const MOST_STEPS = 200;

/**
 * Where `f` is zero between `low` and `high`, at whose ends it has different signs. Safeguarded: takes the secant or
 * inverse quadratic step while that converges, and halves the interval when it does not (Brent, Algorithms for
 * Minimization without Derivatives, 1973, ch. 4).
 *
 * @param tolerance how near to the root, in the unit of x; rounding of x itself is added
 * @throws RangeError when the ends do not enclose a change of sign, or `f` is not finite at a point tried
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 1e-12): number {
  let [a, b] = [low, high];
  let [fa, fb] = [finite(f, a), finite(f, b)];
  if (fa * fb > 0) throw new RangeError(`Expected a change of sign between ${low} and ${high}, got ${fa} and ${fb}.`);
  let [c, fc] = [a, fa];
  let step = b - a;
  let before = step;
  for (let count = 0; count < MOST_STEPS; count++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    const guess =
      Math.abs(before) >= near && Math.abs(fa) > Math.abs(fb) ? interpolate(a, b, c, fa, fb, fc) : Number.NaN;
    const inside = guess / half >= 0 && Math.abs(guess) < 1.5 * Math.abs(half) - near / 2;
    const useful = inside && Math.abs(guess) < Math.abs(before) / 2;
    [before, step] = useful ? [step, guess] : [half, half];
    [a, fa] = [b, fb];
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = finite(f, b);
    if (fb > 0 === fc > 0) {
      [c, fc] = [a, fa];
      step = b - a;
      before = step;
    }
  }
  return b;
}

/** The step from b to where the secant, or the inverse parabola through three points, meets zero. */
function interpolate(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return (-s * (a - b)) / (1 - s);
  const q = fa / fc;
  const r = fb / fc;
  const upper = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -upper / ((q - 1) * (r - 1) * (s - 1));
}

function finite(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (!Number.isFinite(value)) throw new RangeError(`Expected a finite value at ${x}, got ${value}.`);
  return value;
}
