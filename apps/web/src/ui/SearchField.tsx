import { TextInput } from "@mantine/core";
import { IconSearch } from "@tabler/icons-react";

interface Props {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Words to look for in a list. */
export const SearchField = ({ label, hint, value, onChange }: Props) => (
  <TextInput
    type="search"
    size="md"
    label={label}
    description={hint}
    value={value}
    leftSection={<IconSearch size={18} aria-hidden="true" />}
    onChange={(event) => onChange(event.currentTarget.value)}
  />
);
