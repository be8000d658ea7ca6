import { heightLimitsInUse } from '../../core/height/limitsInUse';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { HeightTable } from './HeightTable';
import { LimitRow } from './LimitRow';
import { useHeight } from './useBridgeAtHand';

/** The rest of the chain of heights, string by string, and the limits it is held against. */
export function HeightMore() {
  const height = useHeight();
  return (
    <>
      {height?.ok && <HeightTable strings={height.value.strings} />}
      <FieldRow path="setup.nutHeight.treble" />
      <FieldRow path="setup.nutHeight.bass" />
      <FieldRow path="instrument.boardRadius" usual="flat" />
      <FieldRow path="setup.reliefFrets.from" />
      <FieldRow path="setup.reliefFrets.to" />
      <FieldRow path="height.run" />
      <FieldRow path="height.pickup" />
      <FieldRow path="height.kind" />
      <More summary="Limits">
        <HeightLimitRows />
      </More>
    </>
  );
}

function HeightLimitRows() {
  const kind = useStore((state) => state.project.height.kind);
  const { bare } = useLengths();
  const usual = heightLimitsInUse(kind, {});
  const percent = (share: number): string => String(Math.round(share * 100));
  return (
    <>
      <p className="hint">An empty box takes the usual figure that stands in it.</p>
      {(['airspace', 'proud', 'thickness'] as const).flatMap((name) => {
        const { least, most, source } = usual[name];
        return [
          <LimitRow key={`${name}Least`} name={`${name}Least`} usual={bare(least)} source={source} />,
          <LimitRow key={`${name}Most`} name={`${name}Most`} usual={bare(most)} source={source} />,
        ];
      })}
      <LimitRow name="woodUnder" usual={bare(usual.woodUnder.least)} source={usual.woodUnder.source} />
      <LimitRow name="share" usual={percent(usual.share.least)} source={usual.share.source} />
      <LimitRow name="shareAim" usual={percent(usual.shareAim.least)} source={usual.shareAim.source} />
      <LimitRow name="breakDeg" usual={String(usual.breakDeg.least)} source={usual.breakDeg.source} />
    </>
  );
}
