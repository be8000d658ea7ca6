import type { Project } from '../../core/document/types';
import { demoProject } from '../../core/kinds/demo';
import { KINDS } from '../../core/kinds/kinds';

/** What the dialog "New" offers besides the kinds. */
export const DEMO = { id: 'demo', name: 'The demo instrument' } as const;

/** A new project of a kind, or the demo instrument. */
export const demoOrKind = (kind: string, id: string, now: string): Project =>
  KINDS.find((each) => each.id === kind)?.make(id, now) ?? demoProject(id, now);
