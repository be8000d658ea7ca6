import { useMemo } from 'react';
import type { PlaceRound } from '../../../core/document/buildTypes';
import type { PlaceAnswer } from '../../../core/placement/reading/answerTypes';
import { payingOrder } from '../../../core/placement/reading/payingOrder';
import { placeAnswer, tolerancesOf } from '../../../core/placement/reading/placeAnswer';
import { nominalPose, type ReadCase } from '../../../core/placement/reading/readCase';
import { readLines } from '../../../core/placement/reading/readLines';
import { READ_TOOLS, type ReadToolId } from '../../../core/placement/reading/readTools';
import type { ReadLine } from '../../../core/placement/reading/types';
import type { Result } from '../../../core/result';
import type { KeptTools } from '../../../store/bench/keptTools';
import { openRound } from '../../../store/commands/place/takeReading';
import { useBench, useBenchState } from '../../print/proof/useBench';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { useInHand } from './inHand';

/** How many lines stand in front, by what they tell. */
const IN_FRONT = 6;

/** One sigma of a tool as this bench has it, mm. */
export const toolSigma = (tool: ReadToolId, { sigmas }: KeptTools): number =>
  sigmas[tool] ?? READ_TOOLS.find(({ id }) => id === tool)?.sigma ?? 0.25;

/** What a line is read with on this bench; a rule has the divisions of the unit in use. */
export const toolOf = (line: ReadLine, { chosen }: KeptTools, unit: 'mm' | 'in'): ReadToolId =>
  chosen[line.id] ?? (line.tool === 'rule' && unit === 'in' ? 'rule-64' : line.tool);

/** Everything that Place knows of the bridge in its place. */
export interface Place {
  readonly read: ReadCase;
  readonly lines: readonly ReadLine[];
  /** Those that pay most, in that order. */
  readonly front: readonly ReadLine[];
  /** The round that readings go into; null while none is open at this stage. */
  readonly round: PlaceRound | null;
  /** The round to tell of: that one, or the last when it was accepted. */
  readonly told: PlaceRound | null;
  readonly tools: KeptTools;
  readonly sigmaOf: (line: ReadLine) => number;
}

/** Null while the instrument is not whole. */
export const usePlace = (): Place | null => {
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const { style } = useLengths();
  const { stage, round: reopened } = useInHand();
  const { tools } = useBenchState(useBench());
  const { scale, board, strings, saddle, slot, bridge } = derived;
  const known = useMemo((): Omit<Place, 'round' | 'told'> | null => {
    if (!scale.ok || !board.ok || !strings.ok || !saddle.ok || !slot.ok || !bridge.ok) return null;
    const read: ReadCase = {
      project,
      scale: scale.value,
      board: board.value,
      strings: strings.value,
      saddle: saddle.value,
      slot: slot.value,
      bridge: bridge.value,
    };
    const lines = readLines(read, style);
    const sigmaOf = (line: ReadLine): number => toolSigma(toolOf(line, tools, style.unit), tools);
    const front = payingOrder(lines, nominalPose(read), tolerancesOf(read), sigmaOf, IN_FRONT);
    return { read, lines, front, sigmaOf, tools };
  }, [project, scale, board, strings, saddle, slot, bridge, style, tools]);
  const rounds = project.build?.rounds;
  return useMemo(() => {
    if (known === null) return null;
    const kept = rounds ?? [];
    const round = kept.find(({ id, accepted }) => id === reopened && !accepted) ?? openRound(kept, stage);
    const last = kept.at(-1);
    return { ...known, round, told: round ?? (last?.accepted ? last : null) };
  }, [known, rounds, reopened, stage]);
};

/** What the readings of a round say. */
export const useAnswer = (place: Place | null, round: PlaceRound | null): Result<PlaceAnswer> | null =>
  useMemo(
    () =>
      place === null || round === null || round.readings.length === 0
        ? null
        : placeAnswer(place.read, place.lines, round.readings, place.sigmaOf),
    [place, round],
  );
