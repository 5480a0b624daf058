import { Button } from "@mantine/core";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import type { EditStep, PlaceEdit } from "./place-edit";

interface Props {
  readonly edit: PlaceEdit;
  readonly onStep: (step: EditStep) => void;
}

/** At a place that was named to be looked at again: what becomes of the first answer, and a press where the second is the same. */
export const AskedAgain = ({ edit, onStep }: Props) => {
  const t = useText();
  if (edit.grounds.look === "second") return <Notice kind="note" title={t("look.done")} />;
  return (
    <Notice kind="note" title={t("look.here")}>
      <p>{t("look.here.what")}</p>
      {edit.answer !== null && (
        <div>
          <Button variant="default" onClick={() => onStep({ type: "grounds", change: { look: "second" } })}>
            {t("look.same")}
          </Button>
        </div>
      )}
    </Notice>
  );
};
