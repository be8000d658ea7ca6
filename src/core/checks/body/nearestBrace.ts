import { braceGap } from '../../body/braceGap';
import type { BracePlace } from '../../body/types';
import type { Hole } from '../../bridge/types';
import { thinnest, type Wall } from '../wallCheck';

/** A hole and the brace that it comes nearest to. */
export interface BraceGap extends Wall {
  readonly hole: Hole;
  readonly brace: BracePlace;
}

/** Of all these holes and braces the two that come nearest to one another; null without either. */
export const nearestBrace = (braces: readonly BracePlace[], holes: readonly Hole[]): BraceGap | null =>
  thinnest(
    holes.flatMap((hole) =>
      braces.map(
        (brace): BraceGap => ({ hole, brace, wall: braceGap(brace, hole.centre, hole.diameter), at: [hole.centre] }),
      ),
    ),
  );
