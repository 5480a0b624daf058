import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import { CopyAddress } from "../../ui/CopyAddress";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { addDays, instantOf, ownZone, today } from "../../entities/time/zone-time";
import styles from "./Publishing.module.css";

const MONTH = 30;
/** A link ends within a year. */
const LONGEST = 364;

interface FieldProps {
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** For whom it is, so that the dealer knows which one to revoke. */
const NameField = ({ value, onChange }: FieldProps) => {
  const t = useText();
  return <TextField required maxLength={200} label={t("share.name")} value={value} onChange={onChange} />;
};

const LastDayField = ({ value, onChange }: FieldProps) => {
  const t = useText();
  return (
    <TextField
      type="date"
      required
      min={today(ownZone())}
      max={addDays(today(ownZone()), LONGEST)}
      label={t("share.expires")}
      value={value}
      onChange={onChange}
    />
  );
};

const useMaking = (vehicle: string) => {
  const queries = useQueryClient();
  const [name, setName] = useState("");
  const [until, setUntil] = useState(() => addDays(today(ownZone()), MONTH));
  const make = useMutation({
    mutationFn: () =>
      call("shareLinks.create", {
        params: { id: vehicle },
        body: { name: name.trim(), expires: instantOf(`${until}T23:59`, ownZone()) },
      }),
    onSuccess: async () => {
      setName("");
      await queries.invalidateQueries({ queryKey: ["share-links", vehicle] });
    },
  });
  return { name, setName, until, setUntil, make };
};

/** Makes a link, and shows its address this once. */
export const MakeLink = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const { name, setName, until, setUntil, make } = useMaking(vehicle);
  return (
    <Form error={make.error} onSubmit={() => make.mutate()}>
      {make.data !== undefined && (
        <Notice kind="note" title={t("share.made")}>
          <CopyAddress address={new URL(make.data.path, window.location.origin).href} />
        </Notice>
      )}
      <div className={styles.fields}>
        <NameField value={name} onChange={setName} />
        <LastDayField value={until} onChange={setUntil} />
        <Button type="submit" size="md" variant="default" loading={make.isPending}>
          {t("share.make")}
        </Button>
      </div>
    </Form>
  );
};
