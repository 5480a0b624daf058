/** Metadata key of a route's id in the access table. */
export const ROUTE_ID = "evenhand:route";
