import type { Project } from '../document/types';
import type { Scale } from '../instrument/types';
import type { Placement } from '../placement/types';
import type { LengthStyle } from '../units/formatLength';
import type { PrintCorrection } from './proof/types';

/** Everything that the pages of a template tell, once it is known to exist. */
export interface TemplateContent {
  readonly project: Project;
  readonly scale: Scale;
  readonly placement: Placement;
  readonly style: LengthStyle;
  /** ISO date of issue. */
  readonly date: string;
  /** What its pages are multiplied by; null when they are not. */
  readonly correction: PrintCorrection | null;
}
