import type { Build } from '../document/buildTypes';
import type { Project } from '../document/types';
import { scaleOf } from '../instrument/scaleOf';
import type { LibraryEntry } from './libraryEntry';

const wordsOfBuild = ({ woods, stringUps }: Build): readonly string[] => [
  ...woods.flatMap(({ part, species, origin }) => [part, species, origin]),
  ...stringUps.map(({ note }) => note),
];

/** What the library shows of a project, and what it is found by. */
export const entryOf = (project: Project, archived: boolean): LibraryEntry => {
  const { id, revision, about, instrument, strings, bridge, height, build } = project;
  const scale = scaleOf(instrument);
  const words = [about.notes, ...(build === null ? [] : wordsOfBuild(build))];
  return {
    id,
    revision,
    name: about.name,
    serial: build?.serial ?? null,
    parent: about.parent?.id ?? null,
    hand: instrument.hand,
    scale: scale.ok ? scale.value.scaleLength : null,
    shape: bridge.outline.kind === 'drawn' ? 'drawn' : bridge.outline.shape,
    strings: strings.length,
    kind: height.kind,
    words: words.filter((each) => each !== '').join('\n'),
    pictures: about.pictures,
    created: about.created,
    changed: about.changed,
    archived,
  };
};
