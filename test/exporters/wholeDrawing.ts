import { createDerive } from '../../src/core/derive/createDerive';
import { deriveAreas } from '../../src/core/derive/deriveAreas';
import type { Hand, Project } from '../../src/core/document/types';
import { buildDrawing, type View } from '../../src/core/drawing/buildDrawing';
import { drawFinishLine } from '../../src/core/drawing/drawFinishLine';
import type { Item } from '../../src/core/drawing/types';
import { makeAround } from '../../src/store/makeAround';

/** A project with its strings on the other side. */
export const handedProject = (project: Project, hand: Hand): Project => ({
  ...project,
  instrument: { ...project.instrument, hand },
});

/** All that the screen draws of a project, in millimetres. */
export const wholeDrawing = async (project: Project): Promise<readonly Item[]> => {
  const derived = createDerive()(project);
  const { hand, nut } = project.instrument;
  const view: View = { hand, datum: nut.datum, style: { unit: 'mm', decimals: 1 } };
  const areas = await deriveAreas(project.bridge, project.limits, derived.bridge);
  const { under, over } = makeAround(() => undefined)(project, derived, view).items;
  const finish = areas.ok ? drawFinishLine(areas.value.finishLine, hand) : [];
  return [...under, ...buildDrawing(derived, view), ...finish, ...over];
};
