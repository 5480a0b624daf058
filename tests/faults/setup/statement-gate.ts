import { createServer, type Server, type Socket, connect } from "node:net";

/** Where a process that talks to the database is to be killed. */
export type KillPoint =
  /** Instead of this statement of the transaction, 1 being the first after its beginning. */
  | { readonly before: number }
  /** Once everything was written, instead of the end of the transaction. */
  | { readonly at: "commit" }
  /** Once the database has ended the transaction, before the process hears of it. */
  | { readonly at: "committed" };

type Armed = {
  readonly point: KillPoint;
  readonly kill: () => void;
  /** Only a transaction that asks for this is counted. */
  readonly about: RegExp | null;
  asked: number;
};

/** Everything between a process and its database. */
export type StatementGate = {
  /** The database as reached through here. */
  readonly url: string;
  /** From now on: kills at the point. */
  readonly arm: (point: KillPoint, kill: () => void, about?: RegExp) => void;
  /** Lets everything through again. @returns statements of transactions that were asked since it was armed */
  readonly disarm: () => number;
  readonly close: () => Promise<void>;
};

/** Of the protocol (PostgreSQL 18, "Message Formats"): a letter, then four bytes of length that count themselves. */
const header = 5;

/** Messages of a connection, one by one; the first has no letter. */
function takeMessages(): (part: Buffer) => Buffer[] {
  let [rest, started] = [Buffer.alloc(0), false];
  return (part) => {
    rest = Buffer.concat([rest, part]);
    const whole: Buffer[] = [];
    for (;;) {
      const letters = started ? 1 : 0;
      if (rest.length < letters + 4) return whole;
      const end = letters + rest.readUInt32BE(letters);
      if (rest.length < end) return whole;
      whole.push(rest.subarray(0, end));
      rest = rest.subarray(end);
      started = true;
    }
  };
}

/** `Q` asks at once; what is parsed, bound and executed is asked with `S`. */
const asks = (message: Buffer): boolean => [0x51, 0x53].includes(message[0] ?? 0);
const textOf = (messages: readonly Buffer[]): string =>
  messages
    .filter((each) => each[0] === 0x51 || each[0] === 0x50)
    .map((each) => each.toString("utf8", header))
    .join(" ");
/** `Z`: the database waits for the next; in no transaction any more. */
const isIdle = (part: Buffer): boolean => part.subarray(-6).equals(Buffer.from([0x5a, 0, 0, 0, 5, 0x49]));

class Connection {
  private readonly take = takeMessages();
  private statement: Buffer[] = [];
  private inTransaction = false;
  private counted = false;
  private ending = false;

  constructor(
    private readonly process: Socket,
    private readonly database: Socket,
    private readonly armed: () => Armed | null,
  ) {}

  /** What the process says. */
  hear(part: Buffer): void {
    for (const message of this.take(part)) {
      this.statement.push(message);
      // Before the connection is begun there are no letters; nor is anything there a statement.
      if (asks(message)) this.askFor(this.statement);
      else if (this.statement.length === 1 && !/[PBDEC]/.test(String.fromCharCode(message[0] ?? 0)))
        this.pass();
    }
  }

  /** What the database answers. */
  answer(part: Buffer): void {
    const armed = this.armed();
    if (this.ending && isIdle(part)) {
      this.ending = false;
      if (armed !== null && "at" in armed.point && armed.point.at === "committed") return this.killNow(armed);
    }
    this.process.write(part);
  }

  private askFor(statement: readonly Buffer[]): void {
    const [armed, text] = [this.armed(), textOf(statement)];
    if (text.startsWith("BEGIN")) {
      this.inTransaction = true;
      this.counted = armed?.about === null;
    } else if (armed !== null && this.inTransaction) {
      this.counted ||= armed.about?.test(text) ?? false;
      if (this.counted && this.isKilledAt(armed, text)) return this.killNow(armed);
    }
    if (/^(COMMIT|ROLLBACK)/.test(text)) this.inTransaction = false;
    this.pass();
  }

  private isKilledAt(armed: Armed, text: string): boolean {
    armed.asked += 1;
    const commits = text.startsWith("COMMIT");
    this.ending = commits;
    if ("before" in armed.point) return armed.asked === armed.point.before;
    return armed.point.at === "commit" && commits;
  }

  private killNow(armed: Armed): void {
    armed.kill();
    this.process.destroy();
    this.database.destroy();
  }

  private pass(): void {
    for (const message of this.statement) this.database.write(message);
    this.statement = [];
  }
}

/** Stands between processes and the database, passes everything on, and counts what is asked within transactions. */
export async function openGate(databaseUrl: string): Promise<StatementGate> {
  let armed: Armed | null = null;
  const behind = new URL(databaseUrl);
  const open = new Set<Socket>();
  const server: Server = createServer((process) => {
    const database = connect(Number(behind.port), behind.hostname);
    const connection = new Connection(process, database, () => armed);
    process.on("data", (part: Buffer) => connection.hear(part));
    database.on("data", (part: Buffer) => connection.answer(part));
    for (const [one, other] of [
      [process, database],
      [database, process],
    ] as const) {
      open.add(one);
      // Whoever is killed hangs up in the middle: the other is told by its end.
      one.on("error", () => {});
      one.on("close", () => {
        open.delete(one);
        other.destroy();
      });
    }
  });
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The gate listens at no port.");
  const url = new URL(databaseUrl);
  url.host = `127.0.0.1:${String(address.port)}`;
  return {
    url: url.href,
    arm: (point, kill, about) => {
      armed = { point, kill, about: about ?? null, asked: 0 };
    },
    disarm: () => {
      const asked = armed?.asked ?? 0;
      armed = null;
      return asked;
    },
    close: () => {
      for (const each of open) each.destroy();
      return new Promise((resolve) => void server.close(() => resolve()));
    },
  };
}
