import { ERROR_SOURCES, type ErrorSource } from './errorSources';

/** What a maker keeps of the printer they print with: one sigma of its factors, as a share. */
export interface KeptPrint {
  readonly printer: string;
  readonly sigmaX: number;
  readonly sigmaY: number;
  /** ISO date of the reading. */
  readonly date: string;
}

/** The sources of error, the print's by what was read of this printer: the larger of both axes. Null: as usual. */
export const sourcesWithPrint = (kept: KeptPrint | null): readonly ErrorSource[] =>
  kept === null
    ? ERROR_SOURCES
    : ERROR_SOURCES.map((source) =>
        source.id === 'placePrint'
          ? {
              ...source,
              usual: Math.max(kept.sigmaX, kept.sigmaY),
              source: `kept factors of ${kept.printer}, read ${kept.date}`,
            }
          : source,
      );
