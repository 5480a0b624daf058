import { PrismaPg } from "@prisma/adapter-pg";
import { Pool } from "pg";
import type { Config } from "../config/index.ts";
import { type Prisma, PrismaClient } from "./generated/client.ts";
import { heard } from "./heard.ts";
import { ReadLines } from "./read-lines.ts";
import { Turns } from "./turns.ts";

/** A transaction's own client: typed reads and writes; SQL is asked through `rows.ts`. */
export type Transaction = Prisma.TransactionClient;

/** An SQL statement and its values. With a name, which is then its text's alone, it is prepared once a connection, outside transactions. */
export type Statement = {
  readonly name?: string;
  readonly text: string;
  readonly values?: readonly unknown[];
  /** It takes longer to plan than to do: planned once a connection, for all values, and asked beside those that are short. */
  readonly isLong?: boolean;
};

/** Kept out of reach of transactions, so that reads go on however many changes wait. */
const connectionsForReads = 2;

export type DatabaseOptions = Config["database"];

/**
 * The one way to the database. Reads are one SQL statement each, over a pool or, prepared, over a few connections that they share
 * and as many more for what is long; changes are one transaction a public method of a service, or a request with a key. A transaction
 * travels as an argument.
 */
export class Database {
  private readonly pool: Pool;
  private readonly lines: ReadLines;
  private readonly longLines: ReadLines;
  private readonly prisma: PrismaClient;
  private readonly timeout: number;
  private readonly turns: Turns;
  private readonly endings: ((tx: Transaction) => Promise<void>)[] = [];

  constructor(options: DatabaseOptions, onError: (error: Error) => void = () => {}) {
    this.timeout = options.statementTimeout;
    this.turns = new Turns(Math.max(1, options.pool - connectionsForReads));
    const connection = {
      connectionString: options.url,
      connectionTimeoutMillis: options.connectionTimeout,
      statement_timeout: options.statementTimeout,
      query_timeout: options.statementTimeout + 1_000,
      idle_in_transaction_session_timeout: options.statementTimeout,
      keepAlive: true,
    };
    this.pool = new Pool({ ...connection, ...heard, max: options.pool });
    this.lines = new ReadLines(connection, "auto", onError);
    this.longLines = new ReadLines(connection, "force_generic_plan", onError);
    // A connection that breaks while idle is replaced; without a listener it would end the process.
    this.pool.on("error", onError);
    this.prisma = new PrismaClient({ adapter: new PrismaPg(this.pool) });
  }

  /** One statement outside any transaction, as the driver gives its rows: `rows.ts` reads them, and nobody else. */
  async query({ name, text, values = [], isLong = false }: Statement): Promise<unknown[]> {
    const query = { ...(name === undefined ? {} : { name }), text, values: [...values] };
    const lines = isLong ? this.longLines : this.lines;
    const shared = name === undefined ? null : lines.query({ ...query, name });
    return shared ?? (await this.pool.query<object>(query)).rows;
  }

  /** Begins a transaction, and hands it to the work: what takes part in it takes it as an argument, and begins no other. */
  async transaction<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
    const whole = async (tx: Transaction): Promise<T> => {
      const result = await work(tx);
      for (const ending of this.endings) await ending(tx);
      return result;
    };
    return this.turns.take(() =>
      this.prisma.$transaction(whole, { maxWait: this.timeout, timeout: this.timeout }),
    );
  }

  /** Says what is done last in every transaction, after its work and before it is committed: what fails there undoes it all. */
  atEnd(ending: (tx: Transaction) => Promise<void>): void {
    this.endings.push(ending);
  }

  async isReachable(): Promise<boolean> {
    return (await this.query({ text: "SELECT 1" })).length === 1;
  }

  /** For libraries that bring their own statements. */
  get sharedPool(): Pool {
    return this.pool;
  }

  async close(): Promise<void> {
    await this.prisma.$disconnect();
    await Promise.all([this.lines.close(), this.longLines.close()]);
    await this.pool.end();
  }
}
