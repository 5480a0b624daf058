import { styleText } from "node:util";

/** Emphasis beside the words, never instead of them. */
export type Style = { readonly strong: (text: string) => string; readonly faint: (text: string) => string };

/** No emphasis: for files and pipes. */
export const plainStyle: Style = { strong: (text) => text, faint: (text) => text };

/** What the stream can show; `NO_COLOR` and pipes get none. */
export const styleOf = (stream: NodeJS.WriteStream): Style => ({
  strong: (text) => styleText("bold", text, { stream }),
  faint: (text) => styleText("dim", text, { stream }),
});

/** Columns of the stream: between 60 and 160, and 100 where it has none. */
export const widthOf = (
  stream: Pick<NodeJS.WriteStream, "columns">,
  environment: NodeJS.ProcessEnv,
): number => {
  const asked = stream.columns ?? Number(environment["COLUMNS"] ?? 100);
  return Math.min(160, Math.max(60, Number.isFinite(asked) ? asked : 100));
};
