import type { AuditLimit, AuditLimits } from '../audit/auditLimits';
import { auditLimitsInUse } from '../audit/auditLimitsInUse';

/** Limits of the design checks that the audit does not share, mm; every figure is the maker's to change. */
const OWN = {
  /** Wood between two holes. */
  wallBetweenHoles: 2,
  /** Wood between a locating-pin hole and the slot or the edge of the bridge. */
  wallAroundLocating: 2,
  /** Wood above and below a string hole. */
  wallAroundTies: 1.5,
  /** From a string to the rim of a hole that is not its own. */
  stringPastHole: 0.5,
  /** How far to the side a pin of two rows may stand from its string, since pairs of strings lie closer than pins can. */
  pinAsideTwoRows: 2.5,
  /** How far the two sides of a symmetric outline may differ. */
  symmetry: 0.02,
} as const;

const SOURCE = 'common practice, no source';

/** Limits of the design checks, by the names that follow "limits." in their fields. */
export type WallLimits = AuditLimits & { readonly [Name in keyof typeof OWN]: AuditLimit };

/** The limits that are the checks' own, with the usual figures. */
export const WALL_LIMITS: { readonly [Name in keyof typeof OWN]: AuditLimit } = Object.fromEntries(
  Object.entries(OWN).map(([name, value]) => [name, { value, source: SOURCE }]),
) as unknown as { readonly [Name in keyof typeof OWN]: AuditLimit };

/** The limits of the design checks with the maker's own in place of the usual. */
export const wallLimitsInUse = (own: Readonly<Record<string, number>>): WallLimits => ({
  ...auditLimitsInUse(own),
  ...(Object.fromEntries(
    Object.entries(WALL_LIMITS).map(([name, usual]) => {
      const value = own[name];
      return [name, value === undefined ? usual : { value, source: 'set by the maker' }];
    }),
  ) as unknown as typeof WALL_LIMITS),
});
