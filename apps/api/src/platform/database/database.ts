import { AsyncLocalStorage } from "node:async_hooks";
import { PrismaPg } from "@prisma/adapter-pg";
import { Pool, type QueryConfig, type QueryResultRow } from "pg";
import type { Config } from "../config/index.ts";
import { type Prisma, PrismaClient } from "./generated/client.ts";
import { Turns } from "./turns.ts";

/** A transaction's own client: typed reads and writes, and `$queryRaw` where the database does the work. */
export type Transaction = Prisma.TransactionClient;

/** Kept out of reach of transactions, so that reads go on however many changes wait. */
const connectionsForReads = 2;

export type DatabaseOptions = Config["database"];

/**
 * The one way to the database. Reads are one SQL statement each, over a pool; changes are one transaction a public method of a
 * service. A transaction begun while one is open on the same request joins it, so that the answer kept for an Idempotency-Key
 * and the change itself happen together or not at all.
 */
export class Database {
  private readonly pool: Pool;
  private readonly prisma: PrismaClient;
  private readonly current = new AsyncLocalStorage<Transaction>();
  private readonly timeout: number;
  private readonly turns: Turns;

  constructor(options: DatabaseOptions, onError: (error: Error) => void = () => {}) {
    this.timeout = options.statementTimeout;
    this.turns = new Turns(Math.max(1, options.pool - connectionsForReads));
    this.pool = new Pool({
      connectionString: options.url,
      max: options.pool,
      connectionTimeoutMillis: options.connectionTimeout,
      statement_timeout: options.statementTimeout,
      query_timeout: options.statementTimeout + 1_000,
      idle_in_transaction_session_timeout: options.statementTimeout,
      keepAlive: true,
    });
    // A connection that breaks while idle is replaced; without a listener it would end the process.
    this.pool.on("error", onError);
    this.prisma = new PrismaClient({ adapter: new PrismaPg(this.pool) });
  }

  /** Rows of one statement outside any transaction. Named statements are prepared once a connection. */
  async rows<R extends QueryResultRow>(query: QueryConfig): Promise<R[]> {
    const { rows } = await this.pool.query<R>(query);
    return rows;
  }

  /** The first row, if there is one. */
  async findRow<R extends QueryResultRow>(query: QueryConfig): Promise<R | null> {
    const { rows } = await this.pool.query<R>(query);
    return rows[0] ?? null;
  }

  async transaction<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
    const open = this.current.getStore();
    if (open !== undefined) return work(open);
    return this.turns.take(() =>
      this.prisma.$transaction((tx) => this.current.run(tx, () => work(tx)), {
        maxWait: this.timeout,
        timeout: this.timeout,
      }),
    );
  }

  async isReachable(): Promise<boolean> {
    const row = await this.findRow<{ one: number }>({ text: "SELECT 1 AS one" });
    return row?.one === 1;
  }

  /** For libraries that bring their own statements. */
  get sharedPool(): Pool {
    return this.pool;
  }

  async close(): Promise<void> {
    await this.prisma.$disconnect();
    await this.pool.end();
  }
}
