import type { Project } from '../../../core/document/types';
import { type ArcWish, type SegmentKind, setSegmentKind as withKind } from '../../../core/geom/edit/setSegmentKind';
import type { Result } from '../../../core/result';
import { editOutline } from './editOutline';

/** A segment of the outline made a line, an arc or a curve. Codes: those of setSegmentKind in core and of editOutline. */
export const setSegmentKind = (project: Project, segment: number, kind: SegmentKind, wish?: ArcWish): Result<Project> =>
  editOutline(project, ({ path, symmetric }) => withKind(path, segment, kind, wish, symmetric));
