-- CreateTable
CREATE TABLE "hand_over" (
    "id" UUID NOT NULL,
    "case_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "decision_id" UUID NOT NULL,
    "carrier" TEXT NOT NULL,
    "terms" JSONB NOT NULL,
    "state" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "link_expires_at" TIMESTAMPTZ(3) NOT NULL,
    "comparison" JSONB,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hand_over_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "hand_over_report" (
    "hand_over_id" UUID NOT NULL,
    "stage" TEXT NOT NULL,
    "document" BYTEA NOT NULL,
    "seal" CHAR(64) NOT NULL,
    "paper" TEXT NOT NULL,
    "signatures" JSONB NOT NULL,
    "signed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hand_over_report_pkey" PRIMARY KEY ("hand_over_id","stage")
);

-- CreateTable
CREATE TABLE "hand_over_move" (
    "id" UUID NOT NULL,
    "hand_over_id" UUID NOT NULL,
    "move" TEXT NOT NULL,
    "actor" TEXT NOT NULL,
    "account_id" UUID,
    "note" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hand_over_move_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "hand_over_token_hash_key" ON "hand_over"("token_hash");

-- CreateIndex
CREATE INDEX "hand_over_case_id_id_idx" ON "hand_over"("case_id", "id");

-- CreateIndex
CREATE INDEX "hand_over_move_hand_over_id_id_idx" ON "hand_over_move"("hand_over_id", "id");

-- AddForeignKey
ALTER TABLE "hand_over" ADD CONSTRAINT "hand_over_case_id_fkey" FOREIGN KEY ("case_id") REFERENCES "buyer_case"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hand_over_report" ADD CONSTRAINT "hand_over_report_hand_over_id_fkey" FOREIGN KEY ("hand_over_id") REFERENCES "hand_over"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hand_over_move" ADD CONSTRAINT "hand_over_move_hand_over_id_fkey" FOREIGN KEY ("hand_over_id") REFERENCES "hand_over"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- One carrier at a time has the car; a second leg begins when the first is delivered.
CREATE UNIQUE INDEX hand_over_live ON hand_over (case_id) WHERE state IN ('arranged', 'collected');

-- What was signed stays as it was, whoever asks.
CREATE TRIGGER hand_over_report_sealed BEFORE UPDATE OR DELETE ON hand_over_report
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
