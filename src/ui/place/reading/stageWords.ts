import type { RoundStage } from '../../../core/document/buildTypes';

/** When in the work a place is read, in the order of the work. */
export const STAGES: readonly { readonly value: RoundStage; readonly label: string }[] = [
  { value: 'dry', label: 'dry, before tape' },
  { value: 'taped', label: 'taped' },
  { value: 'wet', label: 'in wet glue' },
  { value: 'cured', label: 'cured' },
];

export const stageWords = (stage: RoundStage): string => STAGES.find(({ value }) => value === stage)?.label ?? stage;
