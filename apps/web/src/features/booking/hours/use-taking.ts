import type { OfferBody } from "@evenhand/shared/booking";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { call } from "../../../service/client";
import { appointmentQuery } from "../../../entities/appointment/queries";

const chosen = ({ inspector, start, bays, cost }: OfferBody) => ({
  inspector,
  start,
  bays: bays.map(({ bay }) => ({ bay })),
  total: cost.total,
});

/** Holds an hour for cars, or moves an appointment to it; either leads to the booking page. */
export const useTaking = (vehicles: readonly string[], moving: string | undefined) => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const booked = useQuery({ ...appointmentQuery(moving ?? ""), enabled: moving !== undefined });
  return useMutation({
    mutationFn: (offer: OfferBody) =>
      moving === undefined
        ? call("appointments.hold", { body: { vehicles: [...vehicles], offer: chosen(offer) } })
        : call("appointments.reschedule", {
            params: { id: moving },
            ifMatch: booked.data?.revision ?? 0,
            body: { offer: chosen(offer) },
          }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["appointments"] });
      await queries.invalidateQueries({ queryKey: ["appointment"] });
      await navigate({ to: "/appointments/$appointment", params: { appointment: id } });
    },
    // Whatever the reason, the hours on the page are no longer the hours that are free.
    onError: () => queries.invalidateQueries({ queryKey: ["offers"] }),
  });
};
