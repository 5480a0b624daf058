import { parseArgs } from "node:util";

export type Arguments = {
  /** Two or more. */
  readonly files: readonly string[];
  readonly json: boolean;
  readonly worklist: boolean;
  /** Every line, and not page one alone. */
  readonly all: boolean;
  readonly html?: string;
  /** File of a table of costs, and what is asked for the car in its currency. */
  readonly costs?: string;
  readonly asking?: string;
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
      costs: { type: "string" },
      asking: { type: "string" },
    },
    allowPositionals: true,
  });
  if (positionals.length < 2) throw new TypeError("Name two report files, or more.");
  const outputs = [values.json, values.worklist, values.all, values.html !== undefined].filter((one) => one);
  if (outputs.length > 1) throw new TypeError("Choose one of --json, --worklist, --all and --html.");
  if (positionals.length > 2 && (values.worklist || values.all || values.html !== undefined))
    throw new TypeError("--all, --html and --worklist are for two reports.");
  if (values.costs !== undefined && (positionals.length > 2 || values.json || values.worklist || values.all))
    throw new TypeError("--costs is for the answer on two reports, on the terminal or with --html.");
  return { files: positionals, ...values };
};
