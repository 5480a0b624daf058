/** How deep libraries wrap the database's own error in theirs. */
const deepest = 6;

const isObject = (value: unknown): value is object => typeof value === "object" && value !== null;
const inside = ["cause", "meta", "driverAdapterError", "errors"];

/** An error with everything it wraps. */
function withCauses(error: unknown, depth = 0): object[] {
  if (!isObject(error) || depth > deepest) return [];
  const parts: unknown[] = inside.map((name): unknown => Reflect.get(error, name));
  return [error, ...parts.flat().flatMap((part) => withCauses(part, depth + 1))];
}

const codesOf = (error: unknown): string[] =>
  withCauses(error).flatMap((each) =>
    ["code", "originalCode"].flatMap((name) => {
      const code: unknown = Reflect.get(each, name);
      return typeof code === "string" ? [code] : [];
    }),
  );
const messagesOf = (error: unknown): string =>
  withCauses(error)
    .flatMap((each) => (each instanceof Error ? [each.message] : []))
    .join("\n");

/**
 * What the database could not do although nothing is wrong with the service: it is away, it took too long, or of two who wanted
 * the same this one came second. `null` for everything else.
 *
 * Codes: PostgreSQL appendix A (classes 08, 23, 40, 53, 55, 57), the system's of a broken connection, and Prisma's.
 */
export function whatTheDatabaseSaid(error: unknown): "away" | "too-slow" | "overtaken" | null {
  const [codes, words] = [codesOf(error), messagesOf(error)];
  const any = (pattern: RegExp) => codes.some((code) => pattern.test(code));
  if (any(/^(57014|P2028)$/) || /statement timeout|Query read timeout/.test(words)) return "too-slow";
  if (
    any(/^(08...|53300|57P0[1-3]|ECONN(REFUSED|RESET|ABORTED)|EPIPE|ENOTFOUND|ETIMEDOUT|P1001|P1002|P1017)$/)
  )
    return "away";
  if (/timeout exceeded when trying to connect/.test(words)) return "too-slow";
  if (/Connection terminated|[Ss]erver has closed the connection|Can't reach database/.test(words))
    return "away";
  if (any(/^(2350[35]|23P01|40001|40P01|55P03|P2002|P2003|P2034)$/)) return "overtaken";
  return /deadlock detected|could not serialize/.test(words) ? "overtaken" : null;
}
