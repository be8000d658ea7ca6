import type { DesignCheck } from './types';

/** The words of a check with its lengths written for the reader. */
export const checkMessage = (check: DesignCheck, show: (mm: number) => string): string =>
  check.message.replace(/\{(\d)\}/g, (_, index: string) => show(check.lengths[Number(index)] ?? Number.NaN));
