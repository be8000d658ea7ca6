/** An expected figure, or none, and room to write what was read. */
export interface Reading {
  /** "treble"; stands before the figure. */
  readonly name: string;
  /** With its unit; null where there is nothing to expect. */
  readonly expected: string | null;
}

/** A row of the worksheet: a step with its box, readings beneath it, or a word of caution. */
export type WorksheetRow =
  /** ticked: done already, on the screen. */
  | { readonly kind: 'step'; readonly text: string; readonly ticked: boolean }
  /** One or two. */
  | { readonly kind: 'readings'; readonly label: string; readonly readings: readonly Reading[] }
  /** Blanks side by side, each with its name. */
  | { readonly kind: 'blanks'; readonly names: readonly string[] }
  | { readonly kind: 'note'; readonly text: string };

/** What stands beneath each step, by its id. */
export type RowsByStep = Readonly<Record<string, readonly WorksheetRow[]>>;

export const note = (text: string): WorksheetRow => ({ kind: 'note', text });
export const blanks = (...names: readonly string[]): WorksheetRow => ({ kind: 'blanks', names });
export const readings = (label: string, ...all: readonly Reading[]): WorksheetRow => ({
  kind: 'readings',
  label,
  readings: all,
});
