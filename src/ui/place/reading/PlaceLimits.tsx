import { PLACE_LIMITS, type PlaceLimitName } from '../../../core/placement/reading/placeLimits';
import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useLengths } from '../../useLengths';
import { fine } from './fine';
import { ToolFields } from './ToolFields';

const NAMES = Object.keys(PLACE_LIMITS) as readonly PlaceLimitName[];

/** How good is good enough, and how far each tool can be trusted; each usual figure with its source. */
export function PlaceLimits() {
  const { style } = useLengths();
  return (
    <FieldGroup id="group-limits" title="Good enough, and the tools">
      <More summary="Tolerances">
        {NAMES.map((name) => {
          const { value, source } = PLACE_LIMITS[name];
          const usual = name === 'placeTurn' ? `${((value * 180) / Math.PI).toFixed(2)}°` : fine(value, style);
          return (
            <FieldRow
              key={name}
              path={`limits.${name}`}
              usual={usual.replace(/ mm$|″$|°$/, '')}
              note={`usual ${usual}: ${source}`}
            />
          );
        })}
      </More>
      <More summary="Doubt of one reading, by tool (one standard deviation)">
        <p className="hint">
          Kept with this bench, for every instrument. A reading keeps the doubt that it was taken with.
        </p>
        <ToolFields />
      </More>
    </FieldGroup>
  );
}
