import type { Project } from '../../../core/document/types';

/** What a step that edits the outline is called; on the outline of a shape it says as well that it is drawn freely from now on. */
export const outlineLabel = (project: Project, label: string): string =>
  project.bridge.outline.kind === 'drawn'
    ? label
    : `Outline drawn freely, ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
