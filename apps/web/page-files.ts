import type { Rolldown } from "vite";

type Graph = Rolldown.ChunkingContext;
type Files = ReadonlySet<string>;

/** A module and whatever it imports at once, none of what it imports when it is needed. */
const importedBy = (graph: Graph, module: string, seen = new Set<string>()): Files => {
  if (seen.has(module)) return seen;
  seen.add(module);
  for (const one of graph.getModuleInfo(module)?.importedIds ?? []) importedBy(graph, one, seen);
  return seen;
};

const source = (file: string): string => `${import.meta.dirname.replaceAll("\\", "/")}/src/${file}`;
const [start, main] = [source("start.ts"), source("main.tsx")];
/** Its styles stand with ours, one sheet in the order they are imported in. */
const isPackage = (module: string): boolean => module.includes("/node_modules/") && !module.endsWith(".css");

type Parts = { readonly first: Files; readonly begins: Files; readonly page: Files };

const partsIn = (graph: Graph): Parts => ({
  first: importedBy(graph, start),
  begins: importedBy(graph, main),
  page: importedBy(graph, source("pages/comparisons/ComparisonPage.tsx")),
});

/**
 * What every page begins with is two files, the packages and our own, and what the comparison's page shares with others is one: in
 * place of one for every few lines, since over a slow line each small file costs a way there and back, six at a time. What
 * `start.ts` needs stays with it, for it asks before anything else is there; `main.tsx`, which shows the application, stays apart
 * too: a page that imports from these files never starts it. Each needs only what stands before it here, so they never wait for
 * each other in a circle.
 */
export const pageFiles = (): Rolldown.CodeSplittingGroup[] => {
  let parts: Parts | undefined;
  const within = (graph: Graph): Parts => (parts ??= partsIn(graph));
  return [
    {
      name: (module, graph) => {
        const { first, begins } = within(graph);
        if (first.has(module) || module === main || !begins.has(module)) return null;
        return isPackage(module) ? "packages" : "application";
      },
    },
    {
      name: (module, graph) => {
        const { first, begins, page } = within(graph);
        return page.has(module) && !begins.has(module) && !first.has(module) ? "comparison" : null;
      },
      minShareCount: 2,
    },
  ];
};
