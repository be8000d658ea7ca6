import type { Build } from '../../../core/document/buildTypes';
import { newGlue } from '../../../core/glue/newGlue';
import { USUAL_AIR } from '../../../core/glue/usualAir';
import { USUAL_MOVEMENT } from '../../../core/glue/usualMovement';

/** The build with the group that a field of glue, air or grain lies in, as usual where nothing was said of it yet. */
export const beginGroup = (build: Build, path: string): Build => {
  if (path.startsWith('build.glue.')) return { ...build, glue: build.glue ?? newGlue() };
  if (path.startsWith('build.shop.')) return { ...build, shop: build.shop ?? USUAL_AIR };
  if (path.startsWith('build.kept.')) return { ...build, kept: build.kept ?? USUAL_AIR };
  return path.startsWith('build.movement.') ? { ...build, movement: build.movement ?? USUAL_MOVEMENT } : build;
};
