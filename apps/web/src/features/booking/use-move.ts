import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useMutation, useQueryClient } from "@tanstack/react-query";

/** Something done to a visit: afterwards, done or refused, it is read anew, and so is all that hangs on it. */
export const useMove = <V = undefined>(
  appointment: Pick<AppointmentSeen, "id">,
  make: (value: V) => Promise<unknown>,
) => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: make,
    onSuccess: () => queries.invalidateQueries(),
    onError: () => queries.invalidateQueries({ queryKey: ["appointment", appointment.id] }),
  });
};
