import { accessTable } from "@evenhand/shared/access";
import type { FastifyRequest } from "fastify";
import { ProblemError } from "./problem-error.ts";

const routes = Object.values(accessTable).map(({ method, path }) => ({
  method,
  address: new RegExp(`^/api/v1${path.replaceAll(/:\w+/g, "[^/]+")}/?$`),
}));

/** Methods the address takes by the access table; reading includes `HEAD`. */
function methodsOf(path: string): string[] {
  const methods = routes.filter(({ address }) => address.test(path)).map(({ method }) => method);
  return [...new Set(methods.flatMap((method) => (method === "GET" ? ["GET", "HEAD"] : [method])))];
}

/** For a request that no route takes: the address is there for other methods, which are named, or there is nothing at all. */
export function noSuchRoute({ url, method }: FastifyRequest): ProblemError {
  const [path = ""] = url.split("?");
  const methods = methodsOf(path);
  if (methods.length === 0 || methods.includes(method))
    return new ProblemError("not-found", "There is nothing at this address.");
  const allow = methods.join(", ");
  return new ProblemError("method-not-allowed", `This address takes ${allow} only.`, { headers: { allow } });
}
