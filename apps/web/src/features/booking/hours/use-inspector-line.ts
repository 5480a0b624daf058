import { useText } from "../../../strings/text";
import type { Inspector } from "./use-hours";

/** An inspector with their firm, in words; of whoever works alone, and calls the firm after themselves, the firm says it. */
export const useInspectorLine = (): ((inspector: Pick<Inspector, "name" | "firm"> | undefined) => string) => {
  const t = useText();
  return (inspector) => {
    const { name = "", firm } = inspector ?? {};
    return firm?.name.startsWith(`${name},`)
      ? firm.name
      : t("offer.who.line", { name, firm: firm?.name ?? "" });
  };
};
