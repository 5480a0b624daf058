import { access, type Access, type RouteId } from "@evenhand/shared/access";
import type { contracts } from "@evenhand/shared/http/contracts";
import type { z } from "zod";
import { takeEarly } from "./early";
import { newId } from "./new-id";
import { problemFrom, Refusal, unreachable } from "./refusal";

type Contracts = typeof contracts;

export type Route = keyof Contracts;
type Answered<R extends Route> = Contracts[R]["answer"] extends z.ZodType
  ? z.output<Contracts[R]["answer"]>
  : null;
type Sent<R extends Route> = Contracts[R] extends { readonly body: infer B extends z.ZodType }
  ? z.input<B>
  : undefined;
type Asked<R extends Route> = Contracts[R] extends { readonly query: infer Q extends z.ZodType }
  ? z.input<Q> & object
  : undefined;

export interface Ask<R extends Route> {
  readonly params?: Readonly<Record<string, string>>;
  readonly query?: Asked<R>;
  readonly body?: Sent<R>;
  /** The revision last seen; the change is refused if it has moved since. */
  readonly ifMatch?: number;
  /** The same key for every try of one deed, so that it is done once. */
  readonly key?: string;
  readonly signal?: AbortSignal;
}

const path = (template: string, params: Readonly<Record<string, string>>): string =>
  template.replaceAll(/:([a-z]+)/g, (_, name: string) => encodeURIComponent(params[name] ?? ""));

const queryText = (query: object | undefined): string => {
  const pairs = Object.entries(query ?? {}).filter(([, value]) => value !== undefined);
  return pairs.length === 0
    ? ""
    : `?${new URLSearchParams(pairs.map(([name, value]) => [name, String(value)]))}`;
};

/** Where a route that is read stands, for a link that the browser follows itself. */
export const addressOf = (route: Route, params: Readonly<Record<string, string>> = {}): string =>
  `/api/v1${path(access[route].path, params)}`;

const headersOf = (
  route: RouteId,
  ask: { readonly body?: unknown; readonly ifMatch?: number; readonly key?: string },
): Headers => {
  const headers = new Headers({ accept: "application/json" });
  const entry: Access = access[route];
  if (ask.body !== undefined) headers.set("content-type", "application/json");
  if (ask.ifMatch !== undefined) headers.set("if-match", `"${ask.ifMatch}"`);
  if (entry.once === "key") headers.set("idempotency-key", ask.key ?? newId());
  return headers;
};

/** What was asked before the application had come is not asked again. */
const send = async (address: string, request: RequestInit): Promise<Response> =>
  (request.method === "GET" ? await takeEarly(address) : undefined) ?? fetch(address, request);

const answered = async <R extends Route>(route: R, ask: Ask<R>, file?: Blob): Promise<Response> => {
  const { method } = access[route];
  const address = `${addressOf(route, ask.params)}${queryText(ask.query)}`;
  const headers = headersOf(route, ask);
  if (file !== undefined) headers.set("content-type", "application/octet-stream");
  const request: RequestInit = {
    method,
    headers,
    body: ask.body === undefined ? file : JSON.stringify(ask.body),
    signal: ask.signal,
    credentials: "same-origin",
  };
  const response = await send(address, request).catch((cause: unknown) => {
    throw new Refusal(unreachable, { cause });
  });
  if (!response.ok) throw new Refusal(await problemFrom(response));
  return response;
};

/** Asks the service by route, as the table in `shared` has it. Throws {@link Refusal} with the problem document. */
export const call = async <R extends Route>(route: R, ask: Ask<R> = {}): Promise<Answered<R>> => {
  const response = await answered(route, ask);
  // Taken at its word: the service's tests hold every answer against the contract, nothing does so at run time.
  const answer: Answered<R> = response.status === 204 ? null : await response.json();
  return answer;
};

/** The same, with the bytes of a file as what is sent. */
export const callWithFile = async <R extends Route>(
  route: R,
  ask: Ask<R>,
  file: Blob,
): Promise<Answered<R>> => {
  const answer: Answered<R> = await (await answered(route, ask, file)).json();
  return answer;
};

/** The same, for what is taken away as it came: the text of the answer, character for character. */
export const callForText = async <R extends Route>(route: R, ask: Ask<R> = {}): Promise<string> =>
  (await answered(route, ask)).text();
