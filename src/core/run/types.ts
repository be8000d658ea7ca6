import type { RoundStage } from '../document/buildTypes';

/** What a clock runs for. */
export type TimerKind = 'open' | 'closed' | 'clamp' | 'cure';

/** A half page of the worksheet, and a chapter of the run. */
export type RunBlock = 'ready' | 'place' | 'drill' | 'glue' | 'cut';

/** One step of mounting a bridge. */
export interface RunStep {
  /** By which a project keeps when it was ticked; never changes. */
  readonly id: string;
  readonly block: RunBlock;
  /** In one line, as it stands beside its box. */
  readonly title: string;
  /** How it is done, a sentence each. */
  readonly doing: readonly string[];
  /** Where the danger is. */
  readonly cautions: readonly string[];
  /** Clocks that this step starts. */
  readonly timers: readonly TimerKind[];
  /** The reading of the place that this step takes; null for none. */
  readonly round: RoundStage | null;
}
