import { NativeSelect } from "@mantine/core";
import { oneOf } from "../service/one-of";

interface Props<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly terms: readonly T[];
  readonly wordFor: (term: T) => string;
  readonly onChange: (term: T) => void;
}

/** One of a few terms, each by its word. */
export const ChoiceField = <T extends string>({ label, value, terms, wordFor, onChange }: Props<T>) => (
  <NativeSelect
    size="md"
    label={label}
    value={value}
    data={terms.map((term) => ({ value: term, label: wordFor(term) }))}
    onChange={({ currentTarget }) => onChange(oneOf(terms, currentTarget.value) ?? value)}
  />
);
