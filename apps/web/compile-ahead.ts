import type { Plugin } from "vite";
import { neededBy } from "./needed-by.ts";

/** A browser that knows the mark compiles the whole file while it arrives, beside the main thread; to others it is a comment. */
const mark = "//# allFunctionsCalledOnLoad\n";

/**
 * Marks what a page shows its first content with, of every page and of the comparison's. Otherwise each of its twelve hundred
 * functions is compiled when it is first called, one after the other, between the last byte and the first paint.
 * https://explainers-by-googlers.github.io/explicit-javascript-compile-hints-file-based/ (from memory)
 */
export const compileAhead = (): Plugin => ({
  name: "compile-ahead",
  apply: "build",
  generateBundle: {
    order: "post",
    handler(_options, bundle) {
      const files = ["src/main.tsx", "src/pages/comparisons/ComparisonPage.tsx"].flatMap((module) =>
        neededBy(bundle, module),
      );
      for (const name of new Set(files)) {
        const chunk = bundle[name];
        if (chunk?.type === "chunk") chunk.code = mark + chunk.code;
      }
    },
  },
});
