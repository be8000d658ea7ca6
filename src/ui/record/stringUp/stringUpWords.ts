import type { CrownAsRead, StringUp, StringUpStage } from '../../../core/document/buildTypes';
import { dayWords } from '../whenWords';

export const STAGES: readonly { readonly value: StringUpStage; readonly label: string }[] = [
  { value: 'first', label: 'first setting' },
  { value: 'settled', label: 'after settling' },
  { value: 'season', label: 'another season' },
];

export const CROWNS: readonly { readonly value: CrownAsRead; readonly label: string }[] = [
  { value: 'straight', label: 'straight, not shaped' },
  { value: 'shaped', label: 'shaped to the plan' },
  { value: 'filed', label: 'filed since the last' },
];

const stageWords = (stage: StringUpStage): string => STAGES.find(({ value }) => value === stage)?.label ?? stage;

/** "25 Nov 2026, first setting". */
export const stringUpName = ({ at, stage }: Pick<StringUp, 'at' | 'stage'>): string =>
  `${dayWords(at)}, ${stageWords(stage)}`;
