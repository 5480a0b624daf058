import { Button } from "@mantine/core";
import type { HandOverSeen } from "@evenhand/shared/http/hand-overs";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { addDays, instantOf, ownZone, today } from "../../entities/time/zone-time";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { LinkMade } from "./InviteCarrier";

type Seen = Pick<HandOverSeen, "id" | "revision" | "state">;
const MONTH = 30;

const CALL_OFF = { route: "handOvers.callOff", words: "hand-over.call-off" } as const;
const SIGN_OFF = { route: "handOvers.signOff", words: "hand-over.sign-off" } as const;
const OPEN_CLAIM = { route: "handOvers.openClaim", words: "hand-over.claim.open" } as const;
const CLOSE_CLAIM = { route: "handOvers.closeClaim", words: "hand-over.claim.close" } as const;
type Move = typeof CALL_OFF | typeof SIGN_OFF | typeof OPEN_CLAIM | typeof CLOSE_CLAIM;

const MOVES: Readonly<Record<HandOverSeen["state"], readonly Move[]>> = {
  arranged: [CALL_OFF],
  collected: [OPEN_CLAIM],
  delivered: [OPEN_CLAIM, SIGN_OFF],
  "signed-off": [OPEN_CLAIM],
  "claim-open": [CLOSE_CLAIM],
  "claim-closed": [],
  "called-off": [],
};

const MoveForm = ({ seen, move }: { readonly seen: Seen; readonly move: Move }) => {
  const t = useText();
  const queries = useQueryClient();
  const [note, setNote] = useState("");
  const go = useMutation({
    mutationFn: () =>
      call(move.route, { params: { id: seen.id }, ifMatch: seen.revision, body: { note: note.trim() } }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["hand-over", seen.id] }),
  });
  return (
    <Form error={go.error} onSubmit={() => go.mutate()}>
      {move !== CALL_OFF && <h3>{t(move.words)}</h3>}
      <LongTextField
        required
        maxLength={1000}
        label={t(`${move.words}.note`)}
        value={note}
        onChange={setNote}
      />
      <div>
        <Button type="submit" size="md" variant="default" loading={go.isPending}>
          {t(move.words)}
        </Button>
      </div>
    </Form>
  );
};

/** The buyer's own moves in the state it stands in. */
export const OwnMoves = ({ seen }: { readonly seen: Seen }) => (
  <>
    {MOVES[seen.state].map((move) => (
      <MoveForm key={`${seen.state} ${move.route}`} seen={seen} move={move} />
    ))}
  </>
);

/** A new link where the first was lost. */
export const RenewLink = ({ id }: { readonly id: string }) => {
  const t = useText();
  const make = useMutation({
    mutationFn: () =>
      call("handOvers.renewLink", {
        params: { id },
        body: { expires: instantOf(`${addDays(today(ownZone()), MONTH)}T23:59`, ownZone()) },
      }),
  });
  return (
    <Panel title={t("hand-over.renew")} hint={t("hand-over.renew.what")}>
      {make.error !== null && <ProblemNotice error={make.error} />}
      {make.data !== undefined && <LinkMade path={make.data.path} />}
      <Button variant="default" size="md" loading={make.isPending} onClick={() => make.mutate()}>
        {t("hand-over.renew")}
      </Button>
    </Panel>
  );
};
