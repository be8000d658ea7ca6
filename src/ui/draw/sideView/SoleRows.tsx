import { SOLE_LIMITS, type SoleLimits } from '../../../core/height/sole/soleLimits';
import { FieldRow } from '../../fields/FieldRow';
import { More } from '../../fields/More';
import { useStore } from '../../useStore';
import { feetNote, radiusInFeet } from './radiusInFeet';

const GAPS = ['bassTip', 'bassWing', 'centre', 'trebleWing', 'trebleTip'] as const;
const LIMITS: readonly (keyof SoleLimits)[] = ['wingGap', 'centreGap', 'saddlePlay', 'saddleClearance'];

function RadiusRow({ path, radius }: { readonly path: string; readonly radius: number | null }) {
  return <FieldRow path={path} usual="flat" note={feetNote(radius)} plain={radiusInFeet} />;
}

/** What is said of sole, wings and top, and the limits it is held against. */
export function SoleRows() {
  const sole = useStore((state) => state.project.bridge.sole);
  if (sole === null) return null;
  const { top } = sole;
  return (
    <>
      <FieldRow path="bridge.sole.top.from" />
      {top.from === 'radius' ? (
        <RadiusRow path="bridge.sole.top.across" radius={top.across} />
      ) : (
        <>
          <p className="hint">
            Lay a bridge or a straight stick on the top, pressed at its centre, and slip feeler gauges under it.
          </p>
          {GAPS.map((name) => (
            <FieldRow key={name} path={`bridge.sole.top.gaps.${name}`} />
          ))}
          <RadiusRow path="bridge.sole.top.under" radius={top.under} />
        </>
      )}
      <RadiusRow path="bridge.sole.top.along" radius={top.along} />
      <RadiusRow path="bridge.sole.across" radius={sole.across} />
      <RadiusRow path="bridge.sole.along" radius={sole.along} />
      <FieldRow path="bridge.sole.wing.tip" />
      <FieldRow path="bridge.sole.wing.inner" />
      <FieldRow path="bridge.sole.wing.begin" />
      <RadiusRow path="bridge.sole.face" radius={sole.face} />
      <FieldRow path="bridge.sole.draft" />
      <FieldRow path="bridge.sole.sanding" />
      <More summary="Limits of sole and saddle">
        <p className="hint">An empty box takes the usual figure that stands in it.</p>
        {LIMITS.map((name) => {
          const { value, source } = SOLE_LIMITS[name];
          // These are hundredths of a millimetre: too fine for the figures of the screen.
          return <FieldRow key={name} path={`limits.${name}`} note={`Usual ${value} mm: ${source}.`} />;
        })}
      </More>
    </>
  );
}
