import { type Around, createAround } from '../core/derive/createAround';
import { deriveRepairAreas } from '../core/derive/deriveRepairAreas';
import { remember } from '../core/derive/remember';
import type { Derived } from '../core/derive/types';
import type { Project } from '../core/document/types';
import type { View } from '../core/drawing/buildDrawing';
import { type AroundItems, drawAround } from '../core/drawing/drawAround';
import { keepLatest } from './keepLatest';

/** What lies around the bridge, and how it is drawn. */
export type FindAround = (project: Project, derived: Derived, view: View) => { around: Around; items: AroundItems };

/** Loaded once the drawing is up, which is usable without it. arrived: called when more of it became known. */
export const makeAround = (arrived: () => void): FindAround => {
  const find = createAround(keepLatest(deriveRepairAreas, arrived));
  const draw = remember((project: Project, derived: Derived, around: Around, view: View) =>
    drawAround(project, derived, around, view),
  );
  return (project, derived, view) => {
    const around = find(project, derived);
    return { around, items: draw(project, derived, around, view) };
  };
};
