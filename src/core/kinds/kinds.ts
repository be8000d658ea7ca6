import type { Project } from '../document/types';
import { KIND_TABLE } from './kindTable';
import { projectFrom } from './projectFrom';

/** A kind of instrument to start from; every figure can be changed, and measuring the instrument beats all of them. */
export interface Kind {
  readonly id: string;
  readonly name: string;
  readonly make: (id: string, now: string) => Project;
}

/** The kinds of instrument to start from. */
export const KINDS: readonly Kind[] = KIND_TABLE.map((row) => ({
  id: row.id,
  name: row.name,
  make: (projectId, now) => projectFrom(row, projectId, now),
}));
