import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const firmInstrumentsQuery = (organization: string) =>
  queryOptions({
    queryKey: ["firm-instruments", organization],
    queryFn: ({ signal }) => call("firmInstruments.get", { params: { id: organization }, signal }),
  });

/** The kinds of instrument that can be chosen. The sheet is large, so it comes only with the page that needs it. */
export const instrumentKindsQuery = queryOptions({
  queryKey: ["instrument-kinds", 1],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async () => {
    const [{ sheetVersion1 }, { instrumentKinds }] = await Promise.all([
      import("@evenhand/sheet/sheet-version-1"),
      import("@evenhand/sheet/instrument-kinds"),
    ]);
    return instrumentKinds(sheetVersion1);
  },
});
