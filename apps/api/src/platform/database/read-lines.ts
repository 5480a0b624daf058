import { Socket } from "node:net";
import { Client, type ClientConfig, type QueryConfig } from "pg";

/**
 * Connections that reads share. Over two a read that takes the database long comes back alone, and this process wakes for it alone;
 * of more several come at once, and what waking and writing cost is shared.
 */
export const LINES = 4;
/** So many may be under way on one at once: whatever comes then is asked over a connection of its own. */
export const MOST_ON_A_LINE = 8;
/** After one broke or could not be opened, milliseconds until the next is tried. */
const pause = 5_000;

type Named = QueryConfig & { readonly name: string };

/** By the statement's own text: what writes or locks may wait for somebody, and then nobody waits behind it. */
const waits = /\b(INSERT|UPDATE|DELETE|FOR (KEY )?SHARE|pg_\w*advisory\w*)\b/i;
const onlyReading = new Map<string, boolean>();

function onlyReads({ name, text }: Named): boolean {
  const known = onlyReading.get(name);
  if (known !== undefined) return known;
  const reads = !waits.test(text);
  onlyReading.set(name, reads);
  return reads;
}

/**
 * One connection that takes statements one behind another, without waiting for what came before (the protocol's pipelining). What
 * is asked within one turn of the event loop is written in one go, which is most of what asking costs this process.
 */
class Line {
  underWay = 0;
  isOpen = false;
  private held = false;
  private readonly socket = new Socket();
  private readonly client: Client;

  constructor(config: ClientConfig, onBroken: (line: Line, error: Error) => void) {
    this.client = new Client({ ...config, pipeline: true, stream: () => this.socket });
    this.client.on("error", (error) => onBroken(this, error));
    this.client.on("end", () => onBroken(this, new Error("A connection for reads has ended.")));
  }

  async open(): Promise<void> {
    await this.client.connect();
    this.isOpen = true;
  }

  async query(query: QueryConfig): Promise<unknown[]> {
    this.holdWrites();
    this.underWay += 1;
    try {
      return (await this.client.query<object>(query)).rows;
    } finally {
      this.underWay -= 1;
    }
  }

  /** What is under way is answered first. */
  async close(): Promise<void> {
    if (this.isOpen) await this.client.end();
    this.drop();
  }

  /** What is under way fails. */
  drop(): void {
    this.isOpen = false;
    this.socket.destroy();
  }

  private holdWrites(): void {
    if (this.held) return;
    this.held = true;
    this.socket.cork();
    setImmediate(() => {
      this.held = false;
      this.socket.uncork();
    });
  }
}

/**
 * Prepared reads over a few shared connections. These can write nothing, and what is asked over them waits for nobody's lock: what
 * stands behind another waits for no more than its reading.
 */
export class ReadLines {
  private readonly lines = new Set<Line>();
  private readonly config: ClientConfig;
  private readonly onError: (error: Error) => void;
  private isClosed = false;
  private tryFrom = 0;

  /** @param plans whether the server may plan a prepared statement anew for the values it is given, or does it once a connection */
  constructor(config: ClientConfig, plans: "auto" | "force_generic_plan", onError: (error: Error) => void) {
    this.config = { ...config, options: `-c default_transaction_read_only=on -c plan_cache_mode=${plans}` };
    this.onError = onError;
  }

  /** @returns `null` where it does not only read, where there is no room, or no connection yet: then it is asked elsewhere */
  query(query: Named): Promise<unknown[]> | null {
    if (!onlyReads(query)) return null;
    this.openMissing();
    let free: Line | null = null;
    for (const line of this.lines)
      if (line.isOpen && line.underWay < (free?.underWay ?? MOST_ON_A_LINE)) free = line;
    return free === null ? null : free.query(query);
  }

  async close(): Promise<void> {
    this.isClosed = true;
    await Promise.all([...this.lines].map((line) => line.close()));
  }

  /** In the background: nobody waits for it. */
  private openMissing(): void {
    while (this.lines.size < LINES && !this.isClosed && performance.now() >= this.tryFrom) {
      const line: Line = new Line(this.config, (broken, error) => this.drop(broken, error));
      this.lines.add(line);
      line.open().catch((error: unknown) => {
        this.drop(line, error instanceof Error ? error : new Error(String(error)));
      });
    }
  }

  private drop(line: Line, error: Error): void {
    if (!this.lines.delete(line)) return;
    line.drop();
    if (this.isClosed) return;
    this.tryFrom = performance.now() + pause;
    this.onError(error);
  }
}
