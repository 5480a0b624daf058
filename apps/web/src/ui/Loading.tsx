import { Loader } from "@mantine/core";
import { useText } from "../strings/text";

/** Says that something is on its way. Where its progress is known, a page shows that instead. */
export const Loading = () => {
  const t = useText();
  return (
    <output style={{ display: "grid", placeItems: "center", padding: "4rem 1rem" }}>
      <Loader color="var(--accent)" type="dots" aria-hidden="true" />
      <span className="only-read">{t("app.loading")}</span>
    </output>
  );
};
