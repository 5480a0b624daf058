import { Button } from "@mantine/core";
import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import { useEffect, useRef, type FormEvent, type RefObject } from "react";
import { useText } from "../../strings/text";
import { Conflict } from "./Conflict";
import { FirmChoice, type Choice } from "../../entities/account/FirmChoice";
import { LimitsPanel } from "./LimitsPanel";
import { MakersPanel } from "./MakersPanel";
import { handbookOf, typedHandbook } from "./own-handbook";
import styles from "./OwnFigures.module.css";
import { typedLimits } from "./own-limits";
import { SaveProblem } from "./SaveProblem";
import { useSave } from "./use-save";

interface Props {
  readonly organization: string;
  readonly seen: FirmHandbookSeen;
  readonly choice: Choice;
}

type Save = ReturnType<typeof useSave>;

const SaveBar = ({ save }: { readonly save: Save }) => {
  const t = useText();
  const { tries, wrong, saved, touched, pending } = save;
  return (
    <div className={`${styles.bar} no-print`}>
      <Button type="submit" size="md" loading={pending}>
        {t("save")}
      </Button>
      <span aria-live="polite">{saved ? t("own.saved") : touched && wrong === 0 && t("own.unsaved")}</span>
      <span role="alert">{tries > 0 && wrong > 0 && t("own.save.wrong", { count: wrong })}</span>
    </div>
  );
};

/** Each time saving was tried in vain, the first place that is wrong takes the focus. */
const useFirstWrong = (tries: number): RefObject<HTMLFormElement | null> => {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (tries > 0) form.current?.querySelector<HTMLElement>("[aria-invalid=true], [data-wrong]")?.focus();
  }, [tries]);
  return form;
};

/** What keeps it from being saved, though nothing typed is wrong; after trying to save it takes the focus. */
const Refused = ({ save, seen }: { readonly save: Save; readonly seen: FirmHandbookSeen }) => {
  const { conflict, error, refused } = save;
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (refused) notice.current?.focus();
  }, [refused]);
  if (!conflict && error === null) return null;
  return (
    <div ref={notice} tabIndex={-1}>
      {conflict && (
        <Conflict
          mine={handbookOf(save.typed)}
          theirs={seen.handbook}
          onMine={() => save.submit(seen.revision)}
          onTheirs={save.takeTheirs}
        />
      )}
      {error !== null && <SaveProblem error={error} sent={handbookOf(save.typed)} />}
    </div>
  );
};

/** The firm's figures with one button to save them all. */
export const OwnFiguresEditor = ({ organization, seen, choice }: Props) => {
  const save = useSave(organization, seen);
  const { typed, change, tries } = save;
  const form = useFirstWrong(tries);
  const tried = tries > 0;
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    save.submit();
  };
  return (
    <>
      <FirmChoice choice={choice} waits={save.touched} />
      <form ref={form} className={styles.stack} noValidate onSubmit={submit}>
        <LimitsPanel
          typed={typed.limits}
          stored={typedLimits(seen.handbook.limits)}
          tried={tried}
          onChange={(limits) => change({ ...typed, limits })}
        />
        <MakersPanel typed={typed.makers} tried={tried} onChange={(makers) => change({ ...typed, makers })} />
        <Refused save={save} seen={seen} />
        <SaveBar save={save} />
      </form>
    </>
  );
};

/** The same for those who may not change them. */
export const OwnFiguresRead = ({ seen }: { readonly seen: FirmHandbookSeen }) => {
  const { limits, makers } = typedHandbook(seen);
  return (
    <>
      <LimitsPanel typed={limits} stored={limits} tried={false} />
      <MakersPanel typed={makers} tried={false} />
    </>
  );
};
