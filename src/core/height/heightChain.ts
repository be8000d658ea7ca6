import { failed, type Issue, issue, ok, type Result } from '../result';
import { heightReasons } from './heightReasons';
import { stringHeights } from './stringHeights';
import { thicknessRange } from './thicknessRange';
import type { HeightChain, HeightChainArguments, SaddleHeight, StringHeight } from './types';

const problems = (args: HeightChainArguments): readonly Issue[] => {
  const { airspace, bridgeThickness, slotDepth, saddleBlank, run, pickupThickness, limits } = args;
  const found: Issue[] = [];
  const expect = (good: boolean, path: string, code: string, message: string): void => {
    if (!good) found.push(issue(path, code, message));
  };
  const above0 = (value: number): boolean => value > 0 && Number.isFinite(value);
  expect(Number.isFinite(airspace), 'airspace', 'height.airspace', 'Expected the straightedge’s distance in mm.');
  expect(above0(bridgeThickness), 'bridgeThickness', 'height.thickness', 'Expected a bridge thickness above 0.');
  expect(
    slotDepth > 0 && slotDepth < bridgeThickness,
    'slotDepth',
    'height.slotDepth',
    'Expected a slot above 0 deep that leaves wood beneath.',
  );
  expect(
    pickupThickness >= 0 && pickupThickness < slotDepth,
    'pickupThickness',
    'height.pickup',
    'Expected a pickup thinner than the slot is deep, or 0.',
  );
  expect(
    saddleBlank === null || above0(saddleBlank),
    'saddleBlank',
    'height.blank',
    'Expected a saddle height above 0.',
  );
  expect(run === null || above0(run), 'run', 'height.run', 'Expected a distance above 0 from the saddle to the pins.');
  for (const name of ['share', 'shareAim'] as const)
    expect(
      limits[name].least >= 0 && limits[name].least < 1,
      `limits.${name}`,
      'height.limits',
      'Expected a share from 0 to below 1.',
    );
  for (const name of ['airspace', 'proud', 'thickness'] as const)
    expect(
      limits[name].least <= limits[name].most,
      `limits.${name}`,
      'height.limits',
      'Expected the least no larger than the most.',
    );
  for (const name of ['woodUnder', 'breakDeg'] as const)
    expect(limits[name].least >= 0, `limits.${name}`, 'height.limits', 'Expected a limit of 0 or more.');
  return found;
};

const overSaddle = (string: StringHeight, args: HeightChainArguments): SaddleHeight => {
  const proud = string.height + args.airspace;
  const inSlot = args.slotDepth - args.pickupThickness;
  const saddle = inSlot + proud;
  return {
    ...string,
    proud,
    saddle,
    // A saddle that must end below the top of the bridge lies in the slot whole.
    share: proud > 0 ? inSlot / saddle : 1,
    breakDeg: args.run === null ? null : (Math.atan2(proud, args.run) * 180) / Math.PI,
  };
};

/**
 * From the frets to the saddle's top: can this bridge work at this neck angle? Each string's height at the saddle plus the
 * straightedge's airspace is what the saddle stands up. A bridge within all limits is a go; a slot that only wants cutting
 * deeper is said beside it. Otherwise another thickness is sought; where none is left, the neck must be set first.
 *
 * Codes: as stringHeights; height.airspace, height.thickness, height.slotDepth, height.pickup, height.blank, height.run,
 * height.limits.
 */
export const heightChain = (args: HeightChainArguments): Result<HeightChain> => {
  const heights = stringHeights(args);
  const wrong = [...(heights.ok ? [] : heights.issues), ...problems(args)];
  if (!heights.ok || wrong.length > 0) return failed(wrong);
  const { airspace, bridgeThickness, slotDepth, pickupThickness, limits } = args;
  const strings = heights.value.map((string) => overSaddle(string, args));
  const prouds = strings.map((string) => string.proud);
  const proud = { least: Math.min(...prouds), most: Math.max(...prouds) };
  const woodUnder = bridgeThickness - slotDepth;
  const reasons = heightReasons(args, strings, woodUnder);
  const thickness = thicknessRange({ airspace, bridgeThickness, proud, pickupThickness }, limits);
  const sound = reasons.every(({ weight }) => weight === 'look');
  return ok({
    strings,
    proud,
    woodUnder,
    blankNeeded: Math.max(...strings.map(({ saddle }) => saddle)),
    pickup: { lift: pickupThickness, actionRise: pickupThickness / 2 },
    thickness,
    verdict: sound ? 'go' : thickness ? 'change-bridge' : 'set-neck-first',
    reasons,
  });
};
