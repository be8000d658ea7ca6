import type { Around } from '../core/derive/createAround';
import type { Areas } from '../core/derive/deriveAreas';
import type { Derived } from '../core/derive/types';
import type { Anchor } from '../core/document/dimensionTypes';
import type { Project } from '../core/document/types';
import type { Item, PartName } from '../core/drawing/types';
import type { Result } from '../core/result';
import type { History } from './history';

export type Station = 'measure' | 'draw' | 'print' | 'place' | 'record';

/** How lengths are written on this screen; each unit keeps its own style. */
export interface Device {
  readonly units: 'mm' | 'in';
  readonly millimetreDecimals: 1 | 2;
  /** A denominator, or 'decimal' for thousandths of an inch. */
  readonly inches: 16 | 32 | 64 | 'decimal';
  readonly station: Station;
  /** Id of the paper in the printer, which may be gone: see `paperOf`. */
  readonly paper: string;
  /** Dots of this glass to a true millimetre, by what the maker held to it; 0 while that was not done. */
  readonly dotsPerMm: number;
  /** The maker knows how a work is begun. */
  readonly begun: boolean;
  /** What was said of papers and printer, as it was kept: see `readPrintSettings`. */
  readonly print: object;
}

/** What a press on the drawing does: chooses and moves parts, adds nodes to the outline, or picks what to measure between. */
export type ToolName = 'move' | 'add' | 'between';

/** What is measured between picked places: a distance, the angle at the second of three, or the gap between two edges. */
export type MeasureKind = 'distance' | 'angle' | 'gap';

/** How the maker works on the drawing. */
export interface Handwork {
  readonly tool: ToolName;
  readonly measure: MeasureKind;
  /** Each press adds a part to those that are chosen, or takes it out. */
  readonly several: boolean;
  readonly snapping: boolean;
  /** What was picked to measure between, in that order. */
  readonly picks: readonly Anchor[];
}

/** What the maker is told. count rises with each message, so that the same words are announced again. */
export interface Message {
  readonly kind: 'status' | 'alert';
  readonly text: string;
  readonly count: number;
}

export interface AppState {
  readonly project: Project;
  /** Everything computed from the project, and its display list; always in step with it. */
  readonly derived: Derived;
  readonly drawing: readonly Item[];
  /** In step with it as well; null until they are known, which takes longer, or while no one needs them. */
  readonly areas: Result<Areas> | null;
  /** What lies beneath, around and before the bridge; null until that part is loaded. */
  readonly around: Around | null;
  /** What a drag would make of the project; derived, drawing and areas follow it, and nothing is kept of it. */
  readonly preview: Project | null;
  readonly history: History;
  readonly device: Device;
  /** The parts that are chosen, the first one first. */
  readonly selection: readonly PartName[];
  readonly handwork: Handwork;
  /** Screen pixels to a millimetre, as the drawing is seen now; 0 before it is mounted. */
  readonly zoom: number;
  /** The project as it was last saved to a file or opened from one. */
  readonly saved: Project | null;
  readonly message: Message;
}

/** Keeps the device's settings from one visit to the next. */
export interface DeviceMemory {
  /** null when nothing was kept. */
  read(): string | null;
  write(text: string): void;
}
