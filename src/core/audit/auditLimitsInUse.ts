import { AUDIT_LIMITS, type AuditLimit, type AuditLimits } from './auditLimits';

/** The audit's limits with the maker's own in place of the usual. */
export const auditLimitsInUse = (own: Readonly<Record<string, number>>): AuditLimits =>
  Object.fromEntries(
    Object.entries(AUDIT_LIMITS).map(([name, usual]: [string, AuditLimit]) => {
      const value = own[name];
      return [name, value === undefined ? usual : { value, source: 'set by the maker' }];
    }),
  ) as unknown as AuditLimits;
