import { Button } from "@mantine/core";
import type { Report } from "@evenhand/shared/report";
import { useEffect, useMemo, useState } from "react";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Empty, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import type { SheetIndex } from "../../entities/sheet/sheet-index";
import type { Draft } from "../../offline/use-draft";
import { ProposalCard, type Going } from "./ProposalCard";
import type { Block, Review } from "./review";
import styles from "./Review.module.css";
import { ReviewBar, type Shown } from "./ReviewBar";
import { isDecided } from "./standing";
import { Source } from "./Source";
import { Unmentioned } from "./Unmentioned";
import { type Reading, type Reviewing, useReview } from "./use-review";
import { useWalk } from "./use-walk";

interface Props {
  readonly reportId: string;
  readonly report: Report;
  readonly index: SheetIndex;
  readonly draft: Draft;
  readonly reading: Reading;
  readonly address: string;
}

const PLACE = "what-was-read";

/** Blocks drawn at a time. */
const TURN = 150;

const isLeft = ({ standing }: Reviewing, { proposals }: Block): boolean =>
  proposals.some((one) => !isDecided(standing(one)));

/** What is to be shown; what was left when it was asked for stays, or lines would go from under one's hand. */
const useShown = ({ blocks }: Review, reviewing: Reviewing) => {
  const [shown, setShown] = useState<Shown>("made");
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [most, setMost] = useState(TURN);
  const fits = useMemo(
    () =>
      blocks.filter(({ key, proposals }) =>
        shown === "all" ? true : shown === "made" ? proposals.length > 0 : left.has(key),
      ),
    [blocks, shown, left],
  );
  const show = (next: Shown): void => {
    setLeft(new Set(blocks.filter((block) => isLeft(reviewing, block)).map(({ key }) => key)));
    setMost(TURN);
    setShown(next);
  };
  return {
    shown,
    show,
    fits: fits.slice(0, most),
    more: fits.length - most,
    onMore: () => setMost(most + TURN),
  };
};

interface LineProps extends Going {
  readonly block: Block;
  readonly address: string;
  readonly onGo: (key: string) => void;
}

const BlockLine = ({ block, address, onGo, ...going }: LineProps) => (
  <li className={styles.block}>
    <Source block={block} address={address} selected={going.selected} onSelect={onGo} />
    {block.note !== null && <p className={styles.note}>{block.note}</p>}
    {block.proposals.length > 0 && (
      <ul className={styles.proposals}>
        {block.proposals.map((proposal) => (
          <ProposalCard key={proposal.key} proposal={proposal} {...going} />
        ))}
      </ul>
    )}
  </li>
);

const Aside = ({ review: { aside, of } }: Pick<Reading, "review">) => {
  const t = useText();
  return (
    <Notice kind="note" title={t(`reading.draft.${of}`)}>
      <p>{t("reading.draft.what")}</p>
      {aside.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </Notice>
  );
};

interface LinesProps extends Pick<Props, "reportId" | "report" | "index" | "address"> {
  readonly blocks: readonly Block[];
  readonly reviewing: Reviewing;
}

const Lines = ({ blocks, address, ...of }: LinesProps) => {
  const walk = useWalk(
    blocks.flatMap(({ proposals }) => proposals),
    of.reviewing,
  );
  const going = {
    ...of,
    selected: walk.selected,
    editing: walk.editing,
    onGo: walk.go,
    onSelect: walk.select,
    onEdit: walk.edit,
    onDone: walk.done,
    onKeyDown: walk.onKeyDown,
  };
  return (
    <ol className={styles.blocks}>
      {blocks.map((block) => (
        <BlockLine key={block.key} block={block} address={address} {...going} />
      ))}
    </ol>
  );
};

type ReadProps = Omit<Props, "draft" | "reading"> &
  Pick<Reading, "review"> & { readonly reviewing: Reviewing };

const WhatWasRead = ({ review, reviewing, ...of }: ReadProps) => {
  const t = useText();
  const { shown, show, fits, more, onMore } = useShown(review, reviewing);
  // What was asked for comes into sight; on a phone it lies a whole screen below.
  useEffect(() => {
    document.getElementById(PLACE)?.scrollIntoView({ block: "start" });
  }, []);
  return (
    <Panel title={t("reading.review")} hint={t("reading.keys")} id={PLACE}>
      <ReviewBar reviewing={reviewing} shown={shown} onShown={show} />
      {fits.length === 0 && <Empty title={t("reading.none")}>{t("reading.none.hint")}</Empty>}
      <Lines {...of} blocks={fits} reviewing={reviewing} />
      {more > 0 && (
        <Button variant="default" onClick={onMore}>
          {t("reading.lines.more", { count: more })}
        </Button>
      )}
    </Panel>
  );
};

/** The two pages of a reading: what was said or written on the left, what was made of it on the right; on a phone one list of both. */
export const ReviewLines = ({ draft, reading, ...of }: Props) => {
  const { reportId, report, index } = of;
  const { review } = reading;
  const reviewing = useReview(reportId, reading, draft);
  const answered = new Set([...draft.findings.values()].map(({ finding }) => finding?.item));
  return (
    <>
      <Aside review={review} />
      {reviewing.error !== null && <ProblemNotice error={reviewing.error} />}
      <WhatWasRead {...of} review={review} reviewing={reviewing} />
      <Unmentioned
        reportId={reportId}
        report={report}
        index={index}
        items={review.unmentioned}
        isAnswered={(item) => answered.has(item)}
      />
    </>
  );
};
