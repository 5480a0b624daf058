import type { AdmissionState } from "@evenhand/shared/http/calendars";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const admissionsQuery = (state: AdmissionState | undefined) =>
  pagedQuery(["admissions", { state }], (after, signal) =>
    call("admissions.list", { query: { state, after }, signal }),
  );
