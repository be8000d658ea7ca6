import type { Layer, PartName } from '../types';

/** What a dimension says and whose it is. Its items take their ids from `id`: "<id>-line", "<id>-text" and so on. */
export interface DimensionWords {
  /** Name and figure as they are to be read. */
  readonly text: string;
  readonly id: string;
  readonly part: PartName;
  readonly layer: Layer;
}

/** Words on a shelf, a short level line that the dimension is led to: to the right of where it begins, or to the left. */
export type ShelfSide = 'right' | 'left';
