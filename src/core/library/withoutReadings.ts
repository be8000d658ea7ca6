import type { Body } from '../document/bodyTypes';
import type { Audit, Instrument, Project } from '../document/types';
import { scaleOf } from '../instrument/scaleOf';
import { roundDecimal } from '../units/roundDecimal';

/** The scale that the readings gave becomes the one to start from. */
const scaleEntered = (instrument: Instrument): Instrument => {
  const { scale, nut } = instrument;
  const found = scaleOf(instrument);
  if (scale.from === 'entered' || !found.ok) return { ...instrument, scale: { ...scale, readings: [] } };
  return {
    ...instrument,
    nut: { ...nut, offset: roundDecimal(found.value.nutOffset, 3) },
    scale: { from: 'entered', entered: roundDecimal(found.value.scaleLength, 3), readings: [] },
  };
};

const NOTHING_READ: Partial<Audit> = {
  treble: null,
  bass: null,
  centsTreble: null,
  centsBass: null,
  actionTreble: null,
  actionBass: null,
  pinSpread: null,
  pinsFromSlot: null,
  pinsToBack: null,
  ahead: null,
};

const nothingFound = (body: Body): Body => ({
  ...body,
  braces: body.braces.map((brace) => ({ ...brace, read: false })),
  plate: body.plate && { ...body.plate, read: false },
});

/**
 * A design as the next instrument starts from it: what was read on one instrument is no reading of another. A scale that
 * came from readings stays as a figure to start from, braces and plate as not found yet; the straightedge and what was read
 * of a bridge that is there are gone.
 */
export const withoutReadings = (project: Project): Project => ({
  ...project,
  instrument: scaleEntered(project.instrument),
  height: { ...project.height, straightedge: null },
  audit: { ...project.audit, ...NOTHING_READ },
  body: project.body && nothingFound(project.body),
});
