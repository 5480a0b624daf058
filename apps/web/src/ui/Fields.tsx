import {
  Checkbox,
  NativeSelect,
  TextInput,
  type CheckboxProps,
  type NativeSelectProps,
  type TextInputProps,
} from "@mantine/core";

type Typed<Props> = Omit<Props, "onChange" | "value"> & {
  readonly value: string;
  readonly onChange: (value: string) => void;
};

/** A line, a date or a time that is typed, at the size of this application. */
export const TextField = ({ onChange, ...rest }: Typed<TextInputProps>) => (
  <TextInput
    size="md"
    withAsterisk={false}
    {...rest}
    onChange={(event) => onChange(event.currentTarget.value)}
  />
);

/** One of a list, chosen. */
export const ChoiceField = ({ onChange, ...rest }: Typed<NativeSelectProps>) => (
  <NativeSelect size="md" {...rest} onChange={(event) => onChange(event.currentTarget.value)} />
);

interface TickProps extends Omit<CheckboxProps, "onChange" | "checked"> {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** Something that is so or not. */
export const TickField = ({ onChange, ...rest }: TickProps) => (
  <Checkbox size="md" {...rest} onChange={(event) => onChange(event.currentTarget.checked)} />
);
