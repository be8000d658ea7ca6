import type { Bounds } from './types';

/** The smallest upright rectangle around some, mm; infinite and inside out around none. */
export const aroundAll = (boxes: readonly Bounds[]): Bounds => ({
  minX: Math.min(...boxes.map(({ minX }) => minX)),
  minY: Math.min(...boxes.map(({ minY }) => minY)),
  maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
  maxY: Math.max(...boxes.map(({ maxY }) => maxY)),
});
