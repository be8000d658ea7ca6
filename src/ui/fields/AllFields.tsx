import type { ReactNode } from 'react';
import { fieldAt } from '../../core/document/fieldAt';
import { FieldLookup } from './FieldLookup';

/** What is in here may show any field. */
export function AllFields({ children }: { readonly children: ReactNode }) {
  return <FieldLookup value={fieldAt}>{children}</FieldLookup>;
}
