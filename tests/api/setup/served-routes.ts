import {
  INTERCEPTORS_METADATA,
  MODULE_METADATA,
  PATH_METADATA,
  ROUTE_ARGS_METADATA,
} from "@nestjs/common/constants.js";
import { accessTable, isRouteId, type RouteId } from "@evenhand/shared/access";
import { capabilities } from "../../../apps/api/src/capabilities/index.ts";
import { ROUTE_ID } from "../../../apps/api/src/platform/access/route-id.ts";

type Handler = {
  readonly controller: string;
  readonly method: string;
  readonly id: unknown;
  readonly schemas: unknown[];
  /** What stands around the handler, the outermost first. */
  readonly interceptors: unknown;
};
type Class = { readonly name: string; readonly prototype: object };

const isClass = (value: unknown): value is Class => typeof value === "function";

const controllersOf = (module: Class): Class[] => {
  const found: unknown = Reflect.getMetadata(MODULE_METADATA.CONTROLLERS, module);
  return Array.isArray(found) ? found.filter(isClass) : [];
};

/** Contracts that stand on a handler's body and query, in this order. */
function schemasOf(controller: Class, method: string): unknown[] {
  const found: unknown = Reflect.getMetadata(ROUTE_ARGS_METADATA, controller, method);
  const parameters: unknown[] = typeof found === "object" && found !== null ? Object.values(found) : [];
  return parameters.flatMap((parameter) =>
    typeof parameter === "object" &&
    parameter !== null &&
    "schema" in parameter &&
    parameter.schema !== undefined
      ? [parameter.schema]
      : [],
  );
}

const handlersOf = (controller: Class): Handler[] =>
  Object.getOwnPropertyNames(controller.prototype).flatMap((method) => {
    const handler: unknown = Reflect.get(controller.prototype, method);
    if (method === "constructor" || typeof handler !== "function") return [];
    if (Reflect.getMetadata(PATH_METADATA, handler) === undefined) return [];
    const id: unknown = Reflect.getMetadata(ROUTE_ID, handler);
    const interceptors: unknown = Reflect.getMetadata(INTERCEPTORS_METADATA, handler) ?? [];
    return [
      { controller: controller.name, method, id, schemas: schemasOf(controller, method), interceptors },
    ];
  });

/** Every handler of every capability. */
export const handlers: readonly Handler[] = capabilities.flatMap(controllersOf).flatMap(handlersOf);

/** Ids of the routes that are served. */
export const servedRoutes: readonly RouteId[] = handlers.flatMap(({ id }) =>
  typeof id === "string" && isRouteId(id) ? [id] : [],
);

export const guardedRoutes = servedRoutes.filter((route) => accessTable[route].public !== true);
