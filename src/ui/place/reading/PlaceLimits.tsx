import { PLACE_LIMITS, type PlaceLimitName } from '../../../core/placement/reading/placeLimits';
import { READ_TOOLS } from '../../../core/placement/reading/readTools';
import { FieldGroup } from '../../fields/FieldGroup';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useLengths } from '../../useLengths';

const NAMES = Object.keys(PLACE_LIMITS) as readonly PlaceLimitName[];

/** How good is good enough, and how far each tool can be trusted; each usual figure with its source. */
export function PlaceLimits() {
  const { bare } = useLengths();
  return (
    <FieldGroup id="group-limits" title="Good enough, and the tools">
      <More summary="Tolerances">
        {NAMES.map((name) => {
          const { value, source } = PLACE_LIMITS[name];
          const usual = name === 'placeTurn' ? ((value * 180) / Math.PI).toFixed(2) : bare(value);
          return <FieldRow key={name} path={`limits.${name}`} usual={usual} note={`usual ${usual}: ${source}`} />;
        })}
      </More>
      <More summary="Doubt of one reading, by tool (one standard deviation)">
        {READ_TOOLS.map(({ id, sigma, source }) => (
          <FieldRow key={id} path={`doubts.tool-${id}`} usual={bare(sigma)} note={`usual ${bare(sigma)}: ${source}`} />
        ))}
      </More>
    </FieldGroup>
  );
}
