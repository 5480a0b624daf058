import { CAR_DEALINGS, INTEREST_KINDS } from "@evenhand/shared/terms";
import { Button, NativeSelect, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import { oneOf } from "../../service/one-of";
import styles from "./Declaration.module.css";
import type { DealingTyped, InterestTyped } from "./declarations";

interface EntryProps<T> {
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly onRemove?: () => void;
}

const RemoveButton = ({ onRemove }: Pick<EntryProps<never>, "onRemove">) => {
  const t = useText();
  if (onRemove === undefined) return null;
  return (
    <Button variant="default" size="md" onClick={onRemove}>
      {t("moves.remove")}
    </Button>
  );
};

const NoteField = ({ note, onNote }: { readonly note: string; readonly onNote: (note: string) => void }) => {
  const t = useText();
  return (
    <TextInput
      size="md"
      label={t("declare.note")}
      maxLength={2000}
      value={note}
      onChange={({ currentTarget }) => onNote(currentTarget.value)}
    />
  );
};

/** What the interest is, and whose. */
const InterestOf = ({ value, onChange }: EntryProps<InterestTyped>) => {
  const t = useText();
  const holders = ["inspector", "firm"] as const;
  return (
    <>
      <NativeSelect
        size="md"
        label={t("declare.kind")}
        value={value.kind}
        data={INTEREST_KINDS.map((kind) => ({ value: kind, label: t(`interest.${kind}`) }))}
        onChange={({ currentTarget }) =>
          onChange({ ...value, kind: oneOf(INTEREST_KINDS, currentTarget.value) ?? value.kind })
        }
      />
      <NativeSelect
        size="md"
        label={t("declare.holder")}
        value={value.holder}
        data={holders.map((holder) => ({ value: holder, label: t(`beholden.holder.${holder}`) }))}
        onChange={({ currentTarget }) =>
          onChange({ ...value, holder: currentTarget.value === "firm" ? "firm" : "inspector" })
        }
      />
    </>
  );
};

/** Since when, and until when if it is over. */
const InterestTime = ({ value, onChange }: EntryProps<InterestTyped>) => {
  const t = useText();
  return (
    <>
      <TextInput
        size="md"
        type="date"
        required
        withAsterisk={false}
        label={t("declare.since")}
        value={value.since}
        onChange={({ currentTarget }) => onChange({ ...value, since: currentTarget.value })}
      />
      <TextInput
        size="md"
        type="date"
        label={t("declare.ended")}
        description={t("declare.ended.hint")}
        value={value.ended}
        onChange={({ currentTarget }) => onChange({ ...value, ended: currentTarget.value })}
      />
    </>
  );
};

/** One interest: what it is, whose, since when. */
export const InterestFields = (props: EntryProps<InterestTyped>) => {
  const { value, onChange, onRemove } = props;
  return (
    <div className={styles.fields}>
      <InterestOf {...props} />
      <InterestTime {...props} />
      <NoteField note={value.note} onNote={(note) => onChange({ ...value, note })} />
      <RemoveButton onRemove={onRemove} />
    </div>
  );
};

interface DealingProps extends EntryProps<DealingTyped> {
  readonly cars: readonly { readonly id: string; readonly name: string }[];
}

const CarChoice = ({ value, cars, onChange }: DealingProps) => {
  const t = useText();
  if (cars.length <= 1) return null;
  return (
    <NativeSelect
      size="md"
      label={t("declare.car")}
      value={value.vehicle}
      data={cars.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={({ currentTarget }) => onChange({ ...value, vehicle: currentTarget.value })}
    />
  );
};

/** What somebody of the firm once had to do with a car. */
export const DealingFields = (props: DealingProps) => {
  const { value, onChange, onRemove } = props;
  const t = useText();
  return (
    <div className={styles.fields}>
      <CarChoice {...props} />
      <NativeSelect
        size="md"
        label={t("declare.dealing")}
        value={value.dealing}
        data={CAR_DEALINGS.map((kind) => ({ value: kind, label: t(`dealing.${kind}`) }))}
        onChange={({ currentTarget }) =>
          onChange({ ...value, dealing: oneOf(CAR_DEALINGS, currentTarget.value) ?? value.dealing })
        }
      />
      <NoteField note={value.note} onNote={(note) => onChange({ ...value, note })} />
      <RemoveButton onRemove={onRemove} />
    </div>
  );
};
