/** The ways round in a graph, a node that closes one at both ends of it; none where everything points one way. */
export function circles(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const walk = (node: string, way: readonly string[]): void => {
    if (way.includes(node)) found.push([...way.slice(way.indexOf(node)), node]);
    else if (!done.has(node)) for (const next of graph.get(node) ?? []) walk(next, [...way, node]);
    done.add(node);
  };
  for (const node of graph.keys()) walk(node, []);
  return found;
}
