import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";

/** Fields that hold no number, by name. */
export const WrongFields = ({ names }: { readonly names: readonly string[] }) => {
  const t = useText();
  const intl = useIntl();
  if (names.length === 0) return null;
  return (
    <Notice
      kind="refusal"
      title={t("calendar.invalid", { fields: intl.formatList(names, { type: "conjunction" }) })}
    />
  );
};
