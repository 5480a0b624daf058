import { PasswordInput } from "@mantine/core";
import { useText } from "../../strings/text";

interface Props {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly label: string;
  /** The password that holds today, or one that is being chosen. */
  readonly kind: "current" | "new";
  readonly error?: string | undefined;
}

/** A password, with what is asked of a new one, and a way to see what was typed. */
export const PasswordField = ({ value, onChange, label, kind, error }: Props) => {
  const t = useText();
  return (
    <PasswordInput
      size="md"
      name={`${kind}-password`}
      autoComplete={`${kind}-password`}
      label={label}
      description={kind === "new" ? t("invitation.password.hint") : undefined}
      visibilityToggleButtonProps={{ "aria-label": t("sign-in.show") }}
      required
      withAsterisk={false}
      minLength={kind === "new" ? 12 : undefined}
      maxLength={200}
      value={value}
      error={error}
      aria-invalid={error === undefined ? undefined : true}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
};
