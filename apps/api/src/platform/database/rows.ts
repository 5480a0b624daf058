import { z } from "zod";
import { Database, type Statement, type Transaction } from "./database.ts";

/** Where a statement is asked: in a transaction, or outside any. */
export type Source = Database | Transaction;

/** What one row of a statement is, column by column. */
export type RowSchema = z.ZodObject;

/**
 * A statement with its values set apart from its text.
 *
 * @example sql`SELECT name FROM account WHERE id = ${id}::uuid` // { text: "SELECT name FROM account WHERE id = $1::uuid", values: [id] }
 */
export const sql = (parts: TemplateStringsArray, ...values: unknown[]): Statement => ({
  text: parts.reduce((text, part, at) => `${text}$${at}${part}`),
  values,
});

/** A row that is not what the statement says it gives. Values are not named: they are somebody's. */
export class WrongRow extends Error {
  override readonly name = "WrongRow";
  constructor({ name, text }: Statement, { issues }: z.ZodError) {
    const statement = name ?? text.replaceAll(/\s+/g, " ").trim().slice(0, 100);
    const columns = issues.map(({ path: [column, ...inside], message }) =>
      [`column "${String(column)}"`, ...inside.map(String)].join("/").concat(`: ${message}`),
    );
    super(`The statement "${statement}" gave a row that is not what it says. ${columns.join("; ")}`);
  }
}

const ask = (source: Source, statement: Statement): Promise<unknown[]> =>
  source instanceof Database
    ? source.query(statement)
    : source.$queryRawUnsafe<unknown[]>(statement.text, ...(statement.values ?? []));

/** A row of a statement, held against what it says it gives. @throws WrongRow naming statement and column */
export function holdRow<S extends RowSchema>(schema: S, statement: Statement, row: unknown): z.output<S> {
  const result = schema.safeParse(row);
  if (result.success) return result.data;
  throw new WrongRow(statement, result.error);
}

/**
 * The rows of one statement, each held against what it says it gives. Named statements are prepared once a connection, outside
 * transactions.
 *
 * @throws WrongRow naming statement and column
 */
export async function readRows<S extends RowSchema>(
  source: Source,
  schema: S,
  statement: Statement,
): Promise<z.output<S>[]> {
  return (await ask(source, statement)).map((row) => holdRow(schema, statement, row));
}

/** The first row, if there is one. @throws WrongRow naming statement and column */
export async function findRow<S extends RowSchema>(
  source: Source,
  schema: S,
  statement: Statement,
): Promise<z.output<S> | null> {
  const [row] = await ask(source, statement);
  return row === undefined ? null : holdRow(schema, statement, row);
}

/** Does the statement and reads nothing: for what writes or locks. */
export async function run(source: Source, statement: Statement): Promise<void> {
  if (source instanceof Database) await source.query(statement);
  else await source.$executeRawUnsafe(statement.text, ...(statement.values ?? []));
}

/** Is there a row? */
export async function exists(source: Source, statement: Statement): Promise<boolean> {
  return (await ask(source, statement)).length > 0;
}

/** Rows that many statements give. */
export const IdRow = z.object({ id: z.string() });
/** JSON that is passed on as the text it is; its contract is held by the tests of its route. */
export const BodyRow = z.object({ body: z.string() });
export const RevisedBodyRow = z.object({ body: z.string(), revision: z.number() });
/** A stored document, passed on as the bytes it is: it was held against its contract when it was stored. */
export const DocumentRow = z.object({ document: z.instanceof(Uint8Array) });
