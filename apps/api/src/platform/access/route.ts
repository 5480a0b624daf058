import { applyDecorators, HttpCode, RequestMapping, RequestMethod, SetMetadata } from "@nestjs/common";
import { ApiHeader, ApiOperation, ApiParam, ApiResponse, ApiSecurity } from "@nestjs/swagger";
import { accessTable, type Access, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";

/** Metadata key of a route's id in the access table. */
export const ROUTE_ID = "evenhand:route";

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
 * A route by its id in the access table, which gives its method, path and permission; its contract gives status and answer.
 * Nothing else makes a route reachable.
 */
export function Route(id: RouteId): MethodDecorator {
  const entry = accessTable[id];
  const { status, answer } = contractTable[id];
  return applyDecorators(
    SetMetadata(ROUTE_ID, id),
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
