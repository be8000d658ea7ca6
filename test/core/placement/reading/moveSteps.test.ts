import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../src/core/numeric/seededRandom';
import type { Pose } from '../../../../src/core/placement/poseTypes';
import { type MoveStep, moveInWords, moveSteps } from '../../../../src/core/placement/reading/moveSteps';

const TIPS = { treble: { x: 76.2, y: -9 }, bass: { x: -76.2, y: -9 } };
const MEANT = { x: 0, y: 634.8, angle: 0 };
const show = (mm: number): string => `${mm.toFixed(1)} mm`;

/** Where it sits when, from its place, it is turned by degrees about the bass tip and then moved. */
const turnedAboutBass = (degrees: number, x: number, y: number) => {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const tip = { x: -76.2, y: 634.8 - 9 };
  // The origin lies (76.2, 9) from the bass tip.
  return { x: tip.x + cos * 76.2 - sin * 9 + x, y: tip.y + sin * 76.2 + cos * 9 + y, angle };
};

describe('moveSteps', () => {
  it('turns about the wing that then has least to go, then moves all of it', () => {
    // 152.4 · sin 0.3° = 0.798.
    const steps = moveSteps(turnedAboutBass(0.3, -0.8, 0), MEANT, TIPS);
    expect(moveInWords(steps, show)).toBe(
      'treble wing 0.8 mm toward the nut, bass corner still; then all of it 0.8 mm to the treble',
    );
  });

  it('does nothing to a bridge in its place', () => {
    expect(moveSteps(MEANT, MEANT, TIPS)).toEqual([]);
    expect(moveSteps({ ...MEANT, x: 0.04, y: 634.76 }, MEANT, TIPS)).toEqual([]);
  });

  /** The pose after a hand made one step: a turn about the other wing's tip until this one has moved so far along. */
  const made = (pose: Pose, step: MoveStep): Pose => {
    if (step.kind === 'along') return { ...pose, y: pose.y + (step.toward === 'tail' ? step.by : -step.by) };
    if (step.kind === 'aside') return { ...pose, x: pose.x + (step.toward === 'treble' ? step.by : -step.by) };
    const at = (angle: number, { x, y }: { readonly x: number; readonly y: number }) => ({
      x: x * Math.cos(angle) - y * Math.sin(angle),
      y: x * Math.sin(angle) + y * Math.cos(angle),
    });
    const [wing, still] = step.wing === 'treble' ? [TIPS.treble, TIPS.bass] : [TIPS.bass, TIPS.treble];
    const arm = { x: wing.x - still.x, y: wing.y - still.y };
    const goal = at(pose.angle, arm).y + (step.toward === 'tail' ? step.by : -step.by);
    // By halving: the turn at which the arm reaches that far along.
    let [least, most] = [-0.05, 0.05];
    for (let count = 0; count < 60; count += 1) {
      const middle = (least + most) / 2;
      if (at(middle, arm).y < goal === arm.x > 0) least = middle;
      else most = middle;
    }
    const [before, after] = [at(pose.angle, still), at(least, still)];
    return { x: pose.x + before.x - after.x, y: pose.y + before.y - after.y, angle: least };
  };

  it('brings the bridge to its place when the steps are made one after the other', () => {
    const random = seededRandom(3);
    const within = (most: number): number => (2 * random.uniform() - 1) * most;
    for (let count = 0; count < 200; count += 1) {
      const sits = turnedAboutBass(within(0.6), within(2), within(2));
      const after = moveSteps(sits, MEANT, TIPS).reduce(made, sits);
      // A step under 0.05 mm is not worth a hand: what is left is no more, and its turn no more over the bridge's length.
      expect(Math.abs(after.x - MEANT.x)).toBeLessThan(0.051);
      expect(Math.abs(after.y - MEANT.y)).toBeLessThan(0.1);
      expect(Math.abs(after.angle)).toBeLessThan(0.051 / 152.4);
    }
  });

  it('takes the other wing when that leaves less to go', () => {
    // Turned about its treble tip: the bass wing goes back, the treble corner stays.
    const angle = (0.3 * Math.PI) / 180;
    const tip = { x: 76.2, y: 634.8 - 9 };
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const sits = { x: tip.x - cos * 76.2 - sin * 9, y: tip.y - sin * 76.2 + cos * 9, angle };
    expect(moveInWords(moveSteps(sits, MEANT, TIPS), show)).toBe(
      'bass wing 0.8 mm toward the tail, treble corner still',
    );
  });
});
