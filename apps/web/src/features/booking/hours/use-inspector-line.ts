import { useText } from "../../../strings/text";
import type { Inspector } from "./use-hours";

/** An inspector with their firm, in words. */
export const useInspectorLine = (): ((inspector: Inspector | undefined) => string) => {
  const t = useText();
  return (inspector) =>
    t("offer.who.line", { name: inspector?.name ?? "", firm: inspector?.firm.name ?? "" });
};
