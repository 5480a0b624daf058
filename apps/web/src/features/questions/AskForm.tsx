import { Button } from "@mantine/core";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { placesFor } from "../../entities/sheet/places";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import { ItemChooser } from "./ItemChooser";
import type { PlaceChoice } from "./place-choice";
import styles from "./Questions.module.css";
import { useAsking } from "./use-asking";

/** Sent at once, or kept where nobody else sees it. */
const SendOrKeep = ({ ask, put }: Pick<ReturnType<typeof useAsking>, "ask" | "put">) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      <Button type="submit" size="md" loading={ask.isPending && ask.variables}>
        {t("questions.send")}
      </Button>
      <Button
        variant="default"
        size="md"
        loading={ask.isPending && !ask.variables}
        onClick={() => put(false)}
      >
        {t("questions.keep")}
      </Button>
    </div>
  );
};

interface Props {
  readonly car: VehicleDetail;
  readonly index: SheetIndex;
  /** What the question was begun about. */
  readonly begun: PlaceChoice;
}

export const AskForm = ({ car, index, begun }: Props) => {
  const t = useText();
  const { place, setPlace, text, setText, needsItem, ask, put } = useAsking(car.id, begun);
  const places = placesFor(index, car.vehicle.form);
  return (
    <Form error={ask.error} onSubmit={() => put(true)}>
      <ItemChooser places={places} index={index} value={place} onChange={setPlace} />
      {needsItem && <p role="alert">{t("questions.item.needed")}</p>}
      <LongTextField
        minRows={3}
        required
        maxLength={2000}
        label={t("questions.text")}
        description={t("questions.text.hint")}
        value={text}
        onChange={setText}
      />
      <SendOrKeep ask={ask} put={put} />
      <p className={styles.hint}>{t("questions.draft.note")}</p>
    </Form>
  );
};
