import type { Project } from '../../src/core/document/types';
import { KINDS } from '../../src/core/kinds/kinds';

/** One of each kind that the app offers to start from, the steel-string first. */
export const INSTRUMENTS: readonly Project[] = KINDS.map(({ id, make }) => make(id, '2026-11-25T00:00:00.000Z'));
