import type { Project } from '../../../src/core/document/types';
import { chooseBody } from '../../../src/store/commands/body/chooseBody';
import { choosePlate } from '../../../src/store/commands/body/choosePlate';
import { takeBracing } from '../../../src/store/commands/body/takeBracing';
import { chooseSole } from '../../../src/store/commands/sole/chooseSole';
import { valueOf as answerOf } from '../document/valueOf';

/** The same instrument with all that the sheets ask for: braces, plate, sole, and finish left under the rim. */
export const wholeProject = (project: Project): Project => {
  const id = project.strings.length < 6 ? 'ladder' : 'x-braced';
  const steps: readonly ((before: Project) => Project)[] = [
    (before) => answerOf(chooseBody(before, true)),
    (before) => {
      const braced = takeBracing(before, id);
      return braced.ok ? braced.value : before;
    },
    (before) => answerOf(choosePlate(before, true)),
    (before) => answerOf(chooseSole(before, true)),
  ];
  const made = steps.reduce((before, step) => step(before), project);
  return { ...made, bridge: { ...made.bridge, rim: 0.8 } };
};
