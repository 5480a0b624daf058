import { Button } from "@mantine/core";
import { IconFileTypePdf } from "@tabler/icons-react";
import { addressOf } from "../service/client";
import { useText } from "../strings/text";

interface Props {
  readonly of: "comparisons.paper" | "summaries.paper";
  readonly id: string;
}

/** Opens the paper in a tab of its own, so that nothing on the page is lost. */
export const PaperLink = ({ of, id }: Props) => {
  const t = useText();
  return (
    <Button
      component="a"
      variant="default"
      className="no-print"
      href={addressOf(of, { id })}
      target="_blank"
      rel="noreferrer"
      leftSection={<IconFileTypePdf size={18} aria-hidden="true" />}
      aria-label={t(`paper.${of === "summaries.paper" ? "summary" : "answer"}`)}
    >
      {t("paper.pdf")}
    </Button>
  );
};
