import { readFileSync } from "node:fs";

const flags = JSON.parse(readFileSync(new URL("serving.json", import.meta.url), "utf8"));

/**
 * What Node is told wherever it serves; the Dockerfile says the same. Where the space for what is new begins at its largest, it is
 * swept seldom; else every few requests, and what is under way then is copied each time.
 */
export const servingFlags = flags.node;

/** What it is told where it works and serves nobody: nobody waits for it, so that it keeps little; docker-compose.yml says the same. */
export const workingFlags = flags.work;
