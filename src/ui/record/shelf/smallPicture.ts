import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { drawBridge } from '../../../core/drawing/drawBridge';
import { handedItem } from '../../../core/drawing/handed';
import type { Role } from '../../../core/drawing/types';
import { aroundAll } from '../../../core/geom/aroundAll';
import { pathBounds } from '../../../core/geom/pathBounds';
import type { Path } from '../../../core/geom/types';
import { svgPath } from '../../items/svgPath';

/** A bridge as a small picture of lines: two strokes' weights, and the room that it takes, mm. */
export interface SmallPicture {
  readonly viewBox: string;
  /** How long it is beside the longest usual bridge, at most 1: small ones look small. */
  readonly share: number;
  /** `d` of SVG paths. */
  readonly outline: string;
  readonly inside: string;
}

/** Lines that a small picture has no room for. */
const FINE: readonly Role[] = ['centreline', 'cross'];

/** As long as a bridge usually gets, ornate ones too, mm. */
const LONGEST_USUAL = 195;

/** Around the outline, mm. */
const MARGIN = 4;

/** The bridge of a project as its makers see it, hand applied; null when it cannot be computed. */
export const smallPicture = (project: Project): SmallPicture | null => {
  const { bridge, slot } = createDerive()(project);
  if (!bridge.ok || !slot.ok) return null;
  const paths = (outline: boolean): readonly Path[] =>
    drawBridge(bridge.value, slot.value)
      .filter(({ role }) => !FINE.includes(role) && (role === 'outline') === outline)
      .map((item) => handedItem(project.instrument.hand, item))
      .flatMap((item) => (item.kind === 'path' ? [item.path] : []));
  const [outer, inner] = [paths(true), paths(false)];
  const { minX: left, minY: top, maxX: right, maxY: bottom } = aroundAll([...outer, ...inner].map(pathBounds));
  const round = (mm: number): number => Number(mm.toFixed(2));
  return {
    viewBox: [left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN].map(round).join(' '),
    share: round(Math.min(1, (right - left + 2 * MARGIN) / LONGEST_USUAL)),
    outline: outer.map(svgPath).join(' '),
    inside: inner.map(svgPath).join(' '),
  };
};
