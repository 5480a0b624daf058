import { defineConfig } from "vite";

/**
 * The service in one file that plain Node runs: its decorators need the types that Node's own stripping throws away. Packages stay
 * outside; the workspace's own sources come in.
 */
export default defineConfig({
  build: {
    ssr: true,
    target: "node24",
    outDir: "dist",
    emptyOutDir: false,
    sourcemap: true,
    minify: false,
    rollupOptions: {
      input: {
        main: "src/main.ts",
        embedded: "src/platform/database/embedded.ts",
        floor: "src/bench/floor.ts",
        reader: "src/capabilities/readings/reader.ts",
        "picture-program": "src/capabilities/evidence/picture-program.ts",
      },
      output: { format: "es", entryFileNames: "[name].js", chunkFileNames: "chunks/[name].js" },
    },
  },
  ssr: { noExternal: [/^@evenhand\//] },
});
