import { Button } from "@mantine/core";
import type {
  CarrierPaper,
  HandOverPreview,
  HandOverReportBody,
  HandOverSigned,
} from "@evenhand/shared/http/hand-overs";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { call, type Ask } from "../../service/client";
import { oneOf } from "../../service/one-of";
import { useText } from "../../strings/text";
import { ChoiceField, TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { ReportPictures } from "./BothPictures";
import type { PictureSource } from "./carried-pictures";
import { Compared, Reading } from "./Reports";

const PAPERS = ["noted", "refused", "nothing"] as const satisfies readonly CarrierPaper[];

type Body = NonNullable<Ask<"carriedHandOvers.preview">["body"]>;

interface Props {
  readonly token: string;
  readonly report: Body;
  readonly stage: HandOverReportBody["stage"];
  readonly preview: HandOverPreview;
  readonly source: PictureSource;
  readonly onSigned: (signed: HandOverSigned) => void;
}

const PaperField = ({
  value,
  onChange,
}: {
  readonly value: string;
  readonly onChange: (to: string) => void;
}) => {
  const t = useText();
  return (
    <>
      <Notice kind="note" title={t("carry.paper.title")}>
        <p>{t("carry.paper.what")}</p>
      </Notice>
      <ChoiceField
        required
        label={t("carry.paper")}
        value={value}
        data={[
          { value: "", label: t("carry.paper.choose") },
          ...PAPERS.map((paper) => ({ value: paper, label: t(`carry.paper.${paper}`) })),
        ]}
        onChange={onChange}
      />
    </>
  );
};

const useSigning = ({ token, report, preview, onSigned }: Props) => {
  const [paper, setPaper] = useState("");
  const [carrier, setCarrier] = useState("");
  const [other, setOther] = useState("");
  const sign = useMutation({
    mutationFn: () =>
      call("carriedHandOvers.sign", {
        params: { token },
        body: {
          report,
          hash: preview.hash,
          paper: oneOf(PAPERS, paper) ?? "nothing",
          carrier: carrier.trim(),
          other: other.trim(),
        },
      }),
    onSuccess: onSigned,
  });
  return { paper, setPaper, carrier, setCarrier, other, setOther, sign };
};

/** What is about to be signed, word for word, and the two names. */
export const SignReport = (props: Props) => {
  const t = useText();
  const { stage, preview, source } = props;
  const { paper, setPaper, carrier, setCarrier, other, setOther, sign } = useSigning(props);
  return (
    <>
      <Panel title={t(`hand-over.report.${stage}`)}>
        <Reading reading={preview.reading} />
        <ReportPictures source={source} stage={stage} />
      </Panel>
      {preview.compared !== null && <Compared compared={preview.compared} source={source} />}
      <Panel title={t("carry.before")}>
        <Form error={sign.error} onSubmit={() => sign.mutate()}>
          <PaperField value={paper} onChange={setPaper} />
          <TextField required label={t("carry.sign.carrier")} value={carrier} onChange={setCarrier} />
          <TextField
            required
            label={t(stage === "collection" ? "carry.sign.seller" : "carry.sign.receiver")}
            value={other}
            onChange={setOther}
          />
          <p style={{ overflowWrap: "anywhere" }}>{t("carry.sign.what", { hash: preview.hash })}</p>
          <Button type="submit" size="lg" loading={sign.isPending} disabled={paper === ""}>
            {t("carry.sign")}
          </Button>
        </Form>
      </Panel>
    </>
  );
};
