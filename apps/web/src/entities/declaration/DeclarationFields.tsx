import { CAR_DEALINGS, INTEREST_KINDS } from "@evenhand/shared/terms";
import { Button, NativeSelect, TextInput } from "@mantine/core";
import { useText } from "../../strings/text";
import { oneOf } from "../../service/one-of";
import styles from "./Declaration.module.css";
import type { DealingTyped, InterestTyped } from "./declarations";

interface InterestProps {
  readonly value: InterestTyped;
  readonly onChange: (value: InterestTyped) => void;
  readonly onRemove?: () => void;
}

/** One interest: what it is, whose, since when. */
export const InterestFields = ({ value, onChange, onRemove }: InterestProps) => {
  const t = useText();
  return (
    <div className={styles.fields}>
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
        data={(["inspector", "firm"] as const).map((holder) => ({
          value: holder,
          label: t(`beholden.holder.${holder}`),
        }))}
        onChange={({ currentTarget }) =>
          onChange({ ...value, holder: currentTarget.value === "firm" ? "firm" : "inspector" })
        }
      />
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
      <TextInput
        size="md"
        label={t("declare.note")}
        maxLength={2000}
        value={value.note}
        onChange={({ currentTarget }) => onChange({ ...value, note: currentTarget.value })}
      />
      {onRemove !== undefined && (
        <Button variant="default" size="md" onClick={onRemove}>
          {t("moves.remove")}
        </Button>
      )}
    </div>
  );
};

interface DealingProps {
  readonly value: DealingTyped;
  readonly cars: readonly { readonly id: string; readonly name: string }[];
  readonly onChange: (value: DealingTyped) => void;
  readonly onRemove?: () => void;
}

/** What somebody of the firm once had to do with a car. */
export const DealingFields = ({ value, cars, onChange, onRemove }: DealingProps) => {
  const t = useText();
  return (
    <div className={styles.fields}>
      {cars.length > 1 && (
        <NativeSelect
          size="md"
          label={t("declare.car")}
          value={value.vehicle}
          data={cars.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={({ currentTarget }) => onChange({ ...value, vehicle: currentTarget.value })}
        />
      )}
      <NativeSelect
        size="md"
        label={t("declare.dealing")}
        value={value.dealing}
        data={CAR_DEALINGS.map((kind) => ({ value: kind, label: t(`dealing.${kind}`) }))}
        onChange={({ currentTarget }) =>
          onChange({ ...value, dealing: oneOf(CAR_DEALINGS, currentTarget.value) ?? value.dealing })
        }
      />
      <TextInput
        size="md"
        label={t("declare.note")}
        maxLength={2000}
        value={value.note}
        onChange={({ currentTarget }) => onChange({ ...value, note: currentTarget.value })}
      />
      {onRemove !== undefined && (
        <Button variant="default" size="md" onClick={onRemove}>
          {t("moves.remove")}
        </Button>
      )}
    </div>
  );
};
