import { readFileSync } from "node:fs";

export type ReadJson =
  { readonly ok: true; readonly json: unknown } | { readonly ok: false; readonly reason: string };

const why = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Reads a JSON file; where that fails, says whether the file or its text is at fault. */
export const readJson = (path: string): ReadJson => {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch (error) {
    return { ok: false, reason: `The file cannot be read: ${why(error)}` };
  }
  try {
    return { ok: true, json: JSON.parse(text) };
  } catch (error) {
    return { ok: false, reason: `The file is not JSON: ${why(error)}` };
  }
};
