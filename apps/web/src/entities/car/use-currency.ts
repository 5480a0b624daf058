import { useQuery } from "@tanstack/react-query";
import { usualCurrency } from "../../ui/money";
import { carQuery } from "./queries";

/** In which a car is offered; the usual one where no price is asked, `undefined` while it is not known. */
export const useCurrency = (vehicle: string): string | undefined => {
  const { data } = useQuery(carQuery(vehicle));
  return data === undefined ? undefined : (data.asking?.currency ?? usualCurrency);
};
