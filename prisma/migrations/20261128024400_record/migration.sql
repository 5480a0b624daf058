-- How far an organization's record has come: what the next entry goes on from. Its row is the lock of the record.
CREATE TABLE "record_chain" (
    "organization_id" UUID NOT NULL,
    "size" INTEGER NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "peaks" TEXT[],

    CONSTRAINT "record_chain_pkey" PRIMARY KEY ("organization_id")
);

-- One entry of an organization's record. Never changed; only what opens a commitment may be erased.
CREATE TABLE "record_entry" (
    "organization_id" UUID NOT NULL,
    "seq" INTEGER NOT NULL,
    "previous" CHAR(64) NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "kind" TEXT NOT NULL,
    "subject" UUID NOT NULL,
    "actor" UUID,
    "name" CHAR(64),
    "content" CHAR(64) NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "name_salt" CHAR(64),
    "name_text" TEXT,
    "content_salt" CHAR(64),
    "content_text" TEXT,

    CONSTRAINT "record_entry_pkey" PRIMARY KEY ("organization_id","seq")
);

-- How far a record had come, signed every day.
CREATE TABLE "record_root" (
    "organization_id" UUID NOT NULL,
    "size" INTEGER NOT NULL,
    "root" CHAR(64) NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "key" CHAR(16) NOT NULL,
    "signature" TEXT NOT NULL,

    CONSTRAINT "record_root_pkey" PRIMARY KEY ("organization_id","size")
);

-- What whoever sealed a version or had a summary made was given.
CREATE TABLE "seal_receipt" (
    "subject" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "seal" CHAR(64) NOT NULL,
    "size" INTEGER NOT NULL,
    "root" CHAR(64) NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "key" CHAR(16) NOT NULL,
    "signature" TEXT NOT NULL,

    CONSTRAINT "seal_receipt_pkey" PRIMARY KEY ("subject")
);

CREATE INDEX "record_entry_actor_idx" ON "record_entry"("actor");
CREATE INDEX "seal_receipt_organization_id_size_idx" ON "seal_receipt"("organization_id", "size");

ALTER TABLE "record_entry" ADD CONSTRAINT "record_entry_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "record_chain"("organization_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "record_root" ADD CONSTRAINT "record_root_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "record_chain"("organization_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "seal_receipt" ADD CONSTRAINT "seal_receipt_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "record_chain"("organization_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- An entry stays as it was, but that a name or a content, with its salt, may be erased: together, and for good.
CREATE FUNCTION refuse_change_but_erasure() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  erased record_entry;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    erased := OLD;
    IF NEW.name_salt IS NULL AND NEW.name_text IS NULL THEN
      erased.name_salt := NULL;
      erased.name_text := NULL;
    END IF;
    IF NEW.content_salt IS NULL AND NEW.content_text IS NULL THEN
      erased.content_salt := NULL;
      erased.content_text := NULL;
    END IF;
    IF NEW IS NOT DISTINCT FROM erased THEN
      RETURN NEW;
    END IF;
  END IF;
  RAISE EXCEPTION 'rows of % are never changed', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;
CREATE TRIGGER record_entry_appended BEFORE UPDATE OR DELETE ON record_entry
  FOR EACH ROW EXECUTE FUNCTION refuse_change_but_erasure();
CREATE TRIGGER record_root_signed BEFORE UPDATE OR DELETE ON record_root
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER seal_receipt_signed BEFORE UPDATE OR DELETE ON seal_receipt
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER record_chain_kept BEFORE DELETE ON record_chain
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
