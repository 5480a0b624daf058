import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { FieldShown } from "./fields";

/** Fields that hold no number, by name. */
export const WrongFields = ({ fields }: { readonly fields: readonly FieldShown[] }) => {
  const t = useText();
  const intl = useIntl();
  if (fields.length === 0) return null;
  const names = fields.map(({ label }) => t(label));
  return (
    <Notice
      kind="refusal"
      title={t("calendar.invalid", { fields: intl.formatList(names, { type: "conjunction" }) })}
    />
  );
};
