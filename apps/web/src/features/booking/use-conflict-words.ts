import type { RefusedHourBody } from "@evenhand/shared/http/booking";
import { useText } from "../../strings/text";

type Conflicts = Extract<RefusedHourBody, { code: "not-independent" }>["conflicts"];

/** What ties an inspector to a dealer or a car, in words. */
export const useConflictWords = (): ((conflicts: Conflicts) => string) => {
  const t = useText();
  return (conflicts) =>
    conflicts
      .map((one) =>
        one.code === "interest-in-dealer"
          ? t("conflict.interest-in-dealer", {
              kind: t(`interest.${one.kind}`),
              holder: t(`beholden.holder.${one.holder}`),
            })
          : t("conflict.dealt-with-car", { dealing: t(`dealing.${one.dealing}`) }),
      )
      .join("; ");
};
