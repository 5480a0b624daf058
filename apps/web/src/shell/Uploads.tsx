import { useMatchRoute } from "@tanstack/react-router";
import { lazy, Suspense } from "react";
import { useAccount } from "../entities/account/queries";
import { useAreUploadsWaiting } from "../offline/uploads-waiting";

const WaitingUploads = lazy(async () => {
  const { WaitingUploads: default_ } = await import("../features/evidence/WaitingUploads");
  return { default: default_ };
});

/** What waits on this device to be sent goes on wherever the person is; on a sheet its own lines say so. Loaded where something waits. */
export const Uploads = () => {
  const waiting = useAreUploadsWaiting(useAccount()?.id);
  const onSheet = useMatchRoute()({ to: "/reports/$report" }) !== false;
  if (!waiting || onSheet) return null;
  return (
    <Suspense fallback={null}>
      <WaitingUploads />
    </Suspense>
  );
};
