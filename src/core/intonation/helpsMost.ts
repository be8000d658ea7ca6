import type { DoubtfulInput } from './doubtfulInputs';
import type { StringModel } from './stringModels';
import { USUAL_DOUBTS } from './usualDoubts';

/** The figure that is worth measuring again: for which string (null: for all), and how much doubt it makes there, mm. */
export interface HelpsMost {
  readonly input: DoubtfulInput;
  /** "core". */
  readonly name: string;
  /** Index of the string from 0. */
  readonly string: number;
  /** Whether the figure belongs to that string alone. */
  readonly ofString: boolean;
  /** One sigma of the setback that it makes, mm. */
  readonly shift: number;
}

/** What belongs to the player is no figure to measure again. */
const OF_PLAYER: readonly DoubtfulInput[] = ['fingerDistance', 'pushDown'];
const OF_STRING: readonly DoubtfulInput[] = ['coreDiameter', 'modulus', 'massPerLength', 'kappa', 'b0'];

/** The measurable figure whose doubt moves any string's setback most; null without any doubt. */
export const helpsMost = (models: readonly StringModel[]): HelpsMost | null => {
  let most: HelpsMost | null = null;
  for (const [string, { shares }] of models.entries())
    for (const { input, shift } of shares)
      if (!OF_PLAYER.includes(input) && Math.abs(shift) > (most?.shift ?? 0))
        most = {
          input,
          name: USUAL_DOUBTS.find((usual) => usual.input === input)?.name ?? input,
          string,
          ofString: OF_STRING.includes(input),
          shift: Math.abs(shift),
        };
  return most;
};
