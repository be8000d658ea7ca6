import type { Point } from '../../geom/types';
import type { Pose } from '../poseTypes';

/** Less than this is not worth a move, mm. */
const HARDLY = 0.05;

/** One move that a hand can make, in order. by: mm, above 0. */
export type MoveStep =
  | {
      /** One wing goes while the other stands still. */
      readonly kind: 'turn';
      readonly wing: 'treble' | 'bass';
      readonly toward: 'nut' | 'tail';
      readonly by: number;
    }
  | { readonly kind: 'along'; readonly toward: 'nut' | 'tail'; readonly by: number }
  | { readonly kind: 'aside'; readonly toward: 'treble' | 'bass'; readonly by: number };

const at = (pose: Pose, { x, y }: Point): Point => {
  const [cos, sin] = [Math.cos(pose.angle), Math.sin(pose.angle)];
  return { x: pose.x + cos * x - sin * y, y: pose.y + sin * x + cos * y };
};

/**
 * How to bring the bridge from where it sits to where it is meant to sit: first turned about the wing tip that then has the
 * least way left, then all of it along, then all of it aside. tips: the front corners, bridge frame. Steps that are hardly
 * any are left out.
 */
export const moveSteps = (
  sits: Pose,
  meant: Pose,
  tips: { readonly treble: Point; readonly bass: Point },
): readonly MoveStep[] => {
  const ways = (['treble', 'bass'] as const).map((still) => {
    const [pivot, wing] = still === 'treble' ? [tips.treble, tips.bass] : [tips.bass, tips.treble];
    const [here, goal] = [at(sits, pivot), at(meant, pivot)];
    const before = at(sits, wing);
    // Turned about the pivot where it lies, the wing keeps its place against the pivot as it is meant.
    const after = at(meant, wing);
    const turned = { x: here.x + after.x - goal.x, y: here.y + after.y - goal.y };
    return {
      wing: still === 'treble' ? ('bass' as const) : ('treble' as const),
      turn: turned.y - before.y,
      along: goal.y - here.y,
      aside: goal.x - here.x,
    };
  });
  const [one, other] = ways as [(typeof ways)[number], (typeof ways)[number]];
  const way = Math.abs(other.along) < Math.abs(one.along) - 1e-9 ? other : one;
  const toward = (by: number) => (by < 0 ? ('nut' as const) : ('tail' as const));
  const steps: readonly MoveStep[] = [
    { kind: 'turn', wing: way.wing, toward: toward(way.turn), by: Math.abs(way.turn) },
    { kind: 'along', toward: toward(way.along), by: Math.abs(way.along) },
    { kind: 'aside', toward: way.aside < 0 ? 'bass' : 'treble', by: Math.abs(way.aside) },
  ];
  return steps.filter(({ by }) => by >= HARDLY);
};

/** A step as a sentence: "treble wing 0.8 mm toward the nut, bass corner still". show: a length with its unit. */
export const stepWords = (step: MoveStep, show: (mm: number) => string): string => {
  switch (step.kind) {
    case 'turn':
      return `${step.wing} wing ${show(step.by)} toward the ${step.toward}, ${step.wing === 'treble' ? 'bass' : 'treble'} corner still`;
    case 'along':
      return `all of it ${show(step.by)} toward the ${step.toward}`;
    case 'aside':
      return `all of it ${show(step.by)} to the ${step.toward}`;
  }
};

/** The whole move: "treble wing 0.8 mm toward the nut, bass corner still; then all of it 0.8 mm to the treble". */
export const moveInWords = (steps: readonly MoveStep[], show: (mm: number) => string): string =>
  steps.map((step) => stepWords(step, show)).join('; then ');
