-- Circles, arrows and words over a picture, in shares of its width and height; the picture itself stays as it is.
ALTER TABLE "evidence" ADD COLUMN "marks" JSONB NOT NULL DEFAULT '[]';
