-- Words in the search box are found by trigrams. A trusted extension: the database's owner may make it.
CREATE EXTENSION IF NOT EXISTS pg_trgm;

-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateEnum
CREATE TYPE "organization_kind" AS ENUM ('dealer', 'inspector', 'operator', 'buyer');

-- CreateEnum
CREATE TYPE "member_role" AS ENUM ('admin', 'member');

-- CreateEnum
CREATE TYPE "order_state" AS ENUM ('ordered', 'accepted', 'reported', 'declined', 'cancelled');

-- CreateEnum
CREATE TYPE "report_kind" AS ENUM ('acquisition', 'statement', 'inspection', 'collection', 'delivery');

-- CreateEnum
CREATE TYPE "release_state" AS ENUM ('released', 'accepted', 'contested');

-- CreateEnum
CREATE TYPE "decision_kind" AS ENUM ('approve', 'counter', 'decline');

-- CreateEnum
CREATE TYPE "counter_answer" AS ENUM ('accept', 'refuse');

-- CreateEnum
CREATE TYPE "mail_state" AS ENUM ('waiting', 'sent', 'failed');

-- CreateTable
CREATE TABLE "organization" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" "organization_kind" NOT NULL,
    "place" TEXT,
    "zone" TEXT NOT NULL DEFAULT 'UTC',
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "organization_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "account" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "account_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "role" "member_role" NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("account_id","organization_id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "device" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "last_seen_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "api_token" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "scopes" TEXT[],
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "invitation" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "role" "member_role" NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "invited_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "throttle" (
    "key" BYTEA NOT NULL,
    "count" INTEGER NOT NULL,
    "window_ends" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "throttle_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "idempotency" (
    "account_id" UUID NOT NULL,
    "route" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "request_hash" BYTEA NOT NULL,
    "organizations" UUID[],
    "etag" TEXT,
    "body" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "idempotency_pkey" PRIMARY KEY ("account_id","route","key")
);

-- CreateTable
CREATE TABLE "vehicle" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "make" TEXT NOT NULL,
    "model" TEXT NOT NULL,
    "model_year" INTEGER NOT NULL,
    "identification" TEXT NOT NULL,
    "document" JSONB NOT NULL,
    "asking_minor" BIGINT,
    "asking_currency" TEXT,
    "words" TEXT,
    "listed" BOOLEAN NOT NULL,
    "revision" INTEGER NOT NULL,
    "search" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "vehicle_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "inspection_order" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "inspector_id" UUID NOT NULL,
    "statement_id" UUID NOT NULL,
    "state" "order_state" NOT NULL,
    "revision" INTEGER NOT NULL,
    "interests" TEXT[],
    "reason" TEXT,
    "ordered_by" UUID NOT NULL,
    "ordered_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_by" UUID,
    "accepted_at" TIMESTAMPTZ(3),
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "inspection_order_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "report" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "order_id" UUID,
    "kind" "report_kind" NOT NULL,
    "revision" INTEGER NOT NULL,
    "drafting" BOOLEAN NOT NULL,
    "header" JSONB NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "report_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "report_finding" (
    "report_id" UUID NOT NULL,
    "item" TEXT NOT NULL,
    "position" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "body" JSONB,
    "first_committed_at" TIMESTAMPTZ(3) NOT NULL,
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "report_finding_pkey" PRIMARY KEY ("report_id","item","position")
);

-- CreateTable
CREATE TABLE "report_operation" (
    "id" UUID NOT NULL,
    "report_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "request_hash" BYTEA NOT NULL,
    "revision" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "report_operation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "report_version" (
    "id" UUID NOT NULL,
    "report_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "buyer_id" UUID,
    "order_id" UUID,
    "kind" "report_kind" NOT NULL,
    "number" INTEGER NOT NULL,
    "seal" CHAR(64) NOT NULL,
    "document" BYTEA NOT NULL,
    "sealed_by" UUID NOT NULL,
    "sealed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "report_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "statement_exposure" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "whole" BOOLEAN NOT NULL,
    "shown_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "statement_exposure_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "comparison" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "a_id" UUID NOT NULL,
    "b_id" UUID NOT NULL,
    "engine" TEXT NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "document" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "comparison_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "release" (
    "id" UUID NOT NULL,
    "comparison_id" UUID NOT NULL,
    "entry_index" INTEGER NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "snapshot" JSONB NOT NULL,
    "state" "release_state" NOT NULL,
    "reason" TEXT,
    "revision" INTEGER NOT NULL,
    "released_by" UUID NOT NULL,
    "released_at" TIMESTAMPTZ(3) NOT NULL,
    "answered_by" UUID,
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "release_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cost_table" (
    "organization_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "cost_table_pkey" PRIMARY KEY ("organization_id")
);

-- CreateTable
CREATE TABLE "summary" (
    "id" UUID NOT NULL,
    "comparison_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "document" BYTEA NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "summary_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "decision" (
    "id" UUID NOT NULL,
    "summary_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "decision" "decision_kind" NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "acknowledgements" JSONB NOT NULL,
    "price_minor" BIGINT,
    "price_currency" TEXT,
    "conditions" TEXT,
    "revision" INTEGER NOT NULL,
    "decided_by" UUID NOT NULL,
    "decided_at" TIMESTAMPTZ(3) NOT NULL,
    "answer" "counter_answer",
    "answer_note" TEXT,
    "answered_by" UUID,
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "decision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "notice" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "subject" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "read_at" TIMESTAMPTZ(3),

    CONSTRAINT "notice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "mail" (
    "id" UUID NOT NULL,
    "recipient" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "body" TEXT,
    "state" "mail_state" NOT NULL,
    "attempts" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "sent_at" TIMESTAMPTZ(3),

    CONSTRAINT "mail_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "demo_load" (
    "revision" INTEGER NOT NULL,
    "main_comparison" UUID NOT NULL,
    "loaded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "demo_load_pkey" PRIMARY KEY ("revision")
);

-- CreateIndex
CREATE INDEX "organization_kind_id_idx" ON "organization"("kind", "id");

-- CreateIndex
CREATE UNIQUE INDEX "account_email_key" ON "account"("email");

-- CreateIndex
CREATE INDEX "membership_organization_id_idx" ON "membership"("organization_id");

-- CreateIndex
CREATE UNIQUE INDEX "session_token_hash_key" ON "session"("token_hash");

-- CreateIndex
CREATE INDEX "session_account_id_idx" ON "session"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "api_token_token_hash_key" ON "api_token"("token_hash");

-- CreateIndex
CREATE INDEX "api_token_account_id_idx" ON "api_token"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "invitation_token_hash_key" ON "invitation"("token_hash");

-- CreateIndex
CREATE INDEX "throttle_window_ends_idx" ON "throttle"("window_ends");

-- CreateIndex
CREATE INDEX "idempotency_created_at_idx" ON "idempotency"("created_at");

-- CreateIndex
CREATE INDEX "vehicle_organization_id_id_idx" ON "vehicle"("organization_id", "id");

-- CreateIndex
CREATE INDEX "inspection_order_vehicle_id_idx" ON "inspection_order"("vehicle_id");

-- CreateIndex
CREATE INDEX "inspection_order_buyer_id_id_idx" ON "inspection_order"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "inspection_order_inspector_id_id_idx" ON "inspection_order"("inspector_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "report_order_id_key" ON "report"("order_id");

-- CreateIndex
CREATE INDEX "report_vehicle_id_idx" ON "report"("vehicle_id");

-- CreateIndex
CREATE INDEX "report_operation_report_id_idx" ON "report_operation"("report_id");

-- CreateIndex
CREATE INDEX "report_version_vehicle_id_kind_sealed_at_idx" ON "report_version"("vehicle_id", "kind", "sealed_at");

-- CreateIndex
CREATE UNIQUE INDEX "report_version_report_id_number_key" ON "report_version"("report_id", "number");

-- CreateIndex
CREATE INDEX "statement_exposure_organization_id_vehicle_id_idx" ON "statement_exposure"("organization_id", "vehicle_id");

-- CreateIndex
CREATE INDEX "comparison_b_id_idx" ON "comparison"("b_id");

-- CreateIndex
CREATE INDEX "comparison_vehicle_id_id_idx" ON "comparison"("vehicle_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "comparison_a_id_b_id_engine_key" ON "comparison"("a_id", "b_id", "engine");

-- CreateIndex
CREATE INDEX "release_buyer_id_id_idx" ON "release"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "release_dealer_id_id_idx" ON "release"("dealer_id", "id");

-- CreateIndex
CREATE INDEX "release_vehicle_id_idx" ON "release"("vehicle_id");

-- CreateIndex
CREATE UNIQUE INDEX "release_comparison_id_entry_index_key" ON "release"("comparison_id", "entry_index");

-- CreateIndex
CREATE INDEX "summary_buyer_id_id_idx" ON "summary"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "summary_comparison_id_idx" ON "summary"("comparison_id");

-- CreateIndex
CREATE UNIQUE INDEX "decision_summary_id_key" ON "decision"("summary_id");

-- CreateIndex
CREATE INDEX "decision_buyer_id_id_idx" ON "decision"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "decision_dealer_id_id_idx" ON "decision"("dealer_id", "id");

-- CreateIndex
CREATE INDEX "notice_account_id_id_idx" ON "notice"("account_id", "id");

-- CreateIndex
CREATE INDEX "mail_state_created_at_idx" ON "mail"("state", "created_at");

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "inspection_order" ADD CONSTRAINT "inspection_order_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "inspection_order" ADD CONSTRAINT "inspection_order_buyer_id_fkey" FOREIGN KEY ("buyer_id") REFERENCES "organization"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "inspection_order" ADD CONSTRAINT "inspection_order_inspector_id_fkey" FOREIGN KEY ("inspector_id") REFERENCES "organization"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "inspection_order" ADD CONSTRAINT "inspection_order_statement_id_fkey" FOREIGN KEY ("statement_id") REFERENCES "report_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report" ADD CONSTRAINT "report_order_id_fkey" FOREIGN KEY ("order_id") REFERENCES "inspection_order"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report_finding" ADD CONSTRAINT "report_finding_report_id_fkey" FOREIGN KEY ("report_id") REFERENCES "report"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report_operation" ADD CONSTRAINT "report_operation_report_id_fkey" FOREIGN KEY ("report_id") REFERENCES "report"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report_version" ADD CONSTRAINT "report_version_report_id_fkey" FOREIGN KEY ("report_id") REFERENCES "report"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "report_version" ADD CONSTRAINT "report_version_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "comparison" ADD CONSTRAINT "comparison_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "comparison" ADD CONSTRAINT "comparison_a_id_fkey" FOREIGN KEY ("a_id") REFERENCES "report_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "comparison" ADD CONSTRAINT "comparison_b_id_fkey" FOREIGN KEY ("b_id") REFERENCES "report_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "release" ADD CONSTRAINT "release_comparison_id_fkey" FOREIGN KEY ("comparison_id") REFERENCES "comparison"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cost_table" ADD CONSTRAINT "cost_table_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "summary" ADD CONSTRAINT "summary_comparison_id_fkey" FOREIGN KEY ("comparison_id") REFERENCES "comparison"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "decision" ADD CONSTRAINT "decision_summary_id_fkey" FOREIGN KEY ("summary_id") REFERENCES "summary"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "notice" ADD CONSTRAINT "notice_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- From here on: what the schema language cannot say.

-- An instant as the interface writes it: RFC 3339, UTC, milliseconds.
CREATE FUNCTION instant(at timestamptz) RETURNS text LANGUAGE sql STABLE PARALLEL SAFE
  RETURN to_char(at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"');

-- Lists of cars: the newest first, all listed ones or those with a word in them.
CREATE INDEX vehicle_listed ON vehicle (id DESC) WHERE listed;
CREATE INDEX vehicle_search ON vehicle USING gin (search gin_trgm_ops);

-- One statement, one acquisition report of a dealer on a car; an inspection hangs on its order.
CREATE UNIQUE INDEX report_one_line ON report (vehicle_id, organization_id, kind) WHERE order_id IS NULL;
-- A buyer has one live order with one firm on a car.
CREATE UNIQUE INDEX inspection_order_live ON inspection_order (vehicle_id, buyer_id, inspector_id)
  WHERE state IN ('ordered', 'accepted');
-- Is this firm bound to be blind to this car's statements?
CREATE INDEX inspection_order_blind ON inspection_order (vehicle_id, inspector_id)
  WHERE state IN ('ordered', 'accepted');

ALTER TABLE vehicle ADD CONSTRAINT vehicle_asking_whole
  CHECK ((asking_minor IS NULL) = (asking_currency IS NULL));
ALTER TABLE decision ADD CONSTRAINT decision_price_whole
  CHECK ((price_minor IS NULL) = (price_currency IS NULL));
ALTER TABLE decision ADD CONSTRAINT decision_answer_whole
  CHECK ((answer IS NULL) = (answered_at IS NULL));
ALTER TABLE inspection_order ADD CONSTRAINT inspection_order_accepted_whole
  CHECK ((accepted_by IS NULL) = (accepted_at IS NULL));
ALTER TABLE report ADD CONSTRAINT report_order_kind
  CHECK ((kind = 'inspection') = (order_id IS NOT NULL));

-- Documents are sent as they are: kept whole, not compressed and decompressed.
ALTER TABLE report_version ALTER COLUMN document SET STORAGE EXTERNAL;
ALTER TABLE comparison ALTER COLUMN document SET STORAGE EXTERNAL;
ALTER TABLE summary ALTER COLUMN document SET STORAGE EXTERNAL;

-- What is sealed, compared or decided on stays as it was, whoever asks.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rows of % are never changed', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;
CREATE TRIGGER report_version_sealed BEFORE UPDATE OR DELETE ON report_version
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER comparison_sealed BEFORE UPDATE OR DELETE ON comparison
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER summary_sealed BEFORE UPDATE OR DELETE ON summary
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
