import { add, rotate } from '../../geom/points';
import type { Point } from '../../geom/types';
import type { Pose } from '../poseTypes';

/** A point turned about the origin by the pose's angle, then moved. mm */
export const placePoint = ({ x, y, angle }: Pose, point: Point): Point => add(rotate(point, angle), { x, y });
