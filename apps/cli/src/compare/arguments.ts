import { parseArgs } from "node:util";

export type Arguments = {
  /** Two or more. */
  readonly files: readonly string[];
  readonly json: boolean;
  readonly worklist: boolean;
  /** Every line, and not page one alone. */
  readonly all: boolean;
  readonly html?: string;
};

/**
 * What `compare` was asked for.
 *
 * @throws {TypeError} saying what is wrong with it
 */
export const readArguments = (args: readonly string[]): Arguments => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: {
      json: { type: "boolean", default: false },
      worklist: { type: "boolean", default: false },
      all: { type: "boolean", default: false },
      html: { type: "string" },
    },
    allowPositionals: true,
  });
  if (positionals.length < 2) throw new TypeError("Name two report files, or more.");
  const outputs = [values.json, values.worklist, values.all, values.html !== undefined].filter((one) => one);
  if (outputs.length > 1) throw new TypeError("Choose one of --json, --worklist, --all and --html.");
  if (positionals.length > 2 && (values.worklist || values.all || values.html !== undefined))
    throw new TypeError("--all, --html and --worklist are for two reports.");
  return { files: positionals, ...values };
};
