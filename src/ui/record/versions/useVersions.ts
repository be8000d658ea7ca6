import { useCallback, useEffect, useState } from 'react';
import type { VersionEntry } from '../../../core/ports';
import { useServices } from '../../services';
import { useShelf } from '../shelf/useShelf';

/** The earlier states of a project, the latest first; null until they are known, and why they are not. */
export const useVersions = (id: string) => {
  const { library } = useServices();
  const { entries } = useShelf().state;
  const [found, setFound] = useState<{ of: string; versions: readonly VersionEntry[] | null; problem: string | null }>({
    of: id,
    versions: null,
    problem: null,
  });
  const load = useCallback(async (): Promise<void> => {
    const listed = await (await library()).versions(id);
    if (listed.ok) setFound({ of: id, versions: listed.value, problem: null });
    else
      setFound({
        of: id,
        versions: listed.issues.some(({ code }) => code === 'library.missing') ? [] : null,
        problem: listed.issues.find(({ code }) => code !== 'library.missing')?.message ?? null,
      });
  }, [id, library]);
  // The list of the library comes anew whenever something was kept.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was kept since may be a version
  useEffect(() => {
    load().catch(() => {});
  }, [load, entries]);
  return { versions: found.of === id ? found.versions : null, problem: found.problem, load };
};
