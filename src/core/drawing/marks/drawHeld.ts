import { rampMarks } from '../../bridge/rampMarks';
import { tieHoles } from '../../bridge/tieHoles';
import type { Derived } from '../../derive/types';
import type { Hand } from '../../document/hand';
import type { Project } from '../../document/types';
import { handedItem } from '../handed';
import type { Item } from '../types';
import { drawRamps } from './drawRamps';
import { drawTies } from './drawTies';

/** How the strings are held, on screen and on paper: ramps of the pin holes, or string holes; hand applied. */
export const drawHeld = (
  { bridge: { pins, ties }, strings }: Pick<Project, 'bridge' | 'strings'>,
  { bridge, slot, saddle }: Derived,
  hand: Hand,
): readonly Item[] => {
  if (!bridge.ok || !slot.ok || !saddle.ok) return [];
  const ramps = pins === null ? [] : drawRamps(rampMarks(pins, bridge.value.pins, saddle.value));
  const holes = ties === null ? [] : tieHoles(ties, strings.length, slot.value, bridge.value);
  return [...ramps, ...drawTies(holes, ties?.kind === 'back-edge')].map((item) => handedItem(hand, item));
};
