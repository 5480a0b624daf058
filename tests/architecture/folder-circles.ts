import { dirname } from "node:path";

type Edge = readonly [from: string, to: string];

/** The folders each folder's own files import from; what lies deeper is a folder of its own. */
const byFolder = (edges: readonly Edge[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const folders = new Map<string, Set<string>>();
  for (const [from, to] of edges) {
    const [folder, used] = [dirname(from), dirname(to)];
    if (folder !== used) folders.set(folder, (folders.get(folder) ?? new Set()).add(used));
  }
  return folders;
};

/** Folders that reach themselves again through what they import, each with the way round. */
export const folderCircles = (edges: readonly Edge[]): string[] => {
  const folders = byFolder(edges);
  const wayBack = (start: string): string | undefined => {
    const ways = [...(folders.get(start) ?? [])].map((next) => [start, next]);
    const seen = new Set<string>();
    for (let way = ways.shift(); way !== undefined; way = ways.shift()) {
      const here = way.at(-1) ?? "";
      if (here === start) return way.join(" → ");
      if (seen.has(here)) continue;
      seen.add(here);
      ways.push(...[...(folders.get(here) ?? [])].map((next) => [...(way ?? []), next]));
    }
    return undefined;
  };
  return [...folders.keys()].flatMap((folder) => wayBack(folder) ?? []);
};
