import { bodyHand } from '../../../core/body/bodyHand';
import { fieldValue } from '../../../core/document/fieldValue';
import { FieldRow } from '../../fields/FieldRow';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { bodySideWords, plainBodySide } from './bodySideText';

/** How far to one side something lies, with the side in words, as the body was built. */
export function SideRow({ path }: { readonly path: string }) {
  const project = useStore((state) => state.project);
  const { withUnit } = useLengths();
  const x = fieldValue(project, path);
  if (project.body === null || typeof x !== 'number') return null;
  const hand = bodyHand(project.body, project.instrument.hand);
  return <FieldRow path={path} plain={(text) => plainBodySide(text, hand)} note={bodySideWords(x, hand, withUnit)} />;
}
