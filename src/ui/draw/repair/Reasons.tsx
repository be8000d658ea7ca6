import type { Result } from '../../../core/result';

/** Why a part of the repair could not be computed; nothing when it was. */
export function Reasons({ of }: { readonly of: Result<unknown> | null }) {
  if (of === null || of.ok) return null;
  return of.issues.map(({ path, code, message }) => (
    <p key={`${path} ${code}`} className="not-yet">
      Not computed: {message}
    </p>
  ));
}
