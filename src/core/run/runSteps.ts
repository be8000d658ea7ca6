import { cutSteps } from './cutSteps';
import { drillSteps } from './drillSteps';
import { glueSteps } from './glueSteps';
import { placeSteps } from './placeSteps';
import { readySteps } from './readySteps';
import type { RunCase } from './runCase';
import type { RunStep } from './types';

/**
 * The whole mounting in its order: new work or repair, slot first or slot after gluing. What stands on the screen and what
 * is printed as the worksheet are this one list.
 */
export const runSteps = (given: RunCase): readonly RunStep[] => [
  ...readySteps(given),
  ...placeSteps(),
  ...drillSteps(given),
  ...glueSteps(),
  ...cutSteps(given),
];
