import type { FirmInstrumentsSeen } from "@evenhand/shared/http/instruments";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { call } from "../../service/client";
import { afterDeed, type Deed } from "./after-deed";
import { firmInstrumentsQuery } from "./queries";

/** Does one deed to a firm's list and stores it. Where somebody else stored meanwhile, theirs is shown and the deed is not done. */
export const useDeed = (organization: string, { revision, instruments }: FirmInstrumentsSeen) => {
  const queries = useQueryClient();
  const { queryKey } = firmInstrumentsQuery(organization);
  return useMutation({
    mutationFn: (deed: Deed) =>
      call("firmInstruments.put", {
        params: { id: organization },
        ifMatch: revision,
        body: { instruments: afterDeed(instruments, deed) },
      }),
    onSuccess: (answer) => queries.setQueryData(queryKey, answer),
    onError: () => queries.invalidateQueries({ queryKey }),
  });
};
