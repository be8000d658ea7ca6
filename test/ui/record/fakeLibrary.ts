import type { Project } from '../../../src/core/document/types';
import { entryOf } from '../../../src/core/library/entryOf';
import type { Library, VersionEntry } from '../../../src/core/ports';
import { fail, ok } from '../../../src/core/result';

interface Kept {
  readonly project: Project;
  readonly archived: boolean;
  readonly versions: readonly (VersionEntry & { readonly project: Project })[];
}

/** A library that keeps everything in memory, for as long as it stands. */
export const fakeLibrary = (start: readonly Project[] = [], now = () => '2026-03-01T12:00:00.000Z'): Library => {
  const kept = new Map<string, Kept>(
    start.map((project) => [project.id, { project, archived: false, versions: [] }] as const),
  );
  const pictures: Uint8Array[] = [];
  const missing = (id: string) => fail<never>('', 'library.missing', `There is no ${id} in the library.`);
  return {
    list: async () => ok([...kept.values()].map(({ project, archived }) => entryOf(project, archived))),
    entry: async (id) => {
      const found = kept.get(id);
      return found === undefined ? missing(id) : ok(entryOf(found.project, found.archived));
    },
    textOf: async (id) => (kept.has(id) ? ok(`the text of ${id}`) : missing(id)),
    read: async (id) => {
      const found = kept.get(id);
      return found === undefined ? missing(id) : ok(found.project);
    },
    save: async (project, base) => {
      const before = kept.get(project.id);
      if ((before?.project.revision ?? null) !== base)
        return fail('', 'library.conflict', 'It was saved elsewhere meanwhile.');
      const version = { id: `v${project.revision}`, at: now(), revision: project.revision, name: null, project };
      kept.set(project.id, {
        project,
        archived: before?.archived ?? false,
        versions: [...(before?.versions ?? []), version].slice(-50),
      });
      return ok(entryOf(project, before?.archived ?? false));
    },
    setArchived: async (id, archived) => {
      const found = kept.get(id);
      if (found === undefined) return missing(id);
      kept.set(id, { ...found, archived });
      return ok(null);
    },
    remove: async (id) => (kept.delete(id) ? ok(null) : missing(id)),
    versions: async (id) => ok(kept.get(id)?.versions ?? []),
    readVersion: async (id, version) => {
      const found = kept.get(id)?.versions.find((each) => each.id === version);
      return found === undefined ? missing(version) : ok(found.project);
    },
    nameVersion: async (id, name) => {
      const found = kept.get(id);
      if (found === undefined) return missing(id);
      const { project, versions } = found;
      const named = { id: `n${versions.length}`, at: now(), revision: project.revision, name, project };
      kept.set(id, { ...found, versions: [...versions, named] });
      return ok(named);
    },
    addPicture: async (bytes) => ok(`photo${pictures.push(bytes)}`),
    pictureAddress: async (id) => {
      const bytes = pictures[Number(id.slice(5)) - 1];
      if (bytes === undefined) return missing(id);
      return ok(URL.createObjectURL(new Blob([new Uint8Array(bytes)])));
    },
    exportAll: async () => ok(JSON.stringify([...kept.values()].map(({ project }) => project))),
    importAll: async (text) => {
      const projects = JSON.parse(text) as readonly Project[];
      for (const project of projects) kept.set(project.id, { project, archived: false, versions: [] });
      return ok({ added: projects.length, copies: 0, same: 0 });
    },
    watch: () => () => {},
    place: async () => ({ lasting: false, used: 3_240_000, room: 2_000_000_000 }),
  };
};
