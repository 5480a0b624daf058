-- AlterTable
ALTER TABLE "brief" ADD COLUMN "depth" TEXT NOT NULL DEFAULT 'half-day';
