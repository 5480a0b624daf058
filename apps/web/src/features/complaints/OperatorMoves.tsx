import { Button } from "@mantine/core";
import type { ComplaintSeen } from "@evenhand/shared/http/complaints";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Panel } from "../../ui/Page";

interface Props {
  readonly complaint: ComplaintSeen;
}

interface WritingProps {
  readonly title: string;
  readonly hint?: string;
  readonly label: string;
  readonly description?: string;
  /** Fewer characters say nothing. */
  readonly least: number;
  readonly action: string;
  readonly send: (text: string) => Promise<unknown>;
}

/** A text, and the one thing that is done with it; everything is read anew once it is done. */
const Writing = ({ title, hint, label, description, least, action, send }: WritingProps) => {
  const queries = useQueryClient();
  const [text, setText] = useState("");
  const sending = useMutation({
    mutationFn: () => send(text.trim()),
    onSuccess: () => queries.invalidateQueries(),
  });
  return (
    <Panel title={title} hint={hint}>
      <Form error={sending.error} onSubmit={() => sending.mutate()}>
        <LongTextField minRows={2} label={label} description={description} value={text} onChange={setText} />
        <div>
          <Button type="submit" disabled={text.trim().length < least} loading={sending.isPending}>
            {action}
          </Button>
        </div>
      </Form>
    </Panel>
  );
};

const Open = ({ complaint: { id } }: Props) => {
  const t = useText();
  return (
    <Writing
      title={t("complaint.open.title")}
      hint={t("complaint.open.what")}
      label={t("complaint.open.reason")}
      description={t("complaint.open.reason.hint")}
      least={10}
      action={t("complaint.open.do")}
      send={(reason) => call("complaints.open", { params: { id }, body: { reason } })}
    />
  );
};

const Answer = ({ complaint: { id, revision } }: Props) => {
  const t = useText();
  return (
    <Writing
      title={t("complaint.answer.title")}
      label={t("complaint.answer.text")}
      least={1}
      action={t("complaint.answer.do")}
      send={(text) => call("complaints.answer", { params: { id }, ifMatch: revision, body: { text } })}
    />
  );
};

/** The operator opens it for a reason that is logged, and answers. */
export const OperatorMoves = ({ complaint }: Props) => {
  if (complaint.text === null) return <Open complaint={complaint} />;
  return complaint.state === "answered" ? null : <Answer complaint={complaint} />;
};
