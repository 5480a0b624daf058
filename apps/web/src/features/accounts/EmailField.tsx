import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";

interface Props {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** The person's own address, which the browser may fill in; not somebody else's. */
  readonly own?: boolean;
}

export const EmailField = ({ value, onChange, own = false }: Props) => {
  const t = useText();
  return (
    <TextField
      type="email"
      name={own ? "email" : undefined}
      autoComplete={own ? "username" : undefined}
      label={t("sign-in.email")}
      required
      value={value}
      onChange={onChange}
    />
  );
};

/** Tells a password keeper whose password is typed, where the address itself is settled. */
export const SettledEmail = ({ email }: { readonly email: string }) => (
  <input type="hidden" name="email" autoComplete="username" value={email} readOnly />
);
