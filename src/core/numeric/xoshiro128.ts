/** The four 32-bit words of the generator's state, not all 0. */
export type Xoshiro128State = readonly [number, number, number, number];

/**
 * The generator xoshiro128** 1.1 of Blackman and Vigna (2018, placed in the public domain): a function whose calls
 * answer whole numbers from 0 to 2³² − 1, the same ones for the same state. Not for secrets.
 *
 * @throws RangeError when the state is all 0, which it would never leave
 */
export function xoshiro128([w0, w1, w2, w3]: Xoshiro128State): () => number {
  let [a, b, c, d] = [w0 | 0, w1 | 0, w2 | 0, w3 | 0];
  if ((a | b | c | d) === 0) throw new RangeError('Expected a state that is not all 0.');
  return () => {
    const result = Math.imul(turnLeft(Math.imul(b, 5), 7), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = turnLeft(d, 11);
    return result >>> 0;
  };
}

const turnLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));
