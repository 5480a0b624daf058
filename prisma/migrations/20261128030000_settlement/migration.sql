-- What a dealer was asked became the beginning of settling it. What stood as released, accepted or contested stays so: nobody was
-- told of a deadline for it, so it has none.
DROP INDEX "release_accepted";
ALTER TABLE "release" ALTER COLUMN "state" TYPE TEXT USING "state"::text;
DROP TYPE "release_state";

ALTER TABLE "release"
  ADD COLUMN "at_comparison_id" UUID,
  ADD COLUMN "at_entry_index" INTEGER,
  ADD COLUMN "inspector_id" UUID,
  ADD COLUMN "looked" JSONB,
  ADD COLUMN "deadline" TIMESTAMPTZ(3),
  ADD COLUMN "upheld_at" TIMESTAMPTZ(3),
  ADD COLUMN "asked_at" TIMESTAMPTZ(3);
UPDATE "release" r SET "at_comparison_id" = r.comparison_id, "at_entry_index" = r.entry_index,
  "inspector_id" = b.organization_id, "upheld_at" = CASE WHEN r.state = 'accepted' THEN r.answered_at END
FROM comparison c JOIN report_version b ON b.id = c.b_id WHERE c.id = r.comparison_id;
ALTER TABLE "release"
  ALTER COLUMN "at_comparison_id" SET NOT NULL,
  ALTER COLUMN "at_entry_index" SET NOT NULL,
  ALTER COLUMN "inspector_id" SET NOT NULL,
  ADD CONSTRAINT "release_state_known" CHECK ("state" IN ('released', 'contested', 'price-offered', 'remedy-offered',
    'look-offered', 'refused', 'asked', 'revising', 'looking-again', 'promised', 'proved', 'accepted', 'finding-stands',
    'statement-stands', 'settled', 'left-open')),
  ADD CONSTRAINT "release_upheld" CHECK (("upheld_at" IS NOT NULL) = ("state" IN ('accepted', 'finding-stands')));

CREATE UNIQUE INDEX "release_at_comparison_id_at_entry_index_key" ON "release"("at_comparison_id", "at_entry_index");
CREATE INDEX "release_inspector_id_id_idx" ON "release"("inspector_id", "id");
-- What was upheld: counted whenever a record is asked for.
CREATE INDEX "release_upheld_at" ON "release" ("comparison_id") WHERE "upheld_at" IS NOT NULL;
CREATE INDEX "release_due" ON "release" ("deadline") WHERE "deadline" IS NOT NULL;

CREATE TABLE "settlement_move" (
  "id" UUID NOT NULL,
  "release_id" UUID NOT NULL,
  "deed" UUID NOT NULL,
  "at" TIMESTAMPTZ(3) NOT NULL,
  "actor" TEXT NOT NULL,
  "account_id" UUID,
  "move" TEXT NOT NULL,
  "from_state" TEXT NOT NULL,
  "to_state" TEXT NOT NULL,
  "words" TEXT,
  "evidence" JSONB NOT NULL,
  "remedy" JSONB,

  CONSTRAINT "settlement_move_pkey" PRIMARY KEY ("id")
);
CREATE INDEX "settlement_move_release_id_id_idx" ON "settlement_move"("release_id", "id");
ALTER TABLE "settlement_move" ADD CONSTRAINT "settlement_move_release_id_fkey" FOREIGN KEY ("release_id")
  REFERENCES "release"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- The one answer that each had, as the beginning of its thread.
INSERT INTO "settlement_move" (id, release_id, deed, at, actor, account_id, move, from_state, to_state, words, evidence)
SELECT id, id, id, answered_at, 'dealer', answered_by, CASE state WHEN 'accepted' THEN 'accept' ELSE 'contest' END,
  'released', state, reason, '[]' FROM "release" WHERE state <> 'released';

CREATE TRIGGER settlement_move_kept BEFORE UPDATE OR DELETE ON settlement_move
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

ALTER TABLE "buyer_case" ADD COLUMN "lays_at_seal_by" UUID;
