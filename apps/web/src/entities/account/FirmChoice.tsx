import { NativeSelect } from "@mantine/core";
import type { Membership } from "@evenhand/shared/http/accounts";
import { useText } from "../../strings/text";

export interface Choice {
  readonly firms: readonly Membership[];
  readonly value: string;
  readonly onChange: (organization: string) => void;
}

/** For somebody of several firms; closed while something typed waits to be saved. */
export const FirmChoice = ({
  choice,
  waits = false,
}: {
  readonly choice: Choice;
  readonly waits?: boolean;
}) => {
  const t = useText();
  const { firms, value, onChange } = choice;
  if (firms.length < 2) return null;
  return (
    <NativeSelect
      size="md"
      label={t("own.firm")}
      description={waits ? t("own.firm.wait") : undefined}
      disabled={waits}
      value={value}
      data={firms.map(({ organization: { id, name } }) => ({ value: id, label: name }))}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
};
