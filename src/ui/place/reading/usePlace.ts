import { useMemo } from 'react';
import type { PlaceRound } from '../../../core/document/buildTypes';
import { payingOrder } from '../../../core/placement/reading/payingOrder';
import { type PlaceAnswer, placeAnswer, tolerancesOf } from '../../../core/placement/reading/placeAnswer';
import { nominalPose, type ReadCase } from '../../../core/placement/reading/readCase';
import { readLines } from '../../../core/placement/reading/readLines';
import { READ_TOOLS } from '../../../core/placement/reading/readTools';
import type { ReadLine } from '../../../core/placement/reading/types';
import type { Result } from '../../../core/result';
import { openRound } from '../../../store/commands/place/takeReading';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { useInHand } from './inHand';

/** How many lines stand in front, by what they tell. */
const IN_FRONT = 6;

/** One sigma of a tool, as this project has it. */
export const toolSigma = (tool: string, doubts: Readonly<Record<string, number>>): number =>
  doubts[`tool-${tool}`] ?? READ_TOOLS.find(({ id }) => id === tool)?.sigma ?? 0.25;

/** Everything that Place knows of the bridge in its place. */
export interface Place {
  readonly read: ReadCase;
  readonly lines: readonly ReadLine[];
  /** Those that pay most, in that order. */
  readonly front: readonly ReadLine[];
  /** The round that readings go into; null while none is open at this stage. */
  readonly round: PlaceRound | null;
  readonly sigmaOf: (line: ReadLine) => number;
}

/** Null while the instrument is not whole. */
export const usePlace = (): Place | null => {
  const project = useStore((state) => state.project);
  const derived = useStore((state) => state.derived);
  const { style } = useLengths();
  const { stage } = useInHand();
  const { scale, board, strings, saddle, slot, bridge } = derived;
  const known = useMemo((): Omit<Place, 'round'> | null => {
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
    const sigmaOf = (line: ReadLine): number => toolSigma(line.tool, project.doubts);
    const front = payingOrder(lines, nominalPose(read), tolerancesOf(read), sigmaOf, IN_FRONT);
    return { read, lines, front, sigmaOf };
  }, [project, scale, board, strings, saddle, slot, bridge, style]);
  if (known === null) return null;
  return { ...known, round: openRound(project.build?.rounds ?? [], stage) };
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
