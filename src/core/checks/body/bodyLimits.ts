import type { AuditLimit } from '../../audit/auditLimits';
import { MM_PER_INCH } from '../../units/mmPerInch';

/** A ball end, mm: the drill that passes it. */
const BALL = (3 / 16) * MM_PER_INCH;

/** Limits of the checks beneath the bridge, to start from, mm. */
export const BODY_LIMITS = {
  /** Rim of a reamed pin hole to the side of a brace. */
  braceToPin: {
    value: BALL / 2 + 2.5,
    source: 'half a ball end (3/16 in passes it: frets.com) and 2 to 3 mm: from memory, no source',
  },
  /** Rim of a locating-pin or wire hole to the side of a brace. */
  braceToHole: { value: 1, source: 'common practice, no source' },
  /** Rim of a reamed pin hole to the edge of the plate. */
  plateAroundPins: {
    value: BALL,
    source: 'a ball end (3/16 in passes it: frets.com) bears beside its hole: our own reasoning, no source',
  },
  /** Of the caul that stands inside while the bridge is glued. */
  caulThickness: {
    value: (1 + 1 / 8) * MM_PER_INCH,
    source: '1 1/8 in stock: fingerlakesguitarrep.powweb.com, bridge reglue clamping caul',
  },
  /** How far that caul reaches beyond the bridge, toward each side and front and back. */
  caulAcross: { value: 3, source: 'common practice, no source' },
  caulAlong: { value: 3, source: 'common practice, no source' },
  /** Room in its grooves beside and under a brace, and around the plate. */
  caulGroove: {
    value: 1.5,
    source: 'grooved for braces: fingerlakesguitarrep.powweb.com, bridge reglue clamping caul; the figure: no source',
  },
} as const satisfies Readonly<Record<string, AuditLimit>>;

/** One of them, or the maker's own in its place. */
export const bodyLimit = (name: keyof typeof BODY_LIMITS, own: Readonly<Record<string, number>>): AuditLimit => {
  const value = own[name];
  return value === undefined ? BODY_LIMITS[name] : { value, source: 'set by the maker' };
};
