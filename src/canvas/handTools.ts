import type { Bounds, Point } from '../core/geom/types';
import type { KeyPress } from '../core/ports';
import type { Camera, ViewSize } from './camera';
import type { OverlayState } from './tools/paintOverlay';

/** The keys that change what a press or a drag means. */
export type Keys = Omit<KeyPress, 'key'>;

/** A press on the drawing; `at` in screen pixels from the top left of the view. */
export interface Press {
  readonly at: Point;
  /** mouse, pen or touch. */
  readonly by: string;
  readonly keys: Keys;
}

/** A drag under way. */
export interface Grab {
  move(at: Point, keys: Keys): void;
  drop(): void;
  /** Everything as it was before. */
  cancel(): void;
}

/** What the tools are told of the view that they work on. */
export interface ToolView {
  /** Its unit is a screen pixel; the drawing is painted anew before each `show`. */
  readonly canvas: HTMLCanvasElement;
  camera(): Camera;
  size(): ViewSize;
  scheme(): 'light' | 'dark';
  /** The part at a screen point; null where there is none. */
  partAt(at: Point): string | null;
  /** Has the drawing drawn in the next frame. */
  redraw(): void;
  /** The view stays where it is from now on. */
  hold(): void;
}

/** Work on the drawing by hand. It is loaded when the maker draws. */
export interface HandTools {
  /** What a drag that starts here drags; null for the view. */
  grab(press: Press): Grab | null;
  /** A press without a drag, which adds to what is chosen when there is `more`; false when it is left to choose a part. */
  pick(press: Press, more: boolean): boolean;
  /** A key on the drawing; false when it means nothing to the tools. */
  press(key: KeyPress): boolean;
  /** Between frames: what a drag has asked for since the last time. */
  step(): void;
  /** What is to lie over the drawing now; the same object while nothing about it changes. null: nothing. */
  look(): OverlayState | null;
  /** Where that looks different from what lay there before, pixels. */
  changed(before: OverlayState | null, after: OverlayState | null): readonly Bounds[];
  /** Paints what of it lies in a box, pixels, over the drawing. */
  show(over: OverlayState, box: Bounds): void;
  stop(): void;
}
