import { createDerive } from '../../../../src/core/derive/createDerive';
import type { Project } from '../../../../src/core/document/types';
import type { ReadCase } from '../../../../src/core/placement/reading/readCase';
import { readLines } from '../../../../src/core/placement/reading/readLines';
import type { ReadLine } from '../../../../src/core/placement/reading/types';
import { valueOf as answerOf } from '../../document/valueOf';

/** What this project's bridge is read against. */
export const readCaseOf = (project: Project): ReadCase => {
  const { scale, board, strings, saddle, slot, bridge } = createDerive()(project);
  return {
    project,
    scale: answerOf(scale),
    board: answerOf(board),
    strings: answerOf(strings),
    saddle: answerOf(saddle),
    slot: answerOf(slot),
    bridge: answerOf(bridge),
  };
};

export const linesOf = (read: ReadCase): readonly ReadLine[] => readLines(read, { unit: 'mm', decimals: 1 });

export const lineOf = (read: ReadCase, id: string): ReadLine => {
  const line = linesOf(read).find((each) => each.id === id);
  if (line === undefined) throw new Error(`There is no ${id}.`);
  return line;
};
