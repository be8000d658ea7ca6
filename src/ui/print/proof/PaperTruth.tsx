import { PAPER_TRUTH } from '../../../core/sheets/proof/paperTruth';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';

/** Why a print is read before it is trusted, and what keeps it true. */
export function PaperTruth() {
  return (
    <FieldGroup title="Paper truth">
      {PAPER_TRUTH.map(({ id, title, facts }, index) => (
        <More key={id} summary={title} open={index === 0}>
          <ul className="plain">
            {facts.map(({ text, source }) => (
              <li key={text}>
                {text} <small className="quiet">Source: {source}.</small>
              </li>
            ))}
          </ul>
        </More>
      ))}
    </FieldGroup>
  );
}
