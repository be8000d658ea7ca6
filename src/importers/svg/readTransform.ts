import { compose, IDENTITY, type Matrix, moved, scaled, turned } from '../matrix';

const RADIANS = Math.PI / 180;

const single = (name: string, args: readonly number[]): Matrix | null => {
  const [a = 0, b, c, d, e, f] = args;
  const count = args.length;
  switch (name) {
    case 'matrix':
      return b === undefined || c === undefined || d === undefined || e === undefined || f === undefined || count > 6
        ? null
        : [a, b, c, d, e, f];
    case 'translate':
      return count === 1 || count === 2 ? moved(a, b ?? 0) : null;
    case 'scale':
      return count === 1 || count === 2 ? scaled(a, b ?? a) : null;
    case 'rotate': {
      if (count === 1) return turned(a * RADIANS);
      if (b === undefined || c === undefined || count > 3) return null;
      return compose(moved(b, c), compose(turned(a * RADIANS), moved(-b, -c)));
    }
    case 'skewX':
      return count === 1 ? [1, 0, Math.tan(a * RADIANS), 1, 0, 0] : null;
    case 'skewY':
      return count === 1 ? [1, Math.tan(a * RADIANS), 0, 1, 0, 0] : null;
    default:
      return null;
  }
};

/** The numbers of a list in which they may touch ("1-2", ".5.5"), or null when something else stands in it. */
export const readNumbers = (text: string): number[] | null => {
  const next = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)/iy;
  const numbers: number[] = [];
  let read = 0;
  for (let found = next.exec(text); found !== null; found = next.exec(text)) {
    numbers.push(Number(found[1]));
    read = next.lastIndex;
  }
  return /^[\s,]*$/.test(text.slice(read)) ? numbers : null;
};

/** The matrix of a transform attribute, the leftmost outermost; null when it cannot be read. */
export const readTransform = (text: string | undefined): Matrix | null => {
  if (text === undefined || text.trim() === '' || text.trim() === 'none') return IDENTITY;
  if (text.length > 2000) return null;
  let matrix = IDENTITY;
  const rest = text.replace(/\s*,?\s*([A-Za-z]+)\s*\(([^()]*)\)/g, (_, name: string, list: string) => {
    const next = single(name, readNumbers(list) ?? []);
    matrix = compose(matrix, next ?? [Number.NaN, 0, 0, Number.NaN, 0, 0]);
    return '';
  });
  return rest.trim() === '' && matrix.every(Number.isFinite) ? matrix : null;
};
