import type { PartName } from '../../../core/drawing/types';

/** Parts as a step of the history names them: "pin 3", "3 parts". */
export const partsInWords = (parts: readonly PartName[]): string =>
  parts.length === 1 ? (parts[0] ?? '') : `${parts.length} parts`;
