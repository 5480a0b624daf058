import {
  applyDecorators,
  HttpCode,
  RequestMapping,
  RequestMethod,
  SetMetadata,
  UseInterceptors,
} from "@nestjs/common";
import { ApiHeader, ApiOperation, ApiParam, ApiResponse, ApiSecurity } from "@nestjs/swagger";
import { accessTable, type Access, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { CostlyInterceptor } from "../http/costly.interceptor.ts";
import { IdempotencyInterceptor } from "../http/idempotency.interceptor.ts";
import { ROUTE_ID } from "./route-id.ts";

const methods: Record<Access["method"], RequestMethod> = {
  GET: RequestMethod.GET,
  POST: RequestMethod.POST,
  PUT: RequestMethod.PUT,
  PATCH: RequestMethod.PATCH,
  DELETE: RequestMethod.DELETE,
};

const parameters = (path: string) =>
  [...path.matchAll(/:(\w+)/g)].map(([, name]) => ApiParam({ name: name ?? "", schema: { type: "string" } }));

function headers(entry: Access) {
  const asked = [];
  if (entry.once === "key") asked.push(ApiHeader({ name: "Idempotency-Key", required: true }));
  if (entry.ifMatch) asked.push(ApiHeader({ name: "If-Match", required: true, description: '"<revision>"' }));
  return asked;
}

/**
 * What stands around the handler, the outermost first: costly requests wait before they take anything. Where nothing does, which is
 * so for almost every read, the handler is called as it is.
 */
const around = (id: RouteId): MethodDecorator[] => {
  const interceptors = [
    ...(contractTable[id].costly === true ? [CostlyInterceptor] : []),
    ...(accessTable[id].once === "key" ? [IdempotencyInterceptor] : []),
  ];
  return interceptors.length === 0 ? [] : [UseInterceptors(...interceptors)];
};

/**
 * A route by its id in the access table, which gives its method, path and permission; its contract gives status and answer.
 * Nothing else makes a route reachable.
 */
export function Route(id: RouteId): MethodDecorator {
  const entry = accessTable[id];
  const { status, answer } = contractTable[id];
  return applyDecorators(
    SetMetadata(ROUTE_ID, id),
    ...around(id),
    RequestMapping({ method: methods[entry.method], path: entry.path }),
    HttpCode(status),
    ApiOperation({ operationId: id }),
    ApiResponse({ status, description: "Done", ...(answer === null ? {} : { standardSchema: answer }) }),
    ApiResponse({ status: "4XX", description: "Refused: an RFC 9457 problem document" }),
    ...parameters(entry.path),
    ...headers(entry),
    ...(entry.public
      ? []
      : [ApiSecurity("session"), ...(entry.scope === undefined ? [] : [ApiSecurity("bearer")])]),
  );
}
