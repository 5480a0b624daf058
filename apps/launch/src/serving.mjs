import { readFileSync } from "node:fs";

/**
 * What Node is told wherever it serves; the Dockerfile says the same. Where the space for what is new begins at its largest, it is
 * swept seldom; else every few requests, and what is under way then is copied each time.
 */
export const servingFlags = JSON.parse(readFileSync(new URL("serving.json", import.meta.url), "utf8")).node;
