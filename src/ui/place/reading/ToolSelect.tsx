import { READ_TOOLS, type ReadToolId } from '../../../core/placement/reading/readTools';
import type { ReadLine } from '../../../core/placement/reading/types';
import { chooseTool } from '../../../store/commands/place/chooseTool';
import { useBench } from '../../print/proof/useBench';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { fine } from './fine';
import { type Place, toolOf, toolSigma } from './usePlace';

interface ToolSelectProps {
  readonly place: Place;
  readonly line: ReadLine;
}

/** What a line is read with; readings of it in this round that were taken already count as taken with that. */
export function ToolSelect({ place: { round, tools }, line }: ToolSelectProps) {
  const { actions } = useServices().store;
  const bench = useBench();
  const { style } = useLengths();
  return (
    <select
      className="read-tool"
      aria-label={`Tool for ${line.label}`}
      value={toolOf(line, tools, style.unit)}
      onChange={(event) => {
        const tool = event.target.value as ReadToolId;
        bench.chooseTool(line.id, tool);
        if (round?.readings.some((reading) => reading.line === line.id))
          actions.change(`Tool: ${line.label}`, (project) =>
            chooseTool(project, round.id, line.id, { tool, sigma: toolSigma(tool, tools) }),
          );
      }}
    >
      {READ_TOOLS.map(({ id, short }) => (
        <option key={id} value={id}>
          {short}, ±{fine(toolSigma(id, tools), style)}
        </option>
      ))}
    </select>
  );
}
