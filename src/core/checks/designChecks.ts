import type { Designed } from './designed';
import { findingsOf } from './findingsOf';
import { mendThatServes } from './mendThatServes';
import type { DesignCheck } from './types';

/** Every check that the parts at hand allow, in the order a maker would look; a mend is worked out when it is asked for. */
export const designChecks = (designed: Designed): readonly DesignCheck[] => {
  const findings = findingsOf(designed);
  return findings.map(({ tries = [], ...check }): DesignCheck => {
    if (check.verdict === 'good' || tries.length === 0) return check;
    return { ...check, mend: () => mendThatServes(designed, findings, check.id, tries) };
  });
};
