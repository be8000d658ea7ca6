import { useEffect, useRef, useState } from 'react';
import type { Project } from '../../../core/document/types';
import { compareProjects } from '../../../core/library/compareProjects';
import type { VersionEntry } from '../../../core/ports';
import { useServices } from '../../services';

/** How long after the last change they are counted, ms. */
const PAUSE = 400;

/** In how many things each of these versions differs from the project in hand; a version not counted yet is not in it. */
export const useDifferenceCounts = (
  project: Project,
  versions: readonly VersionEntry[],
): ReadonlyMap<string, number> => {
  const { library } = useServices();
  const texts = useRef(new Map<string, Project>());
  const [counts, setCounts] = useState<ReadonlyMap<string, number>>(new Map());
  const wanted = versions.map(({ id }) => id).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same versions come in another list each time
  useEffect(() => {
    let gone = false;
    const count = async (): Promise<void> => {
      const of = await library();
      const counted = new Map<string, number>();
      for (const { id } of versions) {
        const known = texts.current.get(id);
        const read = known === undefined ? await of.readVersion(project.id, id) : { ok: true as const, value: known };
        if (gone) return;
        if (!read.ok) continue;
        texts.current.set(id, read.value);
        counted.set(id, compareProjects(read.value, project).length);
      }
      setCounts(counted);
    };
    const timer = setTimeout(() => void count().catch(() => {}), PAUSE);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [wanted, project, library]);
  return counts;
};
