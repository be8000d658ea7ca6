import { bodyLimit } from '../../checks/body/bodyLimits';
import { handedItem } from '../../drawing/handed';
import { pathBounds } from '../../geom/pathBounds';
import { sagitta } from '../../height/sagitta';
import { ok, type Result } from '../../result';
import { showLength } from '../../units/showLength';
import { clampPlan } from './caul/clampPlan';
import { BETWEEN_CAULS, clampProfile, OVER_BRIDGE } from './caul/clampProfile';
import { domeProfile } from './caul/domeProfile';
import { partOfItems } from './items/partOfItems';
import { wantSole } from './items/wantSole';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** A radius, or that there is none. */
const radiusWords = (radius: number | null, show: (mm: number) => string): string =>
  radius === null ? 'flat' : `radius ${show(radius)}`;

/**
 * Cauls for the clamps on the bridge, in plan and from the tail, and the end profile of the inside caul. Codes: those of the
 * bridge and of its sole, sheet.noSole.
 */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const { project, derived, around, style } = context;
  const { bridge } = derived;
  if (!bridge.ok) return bridge;
  const { sole, thickness, locating } = project.bridge;
  const fit = around?.side.fit ?? null;
  if (sole === null || fit === null) return wantSole();
  if (!fit.ok) return fit;
  const show = (mm: number): string => showLength(mm, style);
  const { hand } = project.instrument;
  const { minX, maxX } = pathBounds(bridge.value.footprint.outline);
  const aside = bodyLimit('caulAcross', project.limits).value;
  const thick = bodyLimit('caulThickness', project.limits).value;
  const dome = sole.top.from === 'radius' ? sole.top.across : sole.top.under;
  const halves = [aside - minX, aside + maxX] as const;
  const drop = sagitta(dome, Math.max(...halves));
  const handed = (items: ReturnType<typeof clampProfile>) => items.map((item) => handedItem(hand, item));
  return ok([
    partOfItems(
      'clamp-plan',
      'Clamping cauls, from above',
      withNotes(
        clampPlan(bridge.value, sole, locating.clearance, hand),
        `CENTRE and two WINGS, CLAMP FACE up, seen on the bridge · ${hand} hand`,
        [
          `Saw apart where the wings begin, ${show(BETWEEN_CAULS)} between. Stay a millimetre or two inside the footprint, so that squeeze-out is seen and cleaned.`,
          `Holes over the locating pins: the drill and ${show(locating.clearance)} of room. Pins are pulled before the glue grabs.`,
          'Wax the cauls or lay film under them. Saddle out of its slot.',
        ],
      ),
      false,
    ),
    partOfItems(
      'clamp-profile',
      'Clamping cauls, end profile',
      withNotes(
        handed(clampProfile(sole, fit.value, thickness)),
        `Seen from the tail, TREBLE and BASS as marked · ${hand} hand`,
        [
          `Wide line: the cauls. Beneath them the bridge and the top. Upper face ${radiusWords(sole.face, show)}; wings ${show(sole.wing.inner)} where they begin, ${show(sole.wing.tip)} at the tip; ${show(OVER_BRIDGE)} of wood over the bridge. Level on top, so that every clamp stands square.`,
          'Clamps: centre first, then the wings, snug and even, again in turn. Wings that need force to come down are not fitted yet: fit the sole, do not clamp harder.',
          'Too tight dents, starves the joint and cracks braces. No heat on the joint after clamping.',
        ],
      ),
      false,
    ),
    partOfItems(
      'caul-dome',
      'Inside caul, end profile to the dome',
      withNotes(handed(domeProfile(halves, thick, dome)), `Seen from the tail · ${hand} hand`, [
        dome === null
          ? 'The top is flat under the bridge: so is the plate face.'
          : `Plate face rounded to the dome, ${radiusWords(dome, show)}: it falls ${drop.toFixed(2)} mm to the ends. Along the strings: ${radiusWords(sole.top.along, show)}.`,
        'Grooves, plate relief and holes: see the plate face of the inside caul.',
      ]),
      false,
    ),
  ]);
};

/** Cauls for the clamps. */
export const clampingCauls: SheetKind = {
  id: 'clamping-cauls',
  name: 'Clamping cauls',
  about:
    'The cauls on the bridge, centre and wings, shaped to its upper face, and the inside caul’s profile to the dome.',
  make,
};
