-- Booking: calendars, sites, appointments, publishing, questions, complaints.

-- AlterTable
ALTER TABLE "mail" ADD COLUMN "calendar" TEXT, ADD COLUMN "method" TEXT;

-- CreateTable
CREATE TABLE "inspector_calendar" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "account_id" UUID,
    "name" TEXT NOT NULL,
    "hours" JSONB NOT NULL,
    "latitude" DOUBLE PRECISION NOT NULL,
    "longitude" DOUBLE PRECISION NOT NULL,
    "radius" INTEGER NOT NULL,
    "speed" DOUBLE PRECISION NOT NULL,
    "notice" INTEGER NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "per_visit" INTEGER NOT NULL,
    "per_extra_car" INTEGER NOT NULL,
    "per_mile" INTEGER NOT NULL,
    "skills" TEXT[],
    "accepting" BOOLEAN NOT NULL,
    "revision" INTEGER NOT NULL,
    "admission" TEXT NOT NULL,
    "admission_reason" TEXT,
    "admission_revision" INTEGER NOT NULL,
    "decided_by" UUID,
    "decided_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "inspector_calendar_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "firm_admission" (
    "organization_id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "decided_by" UUID NOT NULL,
    "decided_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "firm_admission_pkey" PRIMARY KEY ("organization_id")
);

-- CreateTable
CREATE TABLE "inspector_interest" (
    "id" UUID NOT NULL,
    "calendar_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "holder" TEXT NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),
    "note" TEXT NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "inspector_interest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "inspector_dealing" (
    "id" UUID NOT NULL,
    "calendar_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "dealing" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "inspector_dealing_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "site" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "latitude" DOUBLE PRECISION NOT NULL,
    "longitude" DOUBLE PRECISION NOT NULL,
    "hours" JSONB NOT NULL,
    "closures" JSONB NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "per_visit" INTEGER NOT NULL,
    "per_lift_spell" INTEGER NOT NULL,
    "revision" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "site_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "bay" (
    "id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "retired" BOOLEAN NOT NULL,

    CONSTRAINT "bay_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "vehicle_place" (
    "vehicle_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,

    CONSTRAINT "vehicle_place_pkey" PRIMARY KEY ("vehicle_id")
);

-- CreateTable
CREATE TABLE "brief" (
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "items" TEXT[],
    "revision" INTEGER NOT NULL,
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "brief_pkey" PRIMARY KEY ("vehicle_id","buyer_id")
);

-- CreateTable
CREATE TABLE "booking_terms" (
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "booking_terms_pkey" PRIMARY KEY ("revision")
);

-- CreateTable
CREATE TABLE "appointment" (
    "id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "inspector_id" UUID NOT NULL,
    "firm_id" UUID NOT NULL,
    "site_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "starts_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "deadline" TIMESTAMPTZ(3),
    "requested_at" TIMESTAMPTZ(3),
    "cost" JSONB NOT NULL,
    "terms" JSONB NOT NULL,
    "plan" JSONB NOT NULL,
    "travel" JSONB NOT NULL,
    "paid" BOOLEAN NOT NULL,
    "carried_share" INTEGER NOT NULL,
    "held_from_sale_until" TIMESTAMPTZ(3),
    "sequence" INTEGER,
    "declared_at" TIMESTAMPTZ(3),
    "permissions" JSONB NOT NULL,
    "road" JSONB,
    "settlement" JSONB,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "appointment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "appointment_car" (
    "appointment_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "place" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "needs_cold" BOOLEAN NOT NULL,
    "warms" BOOLEAN NOT NULL,
    "order_id" UUID,
    "brief_version" INTEGER NOT NULL,
    "brief" JSONB NOT NULL,
    "proposed" JSONB,

    CONSTRAINT "appointment_car_pkey" PRIMARY KEY ("appointment_id","vehicle_id")
);

-- CreateTable
CREATE TABLE "appointment_bay" (
    "appointment_id" UUID NOT NULL,
    "spell" INTEGER NOT NULL,
    "bay_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "state" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "appointment_bay_pkey" PRIMARY KEY ("appointment_id","spell")
);

-- CreateTable
CREATE TABLE "appointment_move" (
    "id" UUID NOT NULL,
    "appointment_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "actor" TEXT NOT NULL,
    "account_id" UUID,
    "move" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(3) NOT NULL,
    "ends_at" TIMESTAMPTZ(3) NOT NULL,
    "cause" TEXT,
    "note" TEXT,

    CONSTRAINT "appointment_move_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "payment_entry" (
    "id" UUID NOT NULL,
    "appointment_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "party" TEXT NOT NULL,
    "minor" INTEGER NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "payment_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "calendar_feed" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "calendar_id" UUID,
    "name" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "read_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "calendar_feed_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "share_link" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" BYTEA NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),
    "reads" INTEGER NOT NULL,
    "last_read_at" TIMESTAMPTZ(3),

    CONSTRAINT "share_link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "listing_change" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "listed" BOOLEAN NOT NULL,
    "cause" TEXT NOT NULL,
    "reason" TEXT,
    "account_id" UUID,

    CONSTRAINT "listing_change_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "question" (
    "id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "buyer_id" UUID NOT NULL,
    "dealer_id" UUID NOT NULL,
    "item" TEXT NOT NULL,
    "position" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "created_by" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "asked_at" TIMESTAMPTZ(3),
    "answered_at" TIMESTAMPTZ(3),
    "report_id" UUID,
    "version" INTEGER,

    CONSTRAINT "question_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "complaint" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "about_kind" TEXT NOT NULL,
    "about_id" UUID,
    "text" TEXT NOT NULL,
    "reply" TEXT,
    "state" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "created_by" UUID NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL,
    "answered_by" UUID,
    "answered_at" TIMESTAMPTZ(3),

    CONSTRAINT "complaint_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "complaint_opening" (
    "id" UUID NOT NULL,
    "complaint_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "complaint_opening_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "inspector_calendar_organization_id_id_idx" ON "inspector_calendar"("organization_id", "id");

-- CreateIndex
CREATE INDEX "inspector_interest_calendar_id_idx" ON "inspector_interest"("calendar_id");

-- CreateIndex
CREATE INDEX "inspector_dealing_calendar_id_idx" ON "inspector_dealing"("calendar_id");

-- CreateIndex
CREATE INDEX "site_organization_id_id_idx" ON "site"("organization_id", "id");

-- CreateIndex
CREATE INDEX "bay_site_id_idx" ON "bay"("site_id");

-- CreateIndex
CREATE INDEX "appointment_buyer_id_id_idx" ON "appointment"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "appointment_firm_id_id_idx" ON "appointment"("firm_id", "id");

-- CreateIndex
CREATE INDEX "appointment_dealer_id_id_idx" ON "appointment"("dealer_id", "id");

-- CreateIndex
CREATE INDEX "appointment_inspector_id_starts_at_idx" ON "appointment"("inspector_id", "starts_at");

-- CreateIndex
CREATE INDEX "appointment_site_id_starts_at_idx" ON "appointment"("site_id", "starts_at");

-- CreateIndex
CREATE UNIQUE INDEX "appointment_id_state_key" ON "appointment"("id", "state");

-- CreateIndex
CREATE INDEX "appointment_car_vehicle_id_idx" ON "appointment_car"("vehicle_id");

-- CreateIndex
CREATE INDEX "appointment_car_order_id_idx" ON "appointment_car"("order_id");

-- CreateIndex
CREATE INDEX "appointment_move_appointment_id_id_idx" ON "appointment_move"("appointment_id", "id");

-- CreateIndex
CREATE INDEX "payment_entry_appointment_id_id_idx" ON "payment_entry"("appointment_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "calendar_feed_token_hash_key" ON "calendar_feed"("token_hash");

-- CreateIndex
CREATE INDEX "calendar_feed_account_id_id_idx" ON "calendar_feed"("account_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "share_link_token_hash_key" ON "share_link"("token_hash");

-- CreateIndex
CREATE INDEX "share_link_vehicle_id_id_idx" ON "share_link"("vehicle_id", "id");

-- CreateIndex
CREATE INDEX "listing_change_vehicle_id_id_idx" ON "listing_change"("vehicle_id", "id");

-- CreateIndex
CREATE INDEX "question_buyer_id_id_idx" ON "question"("buyer_id", "id");

-- CreateIndex
CREATE INDEX "question_dealer_id_id_idx" ON "question"("dealer_id", "id");

-- CreateIndex
CREATE INDEX "complaint_organization_id_id_idx" ON "complaint"("organization_id", "id");

-- CreateIndex
CREATE INDEX "complaint_opening_complaint_id_id_idx" ON "complaint_opening"("complaint_id", "id");


-- AddForeignKey
ALTER TABLE "inspector_interest" ADD CONSTRAINT "inspector_interest_calendar_id_fkey" FOREIGN KEY ("calendar_id") REFERENCES "inspector_calendar"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "inspector_dealing" ADD CONSTRAINT "inspector_dealing_calendar_id_fkey" FOREIGN KEY ("calendar_id") REFERENCES "inspector_calendar"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "bay" ADD CONSTRAINT "bay_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicle_place" ADD CONSTRAINT "vehicle_place_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment" ADD CONSTRAINT "appointment_inspector_id_fkey" FOREIGN KEY ("inspector_id") REFERENCES "inspector_calendar"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment" ADD CONSTRAINT "appointment_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment_car" ADD CONSTRAINT "appointment_car_appointment_id_state_fkey" FOREIGN KEY ("appointment_id", "state") REFERENCES "appointment"("id", "state") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment_bay" ADD CONSTRAINT "appointment_bay_appointment_id_state_fkey" FOREIGN KEY ("appointment_id", "state") REFERENCES "appointment"("id", "state") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment_bay" ADD CONSTRAINT "appointment_bay_bay_id_fkey" FOREIGN KEY ("bay_id") REFERENCES "bay"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appointment_move" ADD CONSTRAINT "appointment_move_appointment_id_fkey" FOREIGN KEY ("appointment_id") REFERENCES "appointment"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "payment_entry" ADD CONSTRAINT "payment_entry_appointment_id_fkey" FOREIGN KEY ("appointment_id") REFERENCES "appointment"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calendar_feed" ADD CONSTRAINT "calendar_feed_calendar_id_fkey" FOREIGN KEY ("calendar_id") REFERENCES "inspector_calendar"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "complaint_opening" ADD CONSTRAINT "complaint_opening_complaint_id_fkey" FOREIGN KEY ("complaint_id") REFERENCES "complaint"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- From here on: what the schema language cannot say.

CREATE EXTENSION IF NOT EXISTS btree_gist;

-- No double booking, whoever writes: live visits of one inspector, live stays on one lift and live visits to one car share no
-- instant. Held hours count; whoever books ends those that have run out, since a constraint cannot know the hour.
ALTER TABLE appointment ADD CONSTRAINT appointment_state_known CHECK (state IN
  ('held', 'requested', 'accepted', 'confirmed', 'under-way', 'reported', 'declined', 'cancelled', 'missed', 'expired'));
ALTER TABLE appointment ADD CONSTRAINT appointment_hour CHECK (starts_at < ends_at);
ALTER TABLE appointment_bay ADD CONSTRAINT appointment_bay_hour CHECK (starts_at < ends_at);
ALTER TABLE appointment_car ADD CONSTRAINT appointment_car_hour CHECK (starts_at < ends_at);
ALTER TABLE appointment ADD CONSTRAINT appointment_inspector_free
  EXCLUDE USING gist (inspector_id WITH =, tstzrange(starts_at, ends_at) WITH &&)
  WHERE (state IN ('held', 'requested', 'accepted', 'confirmed', 'under-way'));
ALTER TABLE appointment_bay ADD CONSTRAINT appointment_bay_free
  EXCLUDE USING gist (bay_id WITH =, tstzrange(starts_at, ends_at) WITH &&)
  WHERE (state IN ('held', 'requested', 'accepted', 'confirmed', 'under-way'));
ALTER TABLE appointment_car ADD CONSTRAINT appointment_car_free
  EXCLUDE USING gist (vehicle_id WITH =, tstzrange(starts_at, ends_at) WITH &&)
  WHERE (state IN ('held', 'requested', 'accepted', 'confirmed', 'under-way'));

-- What the clock has to look at.
CREATE INDEX appointment_due ON appointment (deadline) WHERE state IN ('held', 'requested', 'accepted');
CREATE INDEX appointment_promised ON appointment (starts_at) WHERE state = 'confirmed';
-- Inspectors who may be asked.
CREATE INDEX inspector_calendar_open ON inspector_calendar (id) WHERE accepting AND admission = 'admitted';

ALTER TABLE inspector_calendar ADD CONSTRAINT inspector_calendar_admission
  CHECK (admission IN ('applied', 'admitted', 'refused', 'suspended'));
ALTER TABLE inspector_calendar ADD CONSTRAINT inspector_calendar_travel CHECK (speed > 0 AND radius > 0);
ALTER TABLE firm_admission ADD CONSTRAINT firm_admission_state CHECK (state IN ('admitted', 'refused', 'suspended'));
ALTER TABLE inspector_interest ADD CONSTRAINT inspector_interest_holder CHECK (holder IN ('inspector', 'firm'));
ALTER TABLE question ADD CONSTRAINT question_state
  CHECK (state IN ('drafted', 'asked', 'answered', 'withdrawn'));
ALTER TABLE complaint ADD CONSTRAINT complaint_state CHECK (state IN ('received', 'opened', 'answered'));
ALTER TABLE payment_entry ADD CONSTRAINT payment_entry_kind
  CHECK (kind IN ('authorized', 'captured', 'released', 'refunded', 'paid-out', 'claimed'));
ALTER TABLE listing_change ADD CONSTRAINT listing_change_cause
  CHECK (cause IN ('sealed', 'fault', 'published', 'withdrawn'));

-- History stays as it was.
CREATE TRIGGER appointment_move_kept BEFORE UPDATE OR DELETE ON appointment_move
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER complaint_opening_kept BEFORE UPDATE OR DELETE ON complaint_opening
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER payment_entry_kept BEFORE UPDATE OR DELETE ON payment_entry
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
