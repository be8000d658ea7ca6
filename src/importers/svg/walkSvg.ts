import type { Path } from '../../core/geom/types';
import { IMPORT_LIMITS } from '../importLimits';
import { isFinitePath } from '../isFinitePath';
import { compose, type Matrix, moved } from '../matrix';
import type { SvgElement } from './readSvgTree';
import { readTransform } from './readTransform';
import { ODD_UNIT, shapePieces } from './shapePieces';
import { type Look, lookOf, readStyleRules } from './styleRules';
import { inPixels, svgLength } from './svgLength';
import { readViewBox, type Viewport, viewBoxMatrix } from './viewport';

/** Where an element stands. */
interface Place {
  readonly matrix: Matrix;
  readonly viewport: Viewport;
  readonly visible: boolean;
  readonly depth: number;
  /** The uses that lead here. */
  readonly uses: readonly SvgElement[];
}

export interface WalkedSvg {
  readonly pieces: readonly Path[];
  readonly leftOut: readonly string[];
  /** What is too much of it. */
  readonly excess: 'elements' | 'depth' | null;
}

/** Drawn only where something else refers to them, or not at all. */
const GROUPS = new Set(['g', 'a', 'switch']);

const OTHERS: Readonly<Record<string, string>> = { text: 'text', image: 'picture', foreignObject: 'embedded page' };

/** Every path that is seen in a drawing, in the units of `matrix`' far side. */
export function walkSvg(root: SvgElement, matrix: Matrix, viewport: Viewport, dpi: number): WalkedSvg {
  const pieces: Path[] = [];
  const counts = new Map<string, number>();
  const rules: ReadonlyMap<string, Look> = readStyleRules(root);
  const byId = new Map<string, SvgElement>();
  let [visits, segments] = [0, 0];
  let excess: WalkedSvg['excess'] = null;
  const leave = (what: string): void => {
    counts.set(what, (counts.get(what) ?? 0) + 1);
  };
  const index = (element: SvgElement): void => {
    const id = element.attributes.get('id');
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    for (const child of element.children) index(child);
  };
  index(root);

  const inside = (element: SvgElement, place: Place): void => {
    for (const child of element.children) visit(child, place, null);
  };

  /** A window of its own: a nested svg, or a symbol that is used; the use may say its size. */
  const openWindow = (element: SvgElement, place: Place, use: SvgElement | null): void => {
    const { width, height } = place.viewport;
    const length = (from: SvgElement, key: string, whole: number): number | undefined => {
      const told = svgLength(from.attributes.get(key));
      return told === null ? undefined : inPixels(told, whole, dpi);
    };
    const side = (key: string, whole: number): number =>
      (use && length(use, key, whole)) ?? length(element, key, whole) ?? whole;
    const [x, y] = [length(element, 'x', width) ?? 0, length(element, 'y', height) ?? 0];
    const window: Viewport = { width: side('width', width), height: side('height', height) };
    if ([x, y, window.width, window.height].some(Number.isNaN)) {
      leave(`frame ${ODD_UNIT}`);
      return;
    }
    if (window.width <= 0 || window.height <= 0) return;
    const box = readViewBox(element.attributes.get('viewBox'));
    const at = compose(place.matrix, moved(x, y));
    const fitted =
      box === null ? at : compose(at, viewBoxMatrix(box, window, element.attributes.get('preserveAspectRatio')));
    inside(element, { ...place, matrix: fitted, viewport: box ?? window });
  };

  const follow = (use: SvgElement, place: Place): void => {
    const href = (use.attributes.get('href') ?? '').trim();
    const target = href.startsWith('#') ? byId.get(href.slice(1)) : undefined;
    if (target === undefined) {
      if (href !== '') leave('part that is not in the file');
      return;
    }
    if (place.uses.includes(use)) {
      leave('part that repeats itself within itself');
      return;
    }
    const { width, height } = place.viewport;
    const [x, y] = [svgLength(use.attributes.get('x')), svgLength(use.attributes.get('y'))];
    const [right, down] = [x === null ? 0 : inPixels(x, width, dpi), y === null ? 0 : inPixels(y, height, dpi)];
    if (Number.isNaN(right + down)) {
      leave(`part ${ODD_UNIT}`);
      return;
    }
    const moving = compose(place.matrix, moved(right, down));
    visit(target, { ...place, matrix: moving, uses: [...place.uses, use] }, use);
  };

  const draw = (element: SvgElement, place: Place): void => {
    const shape = shapePieces(element, place.matrix, place.viewport, dpi);
    if (shape === null) {
      const other = OTHERS[element.name];
      if (other !== undefined) leave(other);
      return;
    }
    if ('why' in shape) {
      leave(`shape ${shape.why}`);
      return;
    }
    for (const path of shape.paths) {
      segments += path.segments.length;
      if (segments > IMPORT_LIMITS.segments) excess ??= 'elements';
      if (isFinitePath(path)) pieces.push(path);
      else leave('shape with damaged numbers');
    }
  };

  const visit = (element: SvgElement, outer: Place, use: SvgElement | null): void => {
    visits++;
    if (visits > IMPORT_LIMITS.elements) excess ??= 'elements';
    if (outer.depth > IMPORT_LIMITS.depth) excess ??= 'depth';
    if (excess !== null) return;
    const look = lookOf(element, rules);
    if (look.display === 'none') return;
    const visible =
      look.visibility === undefined || look.visibility === 'inherit' ? outer.visible : look.visibility === 'visible';
    const own = readTransform(element.attributes.get('transform'));
    if (own === null || (look.transform !== undefined && look.transform !== 'none')) {
      leave('part with a transform that is not read');
      return;
    }
    const place: Place = { ...outer, matrix: compose(outer.matrix, own), visible, depth: outer.depth + 1 };
    if (GROUPS.has(element.name)) inside(element, place);
    else if (element.name === 'svg' || (element.name === 'symbol' && use !== null)) openWindow(element, place, use);
    else if (element.name === 'use') follow(element, place);
    else if (visible) draw(element, place);
  };

  const look = lookOf(root, rules);
  const visible = look.visibility !== 'hidden' && look.visibility !== 'collapse';
  if (look.display !== 'none') inside(root, { matrix, viewport, visible, depth: 1, uses: [] });
  const leftOut = [...counts].map(([what, count]) => `${count} × ${what}`);
  return { pieces, leftOut, excess };
}
