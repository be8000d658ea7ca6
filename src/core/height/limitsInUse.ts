import type { HeightKindName } from '../document/types';
import { HEIGHT_LIMITS, type HeightLimits, type LimitRange } from './heightLimits';

const OWN = 'set by the maker';

type Own = Readonly<Record<string, number>>;

const range = (usual: LimitRange, own: Own, name: string): LimitRange => {
  const least = own[`${name}Least`];
  const most = own[`${name}Most`];
  if (least === undefined && most === undefined) return usual;
  return { least: least ?? usual.least, most: most ?? usual.most, source: OWN };
};

const least = <Limit extends { readonly least: number; readonly source: string }>(
  usual: Limit,
  own: number | undefined,
) => (own === undefined ? usual : { ...usual, least: own, source: OWN });

/** The limits of a kind of instrument with the maker's own in place of the usual. */
export const heightLimitsInUse = (kind: HeightKindName, own: Own): HeightLimits => {
  const usual = HEIGHT_LIMITS[kind];
  return {
    airspace: range(usual.airspace, own, 'airspace'),
    proud: range(usual.proud, own, 'proud'),
    thickness: range(usual.thickness, own, 'thickness'),
    woodUnder: least(usual.woodUnder, own.woodUnder),
    share: least(usual.share, own.share),
    shareAim: least(usual.shareAim, own.shareAim),
    breakDeg: least(usual.breakDeg, own.breakDeg),
  };
};
