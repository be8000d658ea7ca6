import { freeLocatingPoints } from '../bridge/locatingHoles';
import { transformPath } from '../geom/transformPath';
import { MM_PER_INCH } from '../units/mmPerInch';
import type { WholeDesign } from './designed';
import { type Finding, setOne } from './finding';
import { mouthOf, reamed, wallBetween, wallToEdge } from './mouths';
import { slotFrame } from './slotFrame';
import type { Mend } from './types';
import { checkPart, placedWall, thinnest } from './wallCheck';

const HIDDEN = 'Locating pins are hidden';
const DRILL = 'bridge.locating.drill';
const PUT_DRILL = 'Locating-pin hole {0}';

/** The usual drill, 1/16 in; its source stands beside the field. */
const USUAL_DRILL = MM_PER_INCH / 16;

const IN_SLOT: Mend = {
  label: 'Locating pins in the slot ends',
  lengths: [],
  set: [{ path: 'bridge.locating.site', value: 'slot-ends' }],
};

/** Whether the saddle, or the bridge pins, hide the locating-pin holes once the work is done. */
const hidden = ({ project, slot, bridge }: WholeDesign): Finding => {
  const { locating, slot: design, pins } = project.bridge;
  const { drill, site } = locating;
  const about = {
    id: 'locating-hidden',
    source: null,
    at: bridge.locating.map(({ centre }) => centre),
    part: checkPart(HIDDEN),
  };
  if (site === 'outer-pin-holes' && pins !== null) {
    const lengths = [drill, mouthOf(pins)];
    const tries = [setOne(DRILL, pins.hole, PUT_DRILL)];
    return drill > mouthOf(pins)
      ? {
          ...about,
          verdict: 'wrong',
          message:
            'Locating-pin holes of {0} are wider than the pin holes, reamed to {1}: the outer pins would be loose.',
          lengths,
          tries,
        }
      : { ...about, verdict: 'good', message: 'Locating-pin holes of {0} go in the outer pin holes.', lengths };
  }
  const { outside } = slotFrame(design, slot);
  const under = bridge.locating.every(({ centre, diameter }) => outside(centre) <= -diameter / 2 + 1e-6);
  const lengths = [drill, design.width];
  if (under) return { ...about, verdict: 'good', message: 'Locating-pin holes of {0} hide under the saddle.', lengths };
  if (site === 'free')
    return {
      ...about,
      verdict: 'look',
      message:
        'Locating-pin holes of {0} lie beside the slot of {1}: they show in the upper face unless they are drilled from beneath or plugged.',
      lengths,
      tries: [IN_SLOT],
    };
  return {
    ...about,
    verdict: 'wrong',
    message: 'Locating-pin holes of {0} are wider than the slot of {1}; they would show beside the saddle.',
    lengths,
    tries: [setOne(DRILL, Math.min(USUAL_DRILL, design.width), PUT_DRILL)],
  };
};

/** Free places to begin with again, for points that were moved too near to something. */
const freeAgain = ({ bridge }: WholeDesign): Mend => {
  const { treble, bass } = freeLocatingPoints(transformPath(bridge.footprint.outline, 0, { x: 0, y: -bridge.front }));
  const at = (side: string, axis: string, value: number) => ({
    path: `bridge.locating.points.${side}.${axis}`,
    value: Math.round(value * 10) / 10,
  });
  return {
    label: 'Locating pins in the middle of the wings',
    lengths: [],
    set: [at('treble', 'x', treble.x), at('treble', 'y', treble.y), at('bass', 'x', bass.x), at('bass', 'y', bass.y)],
  };
};

/**
 * Locating pins: whether they are hidden in the end; whether holes that go through wood of their own, free ones and those in
 * an open slot, keep wood around them; and whether they clear the bridge pins.
 */
export const locatingChecks = (whole: WholeDesign): readonly Finding[] => {
  const { project, slot, bridge, limits } = whole;
  const { locating, slot: design, pins } = project.bridge;
  const found: Finding[] = [hidden(whole)];
  const tries = locating.site === 'free' ? { tries: [freeAgain(whole), IN_SLOT] } : {};
  const around = ['wallAroundLocating', limits.wallAroundLocating] as const;
  if (locating.site === 'free' || (locating.site === 'slot-ends' && design.run === 'open')) {
    const edge = thinnest(bridge.locating.map((hole) => wallToEdge(bridge.footprint.outline, hole)));
    if (edge !== null)
      found.push({
        ...placedWall('locating-edge', 'Locating pins clear the edge of the bridge', edge, around),
        ...tries,
      });
  }
  if (locating.site === 'free') {
    const { outside } = slotFrame(design, slot);
    const beside = bridge.locating.filter(({ centre, diameter }) => outside(centre) > -diameter / 2 + 1e-6);
    const wall = thinnest(
      beside.map(({ centre, diameter }) => ({ wall: outside(centre) - diameter / 2, at: [centre] })),
    );
    if (wall !== null)
      found.push({ ...placedWall('locating-slot', 'Locating pins clear the slot', wall, around), ...tries });
  }
  if (locating.site !== 'outer-pin-holes' && pins !== null) {
    const holes = reamed(pins, bridge.pins);
    const wall = thinnest(bridge.locating.flatMap((one) => holes.map((other) => wallBetween(one, other))));
    const between = ['wallBetweenHoles', limits.wallBetweenHoles] as const;
    if (wall !== null)
      found.push({ ...placedWall('locating-pins', 'Locating pins clear the bridge pins', wall, between), ...tries });
  }
  return found;
};
