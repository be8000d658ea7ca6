import type { DesignCheck } from '../../checks/types';
import { circlePath } from '../../geom/circlePath';
import type { Item } from '../types';

/** Of the circle about a place, mm: larger than a pin head, so that it does not hide what it speaks of. */
const RADIUS = 4.5;

/** A circle about every place that a check which is not good speaks of, instrument frame. */
export const drawCheckMarks = (checks: readonly DesignCheck[]): readonly Item[] =>
  checks.flatMap(({ id, verdict, at = [], part }) =>
    verdict === 'good' || part === undefined
      ? []
      : at.map(
          (centre, index): Item => ({
            kind: 'path',
            id: `check-${id}-${index}`,
            part,
            role: 'mark',
            layer: 'lines',
            path: circlePath(centre, RADIUS),
          }),
        ),
  );
