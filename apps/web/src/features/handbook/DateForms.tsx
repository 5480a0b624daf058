import { Button, NativeSelect } from "@mantine/core";
import { useRef } from "react";
import { useText } from "../../strings/text";
import { CheckedInput } from "./CheckedInput";
import { newDateForm, type DateFormTyped } from "./maker-form";
import { dateFormField, type MakerProblems } from "./maker-problems";
import styles from "./OwnFigures.module.css";
import { useDatedParts, type Part } from "./use-parts";
import { useWrong } from "./use-wrong";

interface Problems {
  readonly problems: MakerProblems | undefined;
  /** Saving was tried: what is wrong shows also where nothing was typed. */
  readonly tried: boolean;
}

interface RowProps extends Problems {
  readonly row: DateFormTyped;
  readonly parts: readonly Part[];
  readonly onChange: (row: DateFormTyped) => void;
}

const PartChoice = ({ row, parts, problems, tried, onChange }: RowProps) => {
  const t = useText();
  const wrong = useWrong(problems);
  return (
    <NativeSelect
      size="md"
      label={t("own.dates.part")}
      aria-required
      value={row.part}
      error={(tried || row.part !== "") && wrong(dateFormField(row.key, "part"))}
      data={[
        { value: "", label: t("own.dates.part.choose") },
        ...parts.map(({ id, words }) => ({ value: id, label: words })),
      ]}
      onChange={(event) => onChange({ ...row, part: event.currentTarget.value })}
    />
  );
};

const RowFields = (props: RowProps) => {
  const t = useText();
  const { row, problems, tried, onChange } = props;
  const wrong = useWrong(problems);
  return (
    <div className={styles.fields}>
      <PartChoice {...props} />
      {(["form", "from", "to"] as const).map((name) => (
        <CheckedInput
          key={name}
          label={t(`own.dates.${name}`)}
          required
          numeric={name !== "form"}
          value={row[name]}
          tried={tried}
          wrong={wrong(dateFormField(row.key, name))}
          onChange={(value) => onChange({ ...row, [name]: value })}
        />
      ))}
    </div>
  );
};

const DateFormRow = ({
  number,
  onRemove,
  ...props
}: RowProps & { readonly number: number; readonly onRemove: () => void }) => {
  const t = useText();
  return (
    <fieldset className={styles.dateRow}>
      <legend>{t("own.dates.row", { number })}</legend>
      <RowFields {...props} />
      <div>
        <Button variant="default" aria-label={t("own.dates.remove", { number })} onClick={onRemove}>
          {t("own.maker.remove")}
        </Button>
      </div>
    </fieldset>
  );
};

/** What stands for what in a form. */
const Letters = () => {
  const t = useText();
  return (
    <div className={styles.hint}>
      <p>{t("own.dates.hint")}</p>
      <dl className={styles.letters}>
        {(["M", "N", "m", "d", "w", "y"] as const).map((letter) => (
          <div key={letter}>
            <dt>{letter}</dt>
            <dd>{t(`own.dates.letter.${letter}`)}</dd>
          </div>
        ))}
      </dl>
      <p>{t("own.dates.example")}</p>
    </div>
  );
};

interface Props extends Problems {
  readonly rows: readonly DateFormTyped[];
  readonly onChange: (rows: readonly DateFormTyped[]) => void;
}

/** How the maker dated parts, a row for each. */
export const DateForms = ({ rows, onChange, ...problems }: Props) => {
  const t = useText();
  const add = useRef<HTMLButtonElement>(null);
  const parts = useDatedParts(rows.map(({ part }) => part));
  const remove = (key: string): void => {
    onChange(rows.filter((row) => row.key !== key));
    add.current?.focus();
  };
  return (
    <>
      <Letters />
      {rows.map((row, index) => (
        <DateFormRow
          key={row.key}
          {...{ row, parts, ...problems }}
          number={index + 1}
          onChange={(next) => onChange(rows.map((other) => (other.key === row.key ? next : other)))}
          onRemove={() => remove(row.key)}
        />
      ))}
      <div>
        <Button ref={add} variant="default" onClick={() => onChange([...rows, newDateForm()])}>
          {t("own.dates.add")}
        </Button>
      </div>
    </>
  );
};
