import { useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { forgetDevice } from "../../offline/forget";
import { becomes } from "./queries";

/** After the session has ended: nothing of it stays on this device, and the way leads to signing in. */
export const useLeave = (): (() => Promise<void>) => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  return async () => {
    await forgetDevice();
    becomes(queries, null);
    await navigate({ to: "/sign-in", search: {} });
  };
};
