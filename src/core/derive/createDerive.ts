import { bridgePlace } from '../bridge/bridgePlace';
import { saddlePlace } from '../bridge/saddlePlace';
import { slotPlace } from '../bridge/slotPlace';
import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Bridge, Compensation, Instrument, InstrumentString, Project, Slot } from '../document/types';
import { boardOf } from '../instrument/boardOf';
import { scaleOf } from '../instrument/scaleOf';
import { stringPlaces } from '../instrument/stringPlaces';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { StringModel } from '../intonation/stringModels';
import { placementOf } from '../placement/placementOf';
import type { Issue, Result } from '../result';
import { ok } from '../result';
import { createMeasureSteps } from './measureSteps';
import { remember } from './remember';
import type { Derived } from './types';
import { withAll } from './withAll';

const eachOnce = (parts: readonly Result<unknown>[]): readonly Issue[] => {
  const all = parts.flatMap((part) => (part.ok ? [] : part.issues));
  return [...new Map(all.map((each) => [`${each.path} ${each.code}`, each])).values()];
};

/**
 * A function that computes everything from a project. Each step is remembered by the identity of what it needs, so that an
 * edit redoes only what follows from it. Total: a part that fails carries its reasons, and the rest is still there.
 */
export const createDerive = (): ((project: Project) => Derived) => {
  const scaleStep = remember((instrument: Instrument) => scaleOf(instrument));
  const boardStep = remember((instrument: Instrument, scale: Result<Scale>) =>
    withAll([scale], (value) => boardOf(instrument, value)),
  );
  const stringStep = remember((instrument: Instrument, strings: readonly InstrumentString[], board: Result<Board>) =>
    withAll([board], (value) => stringPlaces(instrument, strings, value)),
  );
  const saddleStep = remember(
    (
      compensation: Compensation,
      slot: Slot,
      scale: Result<Scale>,
      board: Result<Board>,
      strings: Result<readonly StringPlace[]>,
      models: Result<readonly StringModel[]>,
      land: number,
    ) => withAll([scale, board, strings], (...values) => saddlePlace(compensation, slot, ...values, models, land)),
  );
  const slotStep = remember((bridge: Bridge, saddle: Result<SaddlePlace>) =>
    withAll([saddle], (value) => slotPlace(bridge.slot, value, bridge.outline)),
  );
  const bridgeStep = remember(
    (bridge: Bridge, count: number, saddle: Result<SaddlePlace>, slot: Result<SlotPlace>): Result<BridgePlace> =>
      withAll([saddle, slot], (...values) => bridgePlace(bridge, count, ...values)),
  );
  const placementStep = remember(
    (
      instrument: Instrument,
      scale: Result<Scale>,
      board: Result<Board>,
      saddle: Result<SaddlePlace>,
      slot: Result<SlotPlace>,
      bridge: Result<BridgePlace>,
    ) => withAll([scale, board, saddle, slot, bridge], (...values) => ok(placementOf(instrument, ...values))),
  );
  const measure = createMeasureSteps();
  return (project) => {
    const { instrument, compensation, limits } = project;
    const auditLimits = measure.auditLimits(limits);
    const scale = scaleStep(instrument);
    const board = boardStep(instrument, scale);
    const strings = stringStep(instrument, project.strings, board);
    const models = measure.models(project.strings, strings, scale, project.setup, compensation.fit, project.doubts);
    const saddle = saddleStep(compensation, project.bridge.slot, scale, board, strings, models, auditLimits.land.value);
    const slot = slotStep(project.bridge, saddle);
    const bridge = bridgeStep(project.bridge, project.strings.length, saddle, slot);
    const placement = placementStep(instrument, scale, board, saddle, slot, bridge);
    const parts = [scale, board, strings, saddle, slot, bridge, placement];
    return {
      scale,
      board,
      strings,
      saddle,
      slot,
      bridge,
      placement,
      survey: measure.survey(instrument),
      taper: measure.taper(instrument, scale),
      models,
      issues: eachOnce(parts),
    };
  };
};
