import type { SetbackSampling, SetbackSpread } from './intonation/monteCarloSetback';
import type { Result } from './result';
import type { SheetDocument } from './sheets/types';

/** The day and time, handed in so that core and tests never read a clock themselves. */
export interface Clock {
  /** ISO 8601 instant, UTC. */
  now(): string;
  /** Today where the maker is, ISO date. */
  today(): string;
}

/** Makes names for saved things that never meet again. */
export type NewId = () => string;

/** Files in and out of the maker's device. */
export interface Files {
  /** Hands bytes to the maker under this name. */
  download(name: string, type: string, bytes: Uint8Array): void;
  /** Lets the maker pick one file; null when they change their mind. */
  open(accept: string): Promise<{ readonly name: string; readonly text: string } | null>;
}

/** A finished PDF and what could not be printed as typed. */
export interface PdfFile {
  readonly bytes: Uint8Array;
  /** Characters that the printed font lacks; each stands as a box on the sheet. */
  readonly missing: readonly string[];
}

/** How one string's setback spreads over the samples, mm. */
export type SetbackRange = Omit<SetbackSpread, 'sorted'>;

/** A sampling under way. */
export interface SamplingJob {
  /** One range a request, in their order; never settles once cancelled. */
  readonly result: Promise<Result<readonly SetbackRange[]>>;
  /** Ends it at once. */
  cancel(): void;
}

/** The heavy work, off the main thread. */
export interface Workshop {
  /** Gets ready for a PDF that is about to be asked for. */
  makeReady(): void;
  makePdf(sheet: SheetDocument): Promise<Result<PdfFile>>;
  /** Samples the doubts of every string; progress runs from 0 to 1 over all of them. */
  sampleSetbacks(requests: readonly SetbackSampling[], onProgress: (share: number) => void): SamplingJob;
}

/** A drawing on screen, once it is mounted on its host element. */
export interface MountedDrawing {
  /** Shows the whole bridge. */
  showWhole(): void;
  /** Above 1 magnifies, about the middle of the view. */
  zoomBy(factor: number): void;
  /** Moves the view, screen pixels. */
  panBy(x: number, y: number): void;
  /** Takes the drawing down and lets go of everything it held. */
  unmount(): void;
}

/** Puts the drawing into a page; Host is what the page offers (an element in a browser). */
export interface DrawingSurface<Host> {
  mount(host: Host): MountedDrawing;
}
