import type { AuditLimit } from '../audit/auditLimits';
import type { DesignCheck } from './types';

/** A check on the wood left between two things: `name` is a whole clause, "Pins clear the slot". wall mm, − when they overlap. */
export const wallCheck = (id: string, name: string, wall: number, limit: AuditLimit): DesignCheck => {
  const lengths = [Math.abs(wall), limit.value];
  if (wall < 0)
    return { id, verdict: 'wrong', message: `${name}: they overlap by {0}.`, lengths, source: limit.source };
  if (wall < limit.value)
    return { id, verdict: 'look', message: `${name} by {0} only; {1} is usual.`, lengths, source: limit.source };
  return { id, verdict: 'good', message: `${name} by {0}.`, lengths, source: limit.source };
};
