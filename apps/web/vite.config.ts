import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { compileAhead } from "./compile-ahead.ts";
import { compressFiles } from "./compress-files.ts";
import { notices } from "./notices.ts";
import { pageFiles } from "./page-files.ts";
import { preloadMain } from "./preload-main.ts";

/** The service's address while developing; in production the service itself hands out these files. */
const service = process.env["EVENHAND_SERVICE"] ?? "http://127.0.0.1:8080";

export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), notices(), preloadMain(), compileAhead(), compressFiles()],
  build: {
    // Beside the type declarations, which lie in dist itself.
    outDir: "dist/site",
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 400,
    rolldownOptions: {
      output: {
        codeSplitting: {
          // What they import from elsewhere stays where it is.
          includeDependenciesRecursively: false,
          groups: pageFiles(),
        },
      },
    },
  },
  server: { proxy: { "/api": service } },
});
