ALTER TABLE `crop` ADD COLUMN `cut_spare_share` real DEFAULT 0 NOT NULL CONSTRAINT "crop_cut_spare_share" CHECK(cut_spare_share BETWEEN 0 AND 1);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `cut_spare_share_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_cut_spare_share_mark" CHECK(cut_spare_share_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `cut_spare_share_source` text;
