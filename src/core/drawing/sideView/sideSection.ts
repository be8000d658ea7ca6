import type { Project } from '../../document/types';
import { soleLimitsInUse } from '../../height/sole/soleLimits';
import { formatLength, type LengthStyle } from '../../units/formatLength';
import type { PlotPicture } from '../plots/types';
import { sectionDimensions } from './sectionDimensions';
import { type SectionNeeds, sectionPlaces } from './sectionPlace';
import { sectionShapes } from './sectionShapes';
import { at, sideText } from './sideItems';
import { sidePicture } from './sidePicture';

/** The straightedge is drawn level, since nothing tells the angle of the neck against the top. */
const CAPTION = 'True scale. Nut to the left; the straightedge is drawn level with the sole.';

/**
 * The bridge cut along the strings, at the centreline or at a string, true to scale: top, sole, slot, saddle, string and
 * straightedge, with their dimensions. The part of a dimension is the path of its field. The same for either hand. Null
 * where the section passes beside the bridge.
 */
export const sideSection = (
  needs: SectionNeeds & { readonly limits: Project['limits'] },
  style: LengthStyle,
): PlotPicture | null => {
  const places = sectionPlaces(needs);
  if (places === null) return null;
  const { bridge, strings } = needs.project;
  const show = (mm: number): string => formatLength(mm, style);
  const name =
    needs.string === null ? 'the centreline' : `string ${needs.string + 1} (${strings[needs.string]?.name ?? ''})`;
  const shapes = sectionShapes(places, {
    draft: bridge.sole?.draft ?? 0,
    hole: bridge.pins?.hole ?? 0,
    clearance: soleLimitsInUse(needs.limits).saddleClearance.value,
  });
  const { face, floor, crown, breakDeg } = places;
  const unit = style.unit === 'mm' ? 'mm' : 'inches';
  return sidePicture(
    [
      ...shapes,
      ...sectionDimensions(places, show, needs.heights.read),
      sideText('nut', 'sides', 'note', at(places.front - 14, 1.6), '← nut', 'start'),
    ],
    {
      title: `Section along ${name}`,
      summary: `Bridge ${show(face)} ${unit} thick, slot ${show(face - floor)} deep with ${show(floor)} of wood under it, saddle ${show(crown - face)} proud; the string breaks by ${breakDeg.toFixed(1)} degrees.`,
      caption: needs.heights.read ? CAPTION : `${CAPTION} It was not read yet: the middle of its limits is taken.`,
    },
  );
};
