import type { Rolldown } from "vite";

type Bundle = Rolldown.OutputBundle;

const before = (bundle: Bundle, name: string, seen = new Set<string>()): readonly string[] => {
  const chunk = bundle[name];
  if (seen.has(name) || chunk?.type !== "chunk") return [];
  seen.add(name);
  return [...chunk.imports.flatMap((one) => before(bundle, one, seen)), name];
};

/** The file that begins with a module of ours, such as `src/main.tsx`, after whatever it cannot run without. */
export const neededBy = (bundle: Bundle, module: string): readonly string[] => {
  const first = Object.values(bundle).find(
    (one) => one.type === "chunk" && one.facadeModuleId?.endsWith(`/${module}`) === true,
  );
  if (first === undefined) throw new Error(`The build holds no file that begins with ${module}.`);
  return before(bundle, first.fileName);
};
