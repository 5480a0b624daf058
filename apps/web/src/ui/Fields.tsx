import {
  Checkbox,
  NativeSelect,
  Textarea,
  TextInput,
  type CheckboxProps,
  type NativeSelectProps,
  type TextareaProps,
  type TextInputProps,
} from "@mantine/core";
import { oneOf } from "../service/one-of";

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

/** Sentences of somebody's own; the field grows with what is typed. */
export const LongTextField = ({ onChange, ...rest }: Typed<TextareaProps>) => (
  <Textarea
    size="md"
    autosize
    withAsterisk={false}
    {...rest}
    onChange={(event) => onChange(event.currentTarget.value)}
  />
);

/** One of a list, chosen. */
export const ChoiceField = ({ onChange, ...rest }: Typed<NativeSelectProps>) => (
  <NativeSelect size="md" {...rest} onChange={(event) => onChange(event.currentTarget.value)} />
);

interface TermProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly terms: readonly T[];
  readonly wordFor: (term: T) => string;
  readonly onChange: (term: T) => void;
}

/** One of a few terms, each by its word. */
export const TermField = <T extends string>({ label, value, terms, wordFor, onChange }: TermProps<T>) => (
  <ChoiceField
    label={label}
    value={value}
    data={terms.map((term) => ({ value: term, label: wordFor(term) }))}
    onChange={(said) => onChange(oneOf(terms, said) ?? value)}
  />
);

interface TickProps extends Omit<CheckboxProps, "onChange" | "checked"> {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** Something that is so or not. */
export const TickField = ({ onChange, ...rest }: TickProps) => (
  <Checkbox size="md" {...rest} onChange={(event) => onChange(event.currentTarget.checked)} />
);
