import type { EvidenceOwned } from "@evenhand/shared/http/evidence";
import { queryOptions } from "@tanstack/react-query";
import { evidenceKey } from "../../offline/evidence-key";
import { call } from "../../service/client";

/** All its bytes are with the service, and it is not shown yet. */
const isLookedAt = ({ state, removedAt }: EvidenceOwned): boolean =>
  removedAt === null && (state === "pending" || state === "checked");

/** Everything of one's own report; asked again while the service looks at something. */
export const reportEvidenceQuery = (report: string) =>
  queryOptions({
    queryKey: evidenceKey(report),
    queryFn: ({ signal }) => call("evidence.ofReport", { params: { id: report }, signal }),
    refetchInterval: ({ state }) => (state.data?.items.some(isLookedAt) ? 1_500 : false),
  });

/** What a sealed version has of pictures and papers, as far as the person may see it. */
export const versionEvidenceQuery = (version: string) =>
  queryOptions({
    queryKey: ["version-evidence", version],
    queryFn: ({ signal }) => call("evidence.ofVersion", { params: { id: version }, signal }),
    select: ({ items }) => items,
    retry: false,
  });

/** What both sides show of a car, as far as the person may see it. */
export const carEvidenceQuery = (vehicle: string) =>
  queryOptions({
    queryKey: ["car-evidence", vehicle],
    queryFn: ({ signal }) => call("evidence.ofVehicle", { params: { id: vehicle }, signal }),
    select: ({ items }) => items,
  });

/** The same of one case: the statement's, and those of its buyer's inspections. */
export const caseEvidenceQuery = (id: string) =>
  queryOptions({
    queryKey: ["case-evidence", id],
    queryFn: ({ signal }) => call("cases.evidence", { params: { id }, signal }),
    select: ({ items }) => items,
  });
