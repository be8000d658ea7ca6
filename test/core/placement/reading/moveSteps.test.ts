import { describe, expect, it } from 'vitest';
import { moveInWords, moveSteps } from '../../../../src/core/placement/reading/moveSteps';

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

  it('brings the bridge to its place when the steps are done one after the other', () => {
    for (const [degrees, x, y] of [
      [0.3, -0.8, 0.5],
      [-0.4, 1.1, -0.7],
      [0, 0.6, 0.9],
      [0.5, 0, 0],
    ] as const) {
      const sits = turnedAboutBass(degrees, x, y);
      const along = moveSteps(sits, MEANT, TIPS).map((step) => {
        if (step.kind === 'turn') return 0;
        return step.kind === 'along' ? (step.toward === 'tail' ? step.by : -step.by) : 0;
      });
      const turned = moveSteps({ ...MEANT, angle: sits.angle }, MEANT, TIPS).filter(({ kind }) => kind === 'turn');
      expect(turned.length).toBe(degrees === 0 ? 0 : 1);
      expect(Math.abs(along.reduce((sum, each) => sum + each, 0))).toBeLessThanOrEqual(Math.abs(y) + 0.8 * 1.4);
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
