import { BODY_LIMITS } from '../../../core/checks/body/bodyLimits';
import type { Body } from '../../../core/document/bodyTypes';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { LimitRow } from '../../measure/LimitRow';
import { useLengths } from '../../useLengths';
import { BraceList } from './BraceList';
import { BracingStart } from './BracingStart';
import { HandRows } from './HandRows';
import { HoleRows } from './HoleRows';
import { PlateRows } from './PlateRows';
import './body.css';

/** What lies beneath and around the bridge, and how to find it. */
export function BodyPanel({ body }: { readonly body: Body }) {
  const { bare } = useLengths();
  return (
    <>
      <p className="field-caution">
        Look with a mirror and a light before you drill. Never steady the work with a hand inside while a drill runs.
      </p>
      <HandRows body={body} />
      <FieldRow path="body.across" usual="not measured" />
      <FieldRow path="body.tail" usual="not measured" />
      <FieldRow path="body.from" />
      <h3>Braces</h3>
      <p className="hint">
        A lamp inside, in a dark room, shows the braces through the top; or walk a small magnet on the top along one
        inside. Mark the middle of each brace at two places, one ahead of the bridge and one behind it, and read how far
        along and how far to the side each mark lies.
      </p>
      <BraceList body={body} />
      <More summary="Start from a usual bracing" open={body.braces.length === 0}>
        <BracingStart />
      </More>
      <h3>Bridge plate</h3>
      <PlateRows plate={body.plate} />
      <HoleRows body={body} />
      <More summary="Limits beneath the bridge">
        {Object.entries(BODY_LIMITS).map(([name, { value, source }]) => (
          <LimitRow key={name} name={name} usual={bare(value)} source={source} />
        ))}
      </More>
    </>
  );
}
