import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import type { FieldShown } from "./fields";

interface Props<N extends string, T> {
  readonly shown: Readonly<Record<N, FieldShown>>;
  readonly names: readonly N[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** The fields of those names, each with its label and hint. */
export const TypedFields = <N extends string, T extends Readonly<Record<N, string>>>({
  shown,
  names,
  value,
  onChange,
}: Props<N, T>) => {
  const t = useText();
  return names.map((name) => {
    const { label, hint, ...input } = shown[name];
    return (
      <TextField
        key={name}
        {...input}
        label={t(label)}
        description={hint && t(hint)}
        value={value[name]}
        onChange={(typed) => onChange({ ...value, [name]: typed })}
      />
    );
  });
};
