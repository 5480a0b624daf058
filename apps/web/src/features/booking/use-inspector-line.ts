import { useText } from "../../strings/text";

/** Who comes, by what they and their firm are called. */
interface Named {
  readonly name: string;
  readonly firm?: { readonly name: string } | null;
}

/** An inspector with their firm, in words; of whoever works alone, and calls the firm after themselves, the firm says it. */
export const useInspectorLine = (): ((inspector: Named | undefined) => string) => {
  const t = useText();
  return (inspector) => {
    const { name = "", firm } = inspector ?? {};
    return firm?.name.startsWith(`${name},`)
      ? firm.name
      : t("offer.who.line", { name, firm: firm?.name ?? "" });
  };
};
