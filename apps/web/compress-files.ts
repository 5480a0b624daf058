import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import type { Plugin } from "vite";

/** Below this little is won, and a packet holds it anyway; pictures and fonts are compressed already. */
const leastBytes = 1_000;
const worthIt = /\.(js|css|html|svg|json|txt|webmanifest)$/;

const brotli = (bytes: Uint8Array): Uint8Array =>
  brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY } });

/** Leaves beside each file what the service hands to browsers that take it: a slow line is where people stand beside cars. */
export const compressFiles = (): Plugin => ({
  name: "compress-files",
  apply: "build",
  writeBundle({ dir = "" }, bundle) {
    for (const name of Object.keys(bundle).filter((file) => worthIt.test(file))) {
      const bytes = readFileSync(join(dir, name));
      if (bytes.byteLength < leastBytes) continue;
      writeFileSync(join(dir, `${name}.br`), brotli(bytes));
      writeFileSync(join(dir, `${name}.gz`), gzipSync(bytes, { level: 9 }));
    }
  },
});
