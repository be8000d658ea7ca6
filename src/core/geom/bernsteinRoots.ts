/** A lone root is closed in on until its interval is this narrow: a double between 0 and 1 holds little more. */
const ONE_ROOT_WIDTH = 1e-15;

/** Roots that lie nearer together than this are told as one; between them the polynomial is flat to the third order. */
const MANY_ROOTS_WIDTH = 1e-5;

const MOST_STEPS = 100;

/**
 * Where a polynomial given by its Bernstein coefficients is zero between 0 and 1 (both left out), in growing order.
 *
 * Its coefficients change sign at least as often as it has roots, and by an even number more (Descartes' rule of signs
 * in Bernstein form), so halves without a change are dropped and the rest are halved again until one root is left.
 */
export function bernsteinRoots(coefficients: readonly number[]): number[] {
  const roots: number[] = [];
  search(coefficients, 0, 1, roots);
  return roots;
}

function search(coefficients: readonly number[], low: number, high: number, roots: number[]): void {
  const changes = signChanges(coefficients);
  if (changes === 0) return;
  const [first = 0, last = 0] = [coefficients[0], coefficients.at(-1)];
  if (changes === 1 && first * last < 0) {
    roots.push(low + (high - low) * loneRoot(coefficients, first < 0, ONE_ROOT_WIDTH / (high - low)));
    return;
  }
  const middle = (low + high) / 2;
  if (high - low < MANY_ROOTS_WIDTH) {
    roots.push(middle);
    return;
  }
  const [left, right] = halve(coefficients);
  search(left, low, middle, roots);
  if (right[0] === 0) roots.push(middle);
  search(right, middle, high, roots);
}

/** The root between 0 and 1 of a polynomial that passes zero once: Newton's steps, and halving where they leave it. */
function loneRoot(coefficients: readonly number[], rises: boolean, width: number): number {
  let [low, high, t] = [0, 1, 0.5];
  for (let step = 0; step < MOST_STEPS; step++) {
    const { value, slope } = valueAt(coefficients, t);
    if (value < 0 === rises) low = t;
    else high = t;
    const newton = t - value / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) <= width) return next;
    t = next;
  }
  return t;
}

/** Value and slope by de Casteljau's construction, whose last line but one has the slope in it. */
function valueAt(coefficients: readonly number[], t: number): { value: number; slope: number } {
  const row = [...coefficients];
  for (let length = row.length - 1; length > 1; length--)
    for (let i = 0; i < length; i++) row[i] = between(row[i], row[i + 1], t);
  const [first = 0, last = 0] = row;
  return { value: between(first, last, t), slope: (coefficients.length - 1) * (last - first) };
}

const between = (a = 0, b = 0, t: number): number => a + (b - a) * t;

function signChanges(coefficients: readonly number[]): number {
  let changes = 0;
  let before = 0;
  for (const coefficient of coefficients) {
    if (coefficient * before < 0) changes++;
    if (coefficient !== 0) before = Math.sign(coefficient);
  }
  return changes;
}

/** De Casteljau's construction at one half: the coefficients of both halves. */
function halve(coefficients: readonly number[]): [number[], number[]] {
  const right = [...coefficients];
  const left = right.slice(0, 1);
  for (let length = right.length - 1; length > 0; length--) {
    for (let i = 0; i < length; i++) right[i] = between(right[i], right[i + 1], 0.5);
    left.push(right[0] ?? 0);
  }
  return [left, right];
}
