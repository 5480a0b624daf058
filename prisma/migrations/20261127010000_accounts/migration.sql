-- AlterTable
ALTER TABLE "account" ADD COLUMN "closed_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "invitation" ADD COLUMN "revoked_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "mail" ADD COLUMN "claimed_until" TIMESTAMPTZ(3);

-- CreateTable
CREATE TABLE "password_reset" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "account_id" UUID,
    "token_hash" BYTEA,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "password_reset_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "invitation_organization_id_id_idx" ON "invitation"("organization_id", "id");

-- CreateIndex
CREATE INDEX "invitation_invited_by_created_at_idx" ON "invitation"("invited_by", "created_at");

-- CreateIndex
CREATE UNIQUE INDEX "password_reset_token_hash_key" ON "password_reset"("token_hash");

-- CreateIndex
CREATE INDEX "password_reset_account_id_idx" ON "password_reset"("account_id");

-- CreateIndex
CREATE INDEX "password_reset_expires_at_idx" ON "password_reset"("expires_at");

-- AddForeignKey
ALTER TABLE "password_reset" ADD CONSTRAINT "password_reset_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE CASCADE ON UPDATE CASCADE;
