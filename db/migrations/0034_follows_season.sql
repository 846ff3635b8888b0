ALTER TABLE `farm` ADD COLUMN `follows_season` integer DEFAULT true NOT NULL CONSTRAINT "farm_follows_season" CHECK(follows_season IN (0, 1));
