import { createParamDecorator, type ExecutionContext } from "@nestjs/common";
import type { FastifyRequest } from "fastify";
import type { Transaction } from "../database/database.ts";

type Begun = { readonly tx: Transaction };
const begun = new WeakMap<object, Begun>();

/** Hands a request the transaction it is answered in. */
export const beginFor = (request: FastifyRequest, tx: Transaction): void => void begun.set(request, { tx });

/** The transaction in which a route with a key does its work, and in which the answer is kept. */
export const InTransaction = createParamDecorator((_: unknown, context: ExecutionContext): Transaction => {
  const found = begun.get(context.switchToHttp().getRequest<FastifyRequest>());
  if (found === undefined) throw new Error("No transaction is begun for this route: it asks for no key.");
  return found.tx;
});
