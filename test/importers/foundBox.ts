import { pathBounds } from '../../src/core/geom/pathBounds';
import type { Bounds } from '../../src/core/geom/types';
import type { DrawingScale, ImportedOutlines } from '../../src/core/ports';
import { readOutlines } from '../../src/importers/readOutlines';

/** What a file holds; a file that cannot be read fails the test with the message. */
export const readFile = (file: string | Uint8Array, scale: DrawingScale = { by: 'file' }): ImportedOutlines => {
  const result = readOutlines('drawing', file, scale);
  if (!result.ok) throw new Error(result.issues[0]?.message);
  return result.value;
};

/** The code and message with which a file is refused. */
export const refusalOf = (
  file: string | Uint8Array,
  scale: DrawingScale = { by: 'file' },
): { code: string; message: string } => {
  const result = readOutlines('drawing', file, scale);
  return result.ok ? { code: '', message: 'It was read.' } : { code: '', message: '', ...result.issues[0] };
};

/** The box around everything that was found, mm. */
export const foundBox = ({ outlines }: ImportedOutlines): Bounds => {
  const boxes = outlines.map(({ path }) => pathBounds(path));
  return {
    minX: Math.min(...boxes.map((box) => box.minX)),
    minY: Math.min(...boxes.map((box) => box.minY)),
    maxX: Math.max(...boxes.map((box) => box.maxX)),
    maxY: Math.max(...boxes.map((box) => box.maxY)),
  };
};
