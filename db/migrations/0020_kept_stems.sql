ALTER TABLE `crop` ADD COLUMN `stretch_days` real DEFAULT 0 NOT NULL CONSTRAINT "crop_stretch_days" CHECK(stretch_days BETWEEN 0 AND 1e300);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `stretch_days_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_stretch_days_mark" CHECK(stretch_days_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `stretch_days_source` text;--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `dry_hold_days` real DEFAULT 0 NOT NULL CONSTRAINT "crop_dry_hold_days" CHECK(dry_hold_days BETWEEN 0 AND 1e300);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `dry_hold_days_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_dry_hold_days_mark" CHECK(dry_hold_days_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `dry_hold_days_source` text;--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `hold_up_to_c` real DEFAULT 5 NOT NULL CONSTRAINT "crop_hold_up_to_c" CHECK(hold_up_to_c BETWEEN -1e300 AND 1e300);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `hold_up_to_c_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_hold_up_to_c_mark" CHECK(hold_up_to_c_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `hold_up_to_c_source` text;--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `not_colder_c` real DEFAULT 0 NOT NULL CONSTRAINT "crop_not_colder_c" CHECK(not_colder_c BETWEEN -1e300 AND 1e300);--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `not_colder_c_mark` text DEFAULT 'from memory' NOT NULL CONSTRAINT "crop_not_colder_c_mark" CHECK(not_colder_c_mark IN ('published', 'published-secondary', 'trade', 'our reading', 'common practice', 'from memory', 'own'));--> statement-breakpoint
ALTER TABLE `crop` ADD COLUMN `not_colder_c_source` text;--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `store_c` real CONSTRAINT "farm_store_c" CHECK(store_c BETWEEN -1e300 AND 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `cool_room_c` real DEFAULT 13 NOT NULL CONSTRAINT "farm_cool_room_c" CHECK(cool_room_c BETWEEN -1e300 AND 1e300);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `stores_dry` integer DEFAULT true NOT NULL CONSTRAINT "farm_stores_dry" CHECK(stores_dry IN (0, 1));
