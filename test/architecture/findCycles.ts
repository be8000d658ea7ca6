/** Every import that closes a circle, as the chain of files from the first back to itself. */
export const findCycles = (graph: ReadonlyMap<string, readonly string[]>): string[][] => {
  const cycles: string[][] = [];
  const done = new Set<string>();
  const chain: string[] = [];
  const visit = (file: string): void => {
    const start = chain.indexOf(file);
    if (start >= 0) cycles.push([...chain.slice(start), file]);
    if (start >= 0 || done.has(file)) return;
    chain.push(file);
    for (const next of graph.get(file) ?? []) visit(next);
    chain.pop();
    done.add(file);
  };
  for (const file of graph.keys()) visit(file);
  return cycles;
};
