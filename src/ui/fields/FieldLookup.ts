import { createContext, useContext } from 'react';
import type { Field } from '../../core/document/fieldTypes';
import { firstFieldAt } from '../../core/document/firstFields';
import type { Project } from '../../core/document/types';

/** Which rows of the field table are at hand: those of the first screen, until a panel brings them all. */
export const FieldLookup = createContext<(project: Project, path: string) => Field | null>(firstFieldAt);

export const useFieldAt = (): ((project: Project, path: string) => Field | null) => useContext(FieldLookup);
