import { compensationSign } from './compensationSign';
import { crownChecks } from './crownChecks';
import type { Designed } from './designed';
import type { Finding } from './finding';
import { locatingChecks } from './locatingChecks';
import { pinWalls } from './pinWalls';
import { slotWalls } from './slotWalls';
import { stringsAside } from './stringsAside';
import { stringsOnBoard } from './stringsOnBoard';
import { stringsPastHoles } from './stringsPastHoles';
import { symmetryCheck } from './symmetryCheck';
import { tieChecks } from './tieChecks';

/** Everything that the parts at hand allow to be found out, in the order a maker would look. */
export const findingsOf = ({ project, board, strings, saddle, slot, bridge, limits }: Designed): readonly Finding[] => {
  const found: Finding[] = [];
  if (board.ok && saddle.ok) found.push(...stringsOnBoard(project.instrument, board.value, saddle.value));
  if (saddle.ok)
    found.push(
      ...compensationSign(project.compensation, saddle.value),
      ...crownChecks(project.compensation.by, project.bridge.slot, saddle.value, limits),
    );
  if (strings.ok && saddle.ok && slot.ok && bridge.ok) {
    const [strung, onSaddle, inSlot, placed] = [strings.value, saddle.value, slot.value, bridge.value];
    const whole = { project, strings: strung, saddle: onSaddle, slot: inSlot, bridge: placed, limits };
    found.push(
      ...slotWalls(whole),
      ...pinWalls(whole),
      ...stringsAside(whole, placed.pins, 'bridge.pins.spread'),
      ...stringsPastHoles(whole),
      ...tieChecks(whole),
      ...locatingChecks(whole),
      ...symmetryCheck(whole),
    );
  }
  return found;
};
