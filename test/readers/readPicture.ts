/** A grey picture: one byte a pixel, 0 black, 255 white, row by row from the top left. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** A binary PGM file, as pdftoppm -gray writes it. Source: netpbm, pgm(5). */
export function readPgm(bytes: Uint8Array): GreyPicture {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 100));
  const [all, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/u.exec(head) ?? [];
  if (all === undefined) throw new Error('expected a binary PGM of 256 greys');
  return { width: Number(width), height: Number(height), grey: bytes.subarray(all.length) };
}

/** How dark the picture is at a place in pixels, between pixel centres by straight lines: 0 white, 1 black. */
export function darkness({ width, grey }: GreyPicture, x: number, y: number): number {
  const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
  const [right, down] = [x - 0.5 - left, y - 0.5 - top];
  const at = (column: number, row: number) => 1 - (grey[row * width + column] ?? 255) / 255;
  return (
    (1 - down) * ((1 - right) * at(left, top) + right * at(left + 1, top)) +
    down * ((1 - right) * at(left, top + 1) + right * at(left + 1, top + 1))
  );
}

/** Where along a stretch, from −reach to + reach pixels, the line that crosses it lies: the centre of its darkness. */
export function lineAlong(reach: number, darkAt: (along: number) => number): number {
  const steps = Array.from({ length: 8 * reach + 1 }, (_, index) => index / 4 - reach);
  const total = steps.reduce((sum, along) => sum + darkAt(along), 0);
  if (total < 4) throw new Error('expected a line to cross here, and there is none');
  return steps.reduce((sum, along) => sum + along * darkAt(along), 0) / total;
}
