import type { PartName } from '../types';

/** Node `index` of the outline, counted from 0, as a part that can be chosen: "node 1" is the first. */
export const nodePart = (index: number): PartName => `node ${index + 1}`;

/** Which node a part is, counted from 0; null when it is no node. */
export const nodeOfPart = (part: PartName): number | null => {
  const number = /^node ([1-9]\d{0,5})$/.exec(part)?.[1];
  return number === undefined ? null : Number(number) - 1;
};

/** The nodes among parts, counted from 0, in the order in which they were chosen. */
export const nodesAmong = (parts: readonly PartName[]): readonly number[] =>
  parts.flatMap((part) => nodeOfPart(part) ?? []);
