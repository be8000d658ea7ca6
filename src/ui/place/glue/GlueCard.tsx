import { FieldGroup } from '../../fields/FieldGroup';
import { AirRows } from './AirRows';
import { ClampRows } from './ClampRows';
import { ForceRows } from './ForceRows';
import { GlueRow } from './GlueRow';
import { TimeRows } from './TimeRows';
import '../../style/draw.css';
import './glue.css';

/** The glue-up on one card: area, force, clamps, times, air, cautions. */
export function GlueCard() {
  return (
    <FieldGroup id="group-glue" title="Glue card">
      <div className="glue-card">
        <GlueRow path="build.glue.adhesive" />
        <ForceRows />
        <ClampRows />
        <TimeRows />
        <AirRows />
        <h3>Take care</h3>
        <ul className="plain">
          <li>Glue, solvents, strippers: the label and its safety sheet come first, and local rules.</li>
          <li>Solvents burn and attack finish: open the window, wear gloves, no flame, wipe with little.</li>
          <li>Oily wood is wiped with acetone by some and left dry by others; try it on an offcut.</li>
          <li>
            No heat near a fresh joint. Heat opens white glue at about 160 °F, hide glue at about 180 °F
            (moonlightluthiers.com).
          </li>
          <li>Clamps under load slip: no face over them, no fingers under them.</li>
        </ul>
      </div>
    </FieldGroup>
  );
}
