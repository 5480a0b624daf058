import { Textarea } from "@mantine/core";

interface Props {
  readonly label: string;
  readonly description?: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly minRows?: number;
  readonly maxLength?: number;
  readonly required?: boolean;
}

/** Sentences of somebody's own; it grows with what is typed. */
export const LongTextField = ({ onChange, ...field }: Props) => (
  <Textarea
    size="md"
    autosize
    withAsterisk={false}
    {...field}
    onChange={(event) => onChange(event.currentTarget.value)}
  />
);
