import { Link } from "@tanstack/react-router";
import type { KeptDraft } from "../../offline/store";
import { useText } from "../../strings/text";

/** A statement belongs to its car; an inspection to its visit, or to its order where no hour was booked. */
export const WayBack = ({ draft }: { readonly draft: KeptDraft["draft"] }) => {
  const t = useText();
  const { vehicle, order, visit } = draft;
  // A draft kept on this device before drafts named their visit has none.
  if (visit !== null && visit !== undefined)
    return (
      <Link to="/appointments/$appointment" params={{ appointment: visit }}>
        {t("sheet.back.visit")}
      </Link>
    );
  if (order !== null)
    return (
      <Link to="/orders/$order" params={{ order }}>
        {t("sheet.back.order")}
      </Link>
    );
  return (
    <Link to="/cars/$vehicle" params={{ vehicle }}>
      {t("sheet.back")}
    </Link>
  );
};
