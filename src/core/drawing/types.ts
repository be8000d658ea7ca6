import type { Path, Point } from '../geom/types';

/**
 * What a line or a text means. Each role has one line type (ISO 128) and one weight, on screen and on paper:
 * see `lineStyles`. Roles of text only: label, note, key, heading.
 */
export type Role =
  | 'outline'
  | 'slot'
  | 'hole'
  | 'centreline'
  | 'board-edge'
  | 'string-line'
  | 'square-line'
  | 'octave-line'
  | 'finish-line'
  | 'beneath'
  | 'former'
  | 'dimension'
  | 'mark'
  | 'window'
  | 'cross'
  | 'rule-line'
  | 'frame'
  | 'scissors'
  | 'plot-axis'
  | 'plot-line'
  | 'plot-reach'
  | 'plot-mark'
  | 'plot-model'
  | 'plot-bar'
  | 'label'
  | 'note'
  | 'key'
  | 'heading';

/** Layers of the drawing, in painting order; also the groups of exported files. */
export type Layer =
  | 'windows'
  | 'body'
  | 'former'
  | 'board'
  | 'strings'
  | 'bridge'
  | 'slot'
  | 'pins'
  | 'locating'
  | 'lines'
  | 'dimensions'
  | 'text'
  | 'sheet';

/** Part of the instrument that an item belongs to, by which it is picked: "slot", "pin 3", "footprint". */
export type PartName = string;

interface ItemBase {
  /** Stable from one build to the next, unique in its list. */
  readonly id: string;
  readonly part: PartName;
  readonly role: Role;
  readonly layer: Layer;
}

export interface PathItem extends ItemBase {
  readonly kind: 'path';
  readonly path: Path;
}

/**
 * Text upright to its reader. `at` lies midway up the capitals, so that mirroring a drawing moves the point and leaves
 * the words alone. height: font size, mm. angle: radians, + turns clockwise as seen. bold by role: key and heading.
 */
export interface TextItem extends ItemBase {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly angle: number;
}

/** The display list: mm, in painting order. */
export type Item = PathItem | TextItem;
