import assert from "node:assert/strict";
import { randomUUID } from "node:crypto";
import { type Access, accessTable, type RouteId } from "@evenhand/shared/access";
import { contracts, contractTable } from "@evenhand/shared/http/contracts";
import { type ProblemCode, problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { TableQuery } from "@evenhand/shared/http/readings";
import { Problem } from "@evenhand/shared/problem";
import request, { type Response, type Test } from "supertest";
import type { z } from "zod";

type Contracts = typeof contracts;
type Answer<R extends RouteId> = Contracts[R]["answer"] extends z.ZodType
  ? z.output<Contracts[R]["answer"]>
  : null;

export type Asked = {
  /** Values of the path's parameters. */
  path?: Readonly<Record<string, string>>;
  query?: Readonly<Record<string, string>>;
  body?: unknown;
  /** A body that is no JSON. */
  bytes?: Uint8Array;
  revision?: number;
  key?: string;
  headers?: Readonly<Record<string, string>>;
};

export const addressOf = (route: RouteId, path: Readonly<Record<string, string>> = {}): string =>
  `/api/v1${accessTable[route].path.replaceAll(/:(\w+)/g, (_, name: string) => path[name] ?? `no-${name}`)}`;

function begin(url: string, method: Access["method"], address: string): Test {
  const agent = request(url);
  const starts = {
    GET: () => agent.get(address),
    POST: () => agent.post(address),
    PUT: () => agent.put(address),
    PATCH: () => agent.patch(address),
    DELETE: () => agent.delete(address),
  };
  return starts[method]();
}

/** Files come as bytes, refusals as JSON. */
const bytesOrJson: Parameters<Test["parse"]>[0] = (response, done) => {
  const parts: Buffer[] = [];
  response.on("data", (part: Buffer | string) => parts.push(Buffer.from(part)));
  response.on("end", () => {
    const bytes = Buffer.concat(parts);
    response.text = bytes.toString("utf8");
    const isJson = /json/.test(String(response.headers["content-type"]));
    done(null, isJson ? JSON.parse(response.text) : bytes);
  });
};

/** Somebody at a browser or a program: with a session's cookie, a token, or nothing. */
export class Person {
  readonly url: string;
  readonly account: string;
  readonly organization: string;
  readonly credentials: Readonly<Record<string, string>>;

  constructor(
    url: string,
    who: { account?: string; organization?: string; cookie?: string; token?: string } = {},
  ) {
    this.url = url;
    this.account = who.account ?? "";
    this.organization = who.organization ?? "";
    this.credentials = {
      ...(who.cookie === undefined ? {} : { cookie: `evenhand=${who.cookie}` }),
      ...(who.token === undefined ? {} : { authorization: `Bearer ${who.token}` }),
    };
  }

  /** Sends the request and answers whatever comes; every answer is held against its contract. */
  async ask(route: RouteId, asked: Asked = {}): Promise<Response> {
    const entry = accessTable[route];
    const sending = begin(this.url, entry.method, addressOf(route, asked.path))
      .set({ origin: this.url, ...this.credentials })
      .query({ ...asked.query });
    if (entry.once === "key") void sending.set("idempotency-key", asked.key ?? randomUUID());
    if (asked.revision !== undefined) void sending.set("if-match", `"${asked.revision}"`);
    if (asked.body !== undefined) void sending.type("json").send(JSON.stringify(asked.body));
    if (asked.bytes !== undefined)
      void sending.type("application/octet-stream").send(Buffer.from(asked.bytes));
    if (contractTable[route].query === TableQuery) void sending.buffer(true).parse(bytesOrJson);
    const response = await sending.set({ ...asked.headers });
    checkContract(route, response);
    return response;
  }

  /** Expects it to be done, and gives what was answered. */
  async does<R extends RouteId>(route: R, asked: Asked = {}): Promise<Answer<R>> {
    const response = await this.ask(route, asked);
    assert.equal(response.status, contracts[route].status, `${route}: ${response.text}`);
    return response.body;
  }

  /** Expects a refusal, and gives the problem document with its code. */
  async isRefused(route: RouteId, asked: Asked = {}): Promise<Problem & { code: ProblemCode | null }> {
    const response = await this.ask(route, asked);
    assert.ok(response.status >= 400, `${route} was done: ${response.text}`);
    const problem = Problem.parse(response.body);
    return { ...problem, code: problemCodeOf(problem.type) };
  }
}

function checkContract(route: RouteId, response: Response): void {
  if (response.status >= 400) {
    assert.equal(response.headers["content-type"], "application/problem+json; charset=utf-8");
    const problem = Problem.parse(response.body);
    assert.equal(problem.status, response.status);
    assert.doesNotMatch(response.text, /\bat .*\.(ts|js):\d+/, "a stack");
    return;
  }
  const { answer, status } = contracts[route];
  assert.equal(response.status, status, response.text);
  if (answer === null) assert.equal(response.text, "");
  else answer.parse(response.body);
}
