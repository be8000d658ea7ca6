import type { Project } from './document/types';
import type { Item } from './drawing/types';
import type { Path } from './geom/types';
import type { SetbackSampling, SetbackSpread } from './intonation/monteCarloSetback';
import type { LibraryEntry } from './library/libraryEntry';
import type { Result } from './result';
import type { SetMember } from './sheets/sets/expandSet';
import type { LeftOut, SetPrint, SetStart } from './sheets/sets/setTypes';
import type { Page, SheetDocument } from './sheets/types';
import type { LengthStyle } from './units/formatLength';

export type { LibraryEntry } from './library/libraryEntry';

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
  /**
   * Writes whole bytes to a file that the maker chooses, which keeps what it held until all of them are there. false when they
   * change their mind; null where the browser has no such choice.
   */
  readonly saveAs: ((name: string, type: string, bytes: Uint8Array) => Promise<boolean>) | null;
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

/** How large a drawing from a file is: as the file says, or as the maker says where it does not, or against it. */
export type DrawingScale =
  | { readonly by: 'file' }
  | { readonly by: 'dpi'; readonly dpi: 72 | 90 | 96 }
  | { readonly by: 'unit'; readonly unit: 'mm' | 'cm' | 'in' }
  /** longest: the longer side of the outline offered first, mm. */
  | { readonly by: 'length'; readonly longest: number };

/** One path found in a file. mm, y + down the page as the drawing is seen. */
export interface FoundOutline {
  readonly path: Path;
  /** Extent to the right and down the page. */
  readonly across: number;
  readonly along: number;
  /** mm²; 0 for an open path. */
  readonly area: number;
  /** Why it cannot be taken, in words; null when it can. */
  readonly refusal: string | null;
}

/** What a drawing file holds. */
export interface ImportedOutlines {
  readonly kind: 'svg' | 'dxf';
  /** What the file leaves open; until it is answered the outlines are drawn at a size of their own and may not be taken. */
  readonly needs: 'dpi' | 'size' | 'unit' | null;
  /** Where the size comes from, in words. */
  readonly units: string;
  /** mm to one unit of the file, as the outlines are drawn here. */
  readonly perUnit: number;
  /** Those that can be taken come first, the largest first. */
  readonly outlines: readonly FoundOutline[];
  /** How many more were found than are listed. */
  readonly more: number;
  /** What was seen in the file and not read, in words. */
  readonly leftOut: readonly string[];
}

/** The reading of a file under way. */
export interface ImportJob {
  /** Never settles once cancelled. */
  readonly result: Promise<Result<ImportedOutlines>>;
  /** Ends it at once. */
  cancel(): void;
}

/** The instrument's drawing for a file of its own: mm, y down, hand applied. */
export interface FileDrawing {
  readonly title: string;
  /** What it is and how its numbers are meant, in a sentence or two. */
  readonly description: string;
  readonly items: readonly Item[];
}

/** A kind of file that a drawing can be written to. */
export type DrawingFormat =
  | { readonly kind: 'svg' }
  /** 2007 keeps curves as they are; R12, for older programs and machines, has arcs and lines in their place. */
  | { readonly kind: 'dxf'; readonly version: '2007' | 'R12' }
  /** dpi: pixels to an inch. */
  | { readonly kind: 'png'; readonly dpi: number };

/** A set to be made: many instruments, one choice of sheets. */
export interface SetJob extends Omit<SetPrint, 'shared'> {
  readonly members: readonly SetMember[];
  /** pdf: one file with contents. shared: one file whose small sheets share pages. zip: a PDF for each instrument. */
  readonly as: 'pdf' | 'shared' | 'zip';
  readonly style: LengthStyle;
  /** ISO date of issue. */
  readonly date: string;
}

/** A set as a file, with what is not in it. */
export interface SetFile extends PdfFile {
  readonly left: readonly LeftOut[];
}

/** A set under way. */
export interface SetRun {
  /** Never settles once cancelled. */
  readonly result: Promise<Result<SetFile>>;
  /** Ends it at once. */
  cancel(): void;
}

/** What there is to see of a set that was laid out. */
export interface SetOutline {
  readonly pages: number;
  readonly starts: readonly SetStart[];
  readonly left: readonly LeftOut[];
}

/** A set laid out to be looked through, page by page, before it is made. */
export interface SetView {
  /** Never settles once ended. */
  readonly result: Promise<Result<SetOutline>>;
  /** A page of it, from 0, once there is an outline; null where there is none. */
  page(index: number): Promise<Page | null>;
  /** Lets go of it at once. */
  end(): void;
}

/** The heavy work, off the main thread. */
export interface Workshop {
  /** Gets ready for a PDF that is about to be asked for. */
  makeReady(): void;
  makePdf(sheet: SheetDocument): Promise<Result<PdfFile>>;
  /** Writes a drawing to the bytes of a file. Codes: as checkItems, picture.tooLarge, fonts.missing, worker.failed. */
  makeDrawing(drawing: FileDrawing, format: DrawingFormat): Promise<Result<Uint8Array>>;
  /** Makes the sheets of a set; progress runs from 0 to 1. Codes: those of `laySet`, set.empty, worker.failed. */
  makeSet(job: SetJob, onProgress: (share: number) => void): SetRun;
  /** Lays the same pages to be looked at. Codes: as makeSet. */
  viewSet(job: SetJob, onProgress: (share: number) => void): SetView;
  /** Samples the doubts of every string; progress runs from 0 to 1 over all of them. */
  sampleSetbacks(requests: readonly SetbackSampling[], onProgress: (share: number) => void): SamplingJob;
  /** Reads the outlines of an SVG or DXF file; ended with the code import.slow when it takes too long. */
  readOutlines(name: string, bytes: Uint8Array, scale: DrawingScale): ImportJob;
}

/** A key pressed on the drawing, and those held with it. */
export interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** A drawing on screen, once it is mounted on its host element. */
export interface MountedDrawing {
  /** Shows the whole bridge. */
  showWhole(): void;
  /** Above 1 magnifies, about the middle of the view. */
  zoomBy(factor: number): void;
  /** Moves the view, screen pixels. */
  panBy(x: number, y: number): void;
  /** A key meant for what is chosen; false when it means nothing to it. */
  press(key: KeyPress): boolean;
  /** Takes the drawing down and lets go of everything it held. */
  unmount(): void;
}

/** Puts the drawing into a page; Host is what the page offers (an element in a browser). */
export interface DrawingSurface<Host> {
  mount(host: Host): MountedDrawing;
}

/** One earlier state of a project. */
export interface VersionEntry {
  readonly id: string;
  /** ISO 8601 instant. */
  readonly at: string;
  readonly revision: number;
  /** What the maker calls it; null for one that is kept by itself, of which the last 50 stay. */
  readonly name: string | null;
}

/** Whether what was to be kept is kept. */
export type KeepState =
  /** at: ISO 8601 instant; null before anything was to be kept. */
  | { readonly kind: 'kept'; readonly at: string | null }
  | { readonly kind: 'keeping' }
  /** Why nothing can be kept here, in words, and what the maker can do. Work goes on. */
  | { readonly kind: 'not-kept'; readonly code: string; readonly reason: string }
  /** Another tab or window saved this project since it was read here. */
  | { readonly kind: 'conflict'; readonly other: LibraryEntry }
  /** What was last in hand could not be opened; its text is kept. */
  | { readonly kind: 'unreadable'; readonly id: string; readonly reason: string };

/** What is known of the place where the library lies. */
export interface KeepingPlace {
  /** The browser promised not to clear it by itself; null where it cannot be asked. */
  readonly lasting: boolean | null;
  /** Bytes; null where the browser does not say. */
  readonly used: number | null;
  readonly room: number | null;
}

/**
 * All projects of this browser. Answers fail with the codes library.closed (the database cannot be opened; says why),
 * library.full (no room), library.missing (no such thing), library.newer (written by a newer Saddlemark), and those of
 * decodeProject; nothing of it throws.
 */
export interface Library {
  list(): Promise<Result<readonly LibraryEntry[]>>;
  entry(id: string): Promise<Result<LibraryEntry>>;
  read(id: string): Promise<Result<Project>>;
  /** Its text as it is kept, good or damaged. */
  textOf(id: string): Promise<Result<string>>;
  /** Adds a project, or puts it in place of the same id, when that still has the revision `base`. Codes also: library.conflict. */
  save(project: Project, base: number | null): Promise<Result<LibraryEntry>>;
  setArchived(id: string, archived: boolean): Promise<Result<null>>;
  /** With its versions; photos that nothing shows any more go too. */
  remove(id: string): Promise<Result<null>>;
  versions(id: string): Promise<Result<readonly VersionEntry[]>>;
  readVersion(id: string, version: string): Promise<Result<Project>>;
  /** Keeps the present state by a name, for good. */
  nameVersion(id: string, name: string): Promise<Result<VersionEntry>>;
  /** A photo, made small and without what its camera noted of place and time. Codes also: picture.kind, picture.large. */
  addPicture(bytes: Uint8Array): Promise<Result<string>>;
  /** An address for an image element, good until the page is left. */
  pictureAddress(id: string): Promise<Result<string>>;
  /** Everything, with this maker's bench settings, as the text of one file. */
  exportAll(): Promise<Result<string>>;
  /** Adds what a file holds; a project that is there with other content comes as a copy. Nothing is added when anything is wrong. */
  importAll(text: string): Promise<Result<{ readonly added: number; readonly copies: number; readonly same: number }>>;
  /** Told of changes that other tabs make; answers with how to stop. */
  watch(changed: () => void): () => void;
  place(): Promise<KeepingPlace>;
}

/** Keeps the project in hand as it changes. */
export interface Autosave {
  state(): KeepState;
  subscribe(changed: () => void): () => void;
  /** What could not be kept is tried again now. */
  retry(): void;
  /** Keeps this tab's project beside the other tab's, under a new id. */
  keepBoth(): void;
  /** Goes on with what is in hand, after what could not be opened. */
  leaveUnread(): void;
  /** Takes the other tab's project in place of this one, as one step that can be undone. */
  takeOther(): void;
}
