import type { Item } from '../../../core/drawing/types';
import type { FileDrawing } from '../../../core/ports';
import type { AppState } from '../../../store/types';

/** The circles about what a design check speaks of belong to the screen alone; the same weight joins old holes to new ones. */
const isCheckMark = ({ role, layer }: Item): boolean => role === 'mark' && layer === 'lines';

/** What a drawing program is told of the drawing. */
export const fileDrawing = ({ project, drawing }: Pick<AppState, 'project' | 'drawing'>, date: string): FileDrawing => {
  const { name } = project.about;
  const { hand } = project.instrument;
  return {
    title: `${name === '' ? 'Unnamed' : name}: bridge, ${hand} hand`,
    description: `True size, millimetres, no print correction. x 0 is the centreline, y 0 the nut datum; seen from the front, nut up. Revision ${project.revision}, ${date}.`,
    items: drawing.filter((item) => !isCheckMark(item)),
  };
};
