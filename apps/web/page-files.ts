import type { Rolldown } from "vite";

type Graph = Rolldown.ChunkingContext;

/** A module and whatever it imports at once, none of what it imports when it is needed. */
const importedBy = (graph: Graph, module: string, seen = new Set<string>()): ReadonlySet<string> => {
  if (seen.has(module)) return seen;
  seen.add(module);
  for (const one of graph.getModuleInfo(module)?.importedIds ?? []) importedBy(graph, one, seen);
  return seen;
};

const source = (file: string): string => `${import.meta.dirname.replaceAll("\\", "/")}/src/${file}`;
const screens = /\/apps\/web\/src\/|\/node_modules\/@(mantine|tanstack)\//;

/** What the comparison's page is made of beside what every page begins with. */
const partsIn = (graph: Graph): ReadonlySet<string> => {
  const first = importedBy(graph, source("main.tsx"));
  return importedBy(graph, source("pages/comparisons/ComparisonPage.tsx")).difference(first);
};

/**
 * One file of what the comparison shares with other pages, in place of one for every few lines: over a slow line each small file
 * costs a way there and back, six at a time. What every page begins with stays apart: it needs nothing of this, so the two
 * never wait for each other.
 */
export const comparisonFiles = (): Rolldown.CodeSplittingGroup => {
  let parts: ReadonlySet<string> | undefined;
  return {
    name: (module, graph) => {
      parts ??= partsIn(graph);
      return screens.test(module) && parts.has(module) ? "comparison" : null;
    },
    minShareCount: 2,
  };
};
