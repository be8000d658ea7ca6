import type { Project } from '../document/types';

/** What of an instrument changes the order of the work. */
export interface RunCase {
  /** Another bridge was there before. */
  readonly repair: boolean;
  /** The slot is cut once the bridge is glued. */
  readonly slotAfter: boolean;
  readonly pins: boolean;
  /** How many locating pins. */
  readonly holes: number;
}

/** What a project says of that. */
export const runCase = ({ repair, bridge }: Project, holes: number): RunCase => ({
  repair: repair !== null,
  slotAfter: bridge.cutting !== null,
  pins: bridge.pins !== null,
  holes,
});
