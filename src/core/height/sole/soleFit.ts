import type { Sole } from '../../document/soleTypes';
import type { Point } from '../../geom/types';
import { fail, ok, type Result } from '../../result';
import { sagitta } from '../sagitta';
import { type RestingLine, restingLine } from './restingLine';
import { sandingShrink } from './sandingShrink';
import type { Resting, SoleFit } from './soleTypes';
import { gapPlaces, type SolePlaces, topHeight } from './topShape';

/** The bridge that lies on the top, mm. */
export interface SoledBridge {
  /** x of its tips: the bass tip below 0, the treble tip above. */
  readonly bassTip: number;
  readonly trebleTip: number;
  /** From front to back edge on the centreline. */
  readonly width: number;
  /** At the slot. */
  readonly thickness: number;
  readonly slotDepth: number;
}

/** Steps between two named points: on a dome of 25 ft the gap is met within 0.00001 mm. */
const STEPS = 24;
/** A gap that no feeler gauge finds, mm. */
const NO_GAP = 0.02;
/** Places nearer together than this share of the length are one to rock on. */
const ONE_PLACE = 0.25;
/** Shortest reach of a radius beyond what lies on it. */
const ROOM = 1.05;

const radiiOf = ({ across, along, top }: Sole): readonly (number | null)[] => [
  across,
  along,
  ...(top.from === 'radius' ? [top.across] : [top.under]),
  top.along,
];

/** The gap under a resting line, with its largest. */
const underLine = (away: readonly Point[], { height, slope }: RestingLine) => {
  const curve = away.map(({ x, y }) => ({ x, y: Math.max(0, height + slope * x - y) }));
  return { curve, most: Math.max(...curve.map(({ y }) => y)) };
};

const restingOf = ({ from, to }: RestingLine, most: number, length: number): Resting => {
  if (most < NO_GAP) return 'all-over';
  return to - from < ONE_PLACE * length ? 'rocks' : 'two-places';
};

/** Gap along the strings: dome and hollow of one radius each, so that the middle or both edges touch. */
const gapAlong = ({ along, top }: Sole, half: number): { readonly middle: number; readonly edge: number } => {
  const rounder = sagitta(top.along, half) - sagitta(along, half);
  return { middle: Math.max(0, -rounder), edge: Math.max(0, rounder) };
};

/**
 * How a sole lies on its top. The bridge is stiff, rests on the top and is pressed lightly at its centre: it rocks on the
 * centre of a rounder top, and stands on its wings over a flatter one. Heights along the length and along the strings add,
 * as on any dome of two radii, so their gaps add too.
 *
 * Codes: sole.wing (the wings begin beyond a tip), sole.radius (smaller than the bridge).
 */
export const soleFit = (sole: Sole, bridge: SoledBridge): Result<SoleFit> => {
  const { bassTip, trebleTip, width, thickness, slotDepth } = bridge;
  const { wing, draft, sanding } = sole;
  const length = trebleTip - bassTip;
  if (!(wing.begin < Math.min(-bassTip, trebleTip)))
    return fail(
      'bridge.sole.wing.begin',
      'sole.wing',
      'The wings begin beyond the end of the bridge: expected a place within it.',
    );
  const reach = ROOM * Math.max(-bassTip, trebleTip, width / 2);
  if (radiiOf(sole).some((radius) => radius !== null && radius < reach))
    return fail(
      'bridge.sole',
      'sole.radius',
      'A radius of top or sole is smaller than the bridge itself: expected a larger one.',
    );
  const places: SolePlaces = { bassTip, bassWing: -wing.begin, trebleWing: wing.begin, trebleTip };
  const named = gapPlaces(places);
  const xs = named.flatMap(({ x }, index) => {
    const next = named[index + 1]?.x ?? x;
    return Array.from({ length: next === x ? 1 : STEPS }, (_, step) => x + ((next - x) * step) / STEPS);
  });
  const away = xs.map((x) => ({ x, y: topHeight(sole, places, x) + sagitta(sole.across, x) }));
  const line = restingLine(away);
  const { curve: alongLength, most } = underLine(away, line);
  const { middle, edge } = gapAlong(sole, width / 2);
  const curve = alongLength.map(({ x, y }) => ({ x, y: y + middle }));
  const gapAt = (x: number): number => curve.find((point) => point.x === x)?.y ?? 0;
  const fitAt = (x: number): number => most + edge + middle - gapAt(x);
  const largest = (under: (x: number) => boolean): number =>
    Math.max(0, ...curve.flatMap(({ x, y }) => (under(x) ? [y] : [])));
  const thicknesses = {
    bassTip: wing.tip,
    bassWing: wing.inner,
    centre: thickness,
    trebleWing: wing.inner,
    trebleTip: wing.tip,
  };
  const points = named.map(({ name, x }) => ({
    name,
    x,
    gap: gapAt(x),
    thickness: thicknesses[name],
    fit: fitAt(x),
  }));
  const edges = gapAt(0) - middle + edge;
  const worst = curve.reduce((a, b) => (b.y > a.y ? b : a));
  const left = thickness - sanding - fitAt(0);
  return ok({
    places,
    points,
    curve,
    edges,
    rests: restingOf(line, Math.max(most, middle, edge), length),
    from: line.from,
    to: line.to,
    wingGap: largest((x) => Math.abs(x) >= wing.begin),
    centreGap: Math.max(
      largest((x) => Math.abs(x) <= wing.begin),
      edges,
    ),
    worst: { gap: worst.y, x: worst.x },
    after: {
      thickness: left,
      woodUnder: left - slotDepth,
      lengthLoss:
        (sandingShrink(sanding + fitAt(bassTip), draft) + sandingShrink(sanding + fitAt(trebleTip), draft)) / 2,
      widthLoss: sandingShrink(sanding + fitAt(0), draft),
    },
  });
};
